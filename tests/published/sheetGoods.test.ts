import { describe, expect, it } from "vitest";
import { EPDM, USUAL_LINER_WEIGHT } from "../../src/calc/tables/sheets";
import { expectPublished, given, publishedCase } from "./cases";
import { FOOT, INCH, inSI } from "./si";

const POUND = 0.45359237;

describe("thickness and weight", () => {
  it("GE-EPDM-T", () => {
    const c = publishedCase("GE-EPDM-T");
    EPDM.forEach((row, i) => expect(row.thickness / INCH).toBeCloseTo(given(c.expected, `t${i + 1}`), 12));
    expect(EPDM.length).toBe(3);
  });

  it("GE-EPDM-W", () => {
    const c = publishedCase("GE-EPDM-W");
    expectPublished(c, "weight", (USUAL_LINER_WEIGHT / POUND) * FOOT ** 2);
    // Second route: density 1.2 over the thickness, as the case's note says.
    const byDensity = given(c.inputs, "specificGravity") * 999 * inSI(c, "thickness");
    expectPublished(c, "weight", (byDensity / POUND) * FOOT ** 2);
  });
});
