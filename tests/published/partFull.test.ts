import { describe, it } from "vitest";
import { partFull, partFullDepth } from "../../src/calc/pipe/partFull";
import { boreArea } from "../../src/calc/pipe/friction";
import { expectPublished, given, publishedCase, publishedCases } from "./cases";
import { inSI } from "./si";

describe("part-full round pipes against published values", () => {
  it("FT2-11: depth, speed and section of a flow", () => {
    const c = publishedCase("FT2-11");
    const pipe = { bore: inSI(c, "D"), slope: inSI(c, "S"), roughness: given(c.inputs, "n") };
    const depth = partFullDepth(inSI(c, "Q"), pipe);
    const water = partFull(pipe, depth);
    expectPublished(c, "y", depth);
    expectPublished(c, "V", water.speed);
    expectPublished(c, "A", water.area);
    expectPublished(c, "P", water.wetted);
    expectPublished(c, "R", water.area / water.wetted);
  });

  it("FT2-12: the flow of a depth, and the flows that the printed slope and bore give back", () => {
    const c = publishedCase("FT2-12");
    const [bore = 0, roughness = 0, slope = 0, depth = 0] = c.inputs["a"]?.value as number[];
    expectPublished(c, "Q", partFull({ bore, roughness, slope }, depth).flow);
    const [b = 0, n = 0, flow = 0, y = 0] = c.inputs["b"]?.value as number[];
    // Manning's slope goes as the square of the flow: that of the wanted flow, from the flow at a slope of 0.001.
    const atThousandth = partFull({ bore: b, roughness: n, slope: 0.001 }, y).flow;
    expectPublished(c, "S", 0.001 * (flow / atThousandth) ** 2);
    const [cfs = 0, rough = 0, grade = 0, part = 0] = c.inputs["c"]?.value as number[];
    // And the bore as the flow to the power 3/8: from the flow in a pipe of 1 m.
    const inOne = partFull({ bore: 1, roughness: rough, slope: grade }, part).flow;
    expectPublished(c, "d", ((cfs * 0.3048 ** 3) / inOne) ** (3 / 8) / 0.3048);
  });

  it.each(publishedCases("8 storage", "ST-CIRC").map((c) => [c.id, c] as const))("%s: the section's area", (_, c) => {
    const pipe = { bore: 1, slope: 0.01, roughness: 0.013 };
    expectPublished(c, "areaFraction", partFull(pipe, given(c.inputs, "relativeDepth")).area / boreArea(1));
  });
});
