import { describe, expect, it } from "vitest";
import { fullFlow, partFull } from "../../src/calc/pipe/partFull";
import { arithmeticCase, expectNear } from "./cases";

const PIPE = { bore: 1, slope: 0.01, roughness: 0.013 };
const list = (values: unknown): number[] => values as number[];

describe("part-full round pipes by arithmetic", () => {
  it("FT2-09: area, wetted edge and hydraulic radius", () => {
    const c = arithmeticCase("FT2-09");
    list(c.inputs["yOverD"]?.value).forEach((depth, i) => {
      const { area, wetted } = partFull(PIPE, depth);
      expect(area).toBeCloseTo(list(c.expected["A"]?.value)[i] ?? NaN, 5);
      expect(wetted).toBeCloseTo(list(c.expected["P"]?.value)[i] ?? NaN, 5);
      expect(area / wetted).toBeCloseTo(list(c.expected["R"]?.value)[i] ?? NaN, 5);
    });
  });

  it("FT2-10: flow and speed over those of the full pipe", () => {
    const c = arithmeticCase("FT2-10");
    const full = fullFlow(PIPE);
    const fullSpeed = partFull(PIPE, 1).speed;
    list(c.inputs["yOverD"]?.value).forEach((depth, i) => {
      const { flow, speed } = partFull(PIPE, depth);
      expectNear(flow / full, list(c.expected["Qratio"]?.value)[i] ?? NaN, 1e-5, `y/D ${depth}:`);
      expectNear(speed / fullSpeed, list(c.expected["Vratio"]?.value)[i] ?? NaN, 1e-5, `y/D ${depth}:`);
    });
    expect(partFull(PIPE, 0.938).flow / full).toBeCloseTo(1.0757, 4);
  });
});
