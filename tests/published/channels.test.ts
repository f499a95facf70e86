import { describe, expect, it } from "vitest";
import { flowAtDepth, manningSpeed, normalFlow } from "../../src/calc/water/bed";
import { BED_KINDS } from "../../src/calc/tables/beds";
import { expectPublished, given, publishedCase, publishedCases } from "./cases";
import { inSI } from "./si";
import { bedOf } from "./worked";

const CHANNELS = "7 open channel";

describe("beds against published channels", () => {
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
