import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalFlow } from "../../../src/calc/water/bed";
import { bedStone, SHIELDS } from "../../../src/calc/water/bedStone";

const FOOT = 0.3048;

describe("bedStone", () => {
  it("agrees with HEC-15, Eq. 6.8, by hand: 0.2 ft deep on 6 %, SG 2.65", () => {
    // 0.2 × 0.06 / (0.047 × 1.65) = 0.154739 ft
    expect(bedStone(0.2 * FOOT, 0.06, 2650) / FOOT).toBeCloseTo(0.154739, 6);
    expect(bedStone(0.2 * FOOT, 0.06, 2650, 1.5) / FOOT).toBeCloseTo(1.5 * 0.154739, 6);
  });

  it("never lets a rougher bed keep a smaller stone, at any flow, width, slope or rock (fast-check)", () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        between(1e-4, 0.05),
        between(0.2, 5),
        between(0.005, 0.6),
        fc.tuple(between(0.012, 0.2), between(1, 1.5)),
        between(2000, 3000),
        (flow, width, slope, [n, rougher], density) => {
          const stone = (roughness: number): number =>
            bedStone(normalFlow(flow, { width, slope, roughness, sideSlope: 0 }).depth, slope, density);
          expect(stone(n * rougher)).toBeGreaterThanOrEqual(stone(n) * (1 - 1e-9));
        },
      ),
      { seed: 20261128 },
    );
  });

  it("gives 0.63 and 0.93 in where a rule by speed gave 0.24 and 0.10 in for n 0.05 and 0.1", () => {
    // 60 gpm in 1.5 ft at 5 %: depth 0.0756 and 0.1155 ft (BEDDEPTH's worked example; the second put back by hand:
    // A = 0.17325, P = 1.731 ft, 1.486 / 0.1 × 0.17325 × 0.100087^(2/3) × 0.223607 = 0.1241 ft³/s = 55.7 gpm).
    // Limestone of SG 2.535 makes the first 0.0756 × 0.05 / (0.047 × 1.535) = 0.0524 ft = 0.63 in.
    const flow = 60 * 6.30902e-5;
    const stone = (roughness: number): number =>
      bedStone(normalFlow(flow, { width: 1.5 * FOOT, slope: 0.05, roughness, sideSlope: 1 }).depth, 0.05, 2535) /
      0.0254;
    expect(stone(0.05)).toBeCloseTo(0.63, 2);
    expect(stone(0.1)).toBeGreaterThan(1.4 * stone(0.05));
  });

  // Robinson, Rice and Kadavy, Design of Rock Chutes, Transactions of the ASAE 41(3) (1998): stable D50 for unit flow q and
  // slope, with their n = 0.0292 (D50 S)^0.147 as printed beside each: 0.05 m²/s on 2 %: 14 mm, n 0.024; 0.05 m²/s on
  // 40 %: 77 mm, n 0.048; 0.93 m²/s on 40 %: 360 mm, n 0.061.
  it.each([
    { unitFlow: 0.05, slope: 0.02, n: 0.024, chute: 14, least: 1, most: 1.2 },
    { unitFlow: 0.05, slope: 0.4, n: 0.048, chute: 77, least: 1, most: 3.5 },
    { unitFlow: 0.93, slope: 0.4, n: 0.061, chute: 360, least: 1, most: 3.5 },
  ])("lies on the heavy side of rock chutes that held: $chute mm", ({ unitFlow, slope, n, chute, least, most }) => {
    // A wide bed, so that its sides do not count.
    const { depth } = normalFlow(50 * unitFlow, { width: 50, slope, roughness: n, sideSlope: 0 });
    const ratio = (bedStone(depth, slope, 2650) * 1000) / chute;
    expect(ratio).toBeGreaterThanOrEqual(least);
    expect(ratio).toBeLessThanOrEqual(most);
  });

  it("stays within the source's range on beds of up to 5 %: water 1.5 times as deep as the stone", () => {
    expect(0.1 / bedStone(0.1, 0.05, 2650)).toBeGreaterThan(SHIELDS.leastDepthPerStone);
    expect(0.1 / bedStone(0.1, 0.06, 2650)).toBeLessThan(SHIELDS.leastDepthPerStone);
  });

  it("names what is out of range", () => {
    expect(() => bedStone(-1, 0.05, 2650)).toThrow("depth must be 0 to 10 m; got -1 m");
    expect(() => bedStone(0.1, 2, 2650)).toThrow("slope must be 0.00001 to 1 m/m");
    expect(() => bedStone(0.1, 0.05, 1000)).toThrow("rock must be 1200 to 3500 kg/m³; got 1000");
    expect(() => bedStone(0.1, 0.05, 2650, 0.5)).toThrow("safety must be 1 to 3; got 0.5");
  });
});
