import { describe, expect, it } from "vitest";
import { flowAtDepth, manningSpeed, normalFlow, type Bed } from "../../src/calc/water/bed";
import { BED_KINDS } from "../../src/calc/tables/beds";
import { expectNear, expectPublished, given, publishedCase, publishedCases, type PublishedCase } from "./cases";
import { FOOT, INCH, inSI } from "./si";

const CHANNELS = "7 open channel";

/** The bed of a case; what it does not name is 0. */
function bedOf(c: PublishedCase): Bed {
  const or0 = (name: string): number => (c.inputs[name] ? inSI(c, name) : 0);
  return { width: or0("b"), slope: or0("S"), roughness: given(c.inputs, "n"), sideSlope: or0("z") };
}

describe("beds against published channels", () => {
  it("OC-02 Ponce: speed and flow at a depth, and the depth back from the flow", () => {
    const c = publishedCase("OC-02");
    const { speed, area } = flowAtDepth(bedOf(c), inSI(c, "y"));
    expectPublished(c, "velocity", speed);
    expectPublished(c, "flow", speed * area);
    expect(normalFlow(given(c.expected, "flow"), bedOf(c)).depth).toBeCloseTo(inSI(c, "y"), 3);
  });

  it("OC-03 Maurer: the slope that Manning gives carries the flow (the vignette's 0.00088 does not)", () => {
    const c = publishedCase("OC-03");
    const bed = { ...bedOf(c), slope: given(c.expected, "slope") };
    const { speed, area } = flowAtDepth(bed, inSI(c, "y"));
    expectPublished(c, "area", area / FOOT ** 2);
    expectNear(speed * area, inSI(c, "Q"), 0.001);
    expectNear(inSI(c, "Q") / area / FOOT, given(c.expected, "velocity"), 1e-4);
    const printed = flowAtDepth({ ...bed, slope: 0.00088 }, inSI(c, "y"));
    expect((printed.speed * printed.area) / inSI(c, "Q")).toBeGreaterThan(1.01);
  });

  it("OC-04 trapezoid", () => {
    const c = publishedCase("OC-04");
    const { speed, area } = flowAtDepth(bedOf(c), inSI(c, "y"));
    expectPublished(c, "flow", speed * area);
  });

  it("OC-06 triangle, normal depth", () => {
    const c = publishedCase("OC-06");
    expectPublished(c, "y", normalFlow(inSI(c, "Q"), bedOf(c)).depth);
  });

  it("OC-07 Cengel & Cimbala, speed from the hydraulic radius", () => {
    const c = publishedCase("OC-07");
    expectPublished(c, "velocity", manningSpeed(inSI(c, "Rh"), inSI(c, "S"), given(c.inputs, "n")));
  });

  it.each(publishedCases(CHANNELS, "OC-ND-").map((c) => [c.id, c] as const))("%s rock bed, normal depth", (_, c) => {
    const { depth, speed, froude } = normalFlow(inSI(c, "flow"), bedOf(c));
    expectPublished(c, "depth", depth / INCH);
    expectPublished(c, "velocity", speed / FOOT);
    expectPublished(c, "froude", froude);
  });

  // Chow's Table 5-6 as read: each row stands in our table with the same span and usual value.
  it.each(publishedCases(CHANNELS, "OC-N-").map((c) => [c.id, c] as const))("%s Manning's n", (_, c) => {
    const channel = String(c.inputs.channel?.value).toLowerCase();
    const row = BED_KINDS.find(({ source }) => source.toLowerCase().endsWith(`: ${channel}`));
    expect(row, channel).toBeDefined();
    expect([row?.least, row?.n, row?.most]).toEqual([
      given(c.expected, "nMin"),
      given(c.expected, "nNormal"),
      given(c.expected, "nMax"),
    ]);
  });
});
