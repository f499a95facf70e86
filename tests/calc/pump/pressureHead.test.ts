import { describe, expect, it } from "vitest";
import { pressureHead } from "../../../src/calc/pump/pressureHead";

describe("pressure as head", () => {
  it("is 2.309 ft of water for a pound per square inch at 60 °F (62.37 lb/ft³, MWH, Table C-2: 144 / 62.37)", () => {
    expect(pressureHead(6894.757293, (60 - 32) / 1.8) / 0.3048).toBeCloseTo(2.309, 3);
  });

  it("is 10 m at 98.0665 kPa and 1000 kg/m³, by definition; at 4 °C water has 999.97", () => {
    expect(pressureHead(98066.5, 4)).toBeCloseTo(10 * (1000 / 999.97), 4);
  });

  it("may be suction, but no more than the air's pressure", () => {
    expect(pressureHead(-20000)).toBeLessThan(0);
    expect(() => pressureHead(-102000)).toThrow("pressure must be -101325 to 2000000 Pa");
  });
});
