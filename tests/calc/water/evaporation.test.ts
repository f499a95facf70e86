import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { evaporationPerDay, evaporationRate, latentHeat } from "../../../src/calc/water/evaporation";

const inputs = fc.record({
  area: fc.double({ min: 0.1, max: 100, noNaN: true }),
  waterTemperature: fc.double({ min: 10, max: 30, noNaN: true }),
  airTemperature: fc.double({ min: 5, max: 40, noNaN: true }),
  humidity: fc.double({ min: 0, max: 0.9, noNaN: true }),
  wind: fc.double({ min: 0, max: 5, noNaN: true }),
});

describe("evaporation", () => {
  it("agrees between the equation's two unit sets", () => {
    // IP set: w = (95 + 0.425 V) Δp / Y lb/(h ft²), V ft/min, Δp inHg, Y Btu/lb (ASHRAE). At 50 ft/min and 0.5 inHg with
    // 1050 Btu/lb: 116.25 × 0.5 / 1050 = 0.0553571 lb/(h ft²) = 0.0553571 × 0.45359237 / 3600 / 0.09290304 kg/(s m²).
    // The sets are printed to two and three digits, so they part by up to 1 %.
    const ip = (0.0553571 * 0.45359237) / 3600 / 0.09290304;
    const si = evaporationRate(0.5 * 3.38639, 50 * 0.00508, 1050 * 2.326);
    expect(Math.abs(si / ip - 1)).toBeLessThan(0.01);
  });

  it("takes the heat of vaporisation of the steam tables", () => {
    // Çengel & Boles, Thermodynamics, Table A-4 (from memory): 2453.5 kJ/kg at 20 °C, 2406.0 at 40 °C
    expect(Math.abs(latentHeat(20) / 2453.5 - 1)).toBeLessThan(0.001);
    expect(Math.abs(latentHeat(40) / 2406.0 - 1)).toBeLessThan(0.001);
  });

  it("grows with area and wind, falls with humidity (fast-check)", () => {
    fc.assert(
      fc.property(inputs, (i) => {
        const loss = evaporationPerDay(i);
        expect(loss).toBeGreaterThanOrEqual(0);
        expect(evaporationPerDay({ ...i, area: 2 * i.area })).toBeCloseTo(2 * loss, 12);
        expect(evaporationPerDay({ ...i, wind: i.wind + 1 })).toBeGreaterThanOrEqual(loss);
        expect(evaporationPerDay({ ...i, humidity: i.humidity + 0.1 })).toBeLessThanOrEqual(loss);
      }),
    );
  });

  it("is 0 in air that is moister than the water's surface", () => {
    const cold = { area: 10, waterTemperature: 5, airTemperature: 30, humidity: 0.9, wind: 1 };
    expect(evaporationPerDay(cold)).toBe(0);
  });

  it("says what is wrong", () => {
    const fine = { area: 10, waterTemperature: 20, airTemperature: 20, humidity: 0.5, wind: 1 };
    expect(() => evaporationPerDay({ ...fine, humidity: 50 })).toThrow("humidity must be 0 to 1");
    expect(() => evaporationPerDay({ ...fine, waterTemperature: 70 })).toThrow("water temp must be 0 to 45 °C");
    expect(() => evaporationPerDay({ ...fine, wind: NaN })).toThrow("wind must be a finite number");
  });
});
