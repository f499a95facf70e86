import { describe, expect, it } from "vitest";
import { fallCut } from "../../src/calc/liner/fall";
import { linerCut } from "../../src/calc/liner/liner";
import { sheetWeight } from "../../src/calc/liner/weight";
import { USUAL_LINER_WEIGHT } from "../../src/calc/tables/sheets";
import { expectCase, given, arithmeticCase, arithmeticCases } from "./cases";
import { FOOT, inSI } from "../published/si";

/** One ounce per square yard, the unit fabric is sold by, in kg/m²: 28.349523125 g / (0.9144 m)² (NIST SP 811). */
const OUNCE_PER_SQUARE_YARD = 0.028349523125 / 0.9144 ** 2;

const TOPIC = "13 sheet goods geometry";
const POUND = 0.45359237;
const named = (prefix: string) => arithmeticCases(TOPIC, prefix).map((c) => [c.id, c] as const);

describe("liner of an upright pit", () => {
  it.each(named("GE-LIN"))("%s", (_, c) => {
    const cut = linerCut({
      length: inSI(c, "length"),
      width: inSI(c, "width"),
      depth: inSI(c, "depth"),
      overlap: inSI(c, "overlap"),
      sideSlope: 0,
      roundTo: 0,
    });
    expectCase(c, "cutLength", cut.length / FOOT);
    expectCase(c, "cutWidth", cut.width / FOOT);
    expectCase(c, "area", (cut.length * cut.width) / FOOT ** 2);
  });
});

describe("developed liner of a sloped pit", () => {
  it.each(named("GE-SLP"))("%s", (_, c) => {
    const pit = { depth: inSI(c, "depth"), overlap: inSI(c, "overlap"), sideSlope: given(c.inputs, "z"), roundTo: 0 };
    const bottom = inSI(c, "bottom");
    const cut = linerCut({ ...pit, length: bottom, width: bottom });
    expectCase(c, "developed", cut.width / FOOT);
    // Without overlap a liner is the bottom and two slopes.
    const bare = linerCut({ ...pit, overlap: 0, length: bottom, width: bottom });
    expectCase(c, "slopeLength", (bare.width - bottom) / 2 / FOOT);
    // The rule of thumb is the upright sum over the width of the top.
    const top = bottom + 2 * pit.depth * pit.sideSlope;
    const rule = linerCut({ ...pit, sideSlope: 0, length: top, width: top });
    expectCase(c, "ruleOfThumb_topPlus2D", rule.width / FOOT);
    expect(rule.width).toBeGreaterThan(cut.width);
  });
});

describe("liner of a stepped fall", () => {
  it("GE-STAIR", () => {
    const c = arithmeticCase("GE-STAIR");
    const steps = given(c.inputs, "steps");
    const drops = Array.from({ length: steps }, () => inSI(c, "rise"));
    const treads = Array.from({ length: steps }, () => inSI(c, "tread"));
    const bare = { drops, treads, bedWidth: 1, bankHeight: 0, overlap: 0, slackPerDrop: 0, roundTo: 0 };
    expectCase(c, "followingSteps", fallCut(bare).length / FOOT);
    const slope = Math.hypot(steps * inSI(c, "rise"), steps * inSI(c, "tread"));
    expectCase(c, "straightSlope", slope / FOOT);
  });
});

describe("thickness and weight", () => {
  it.each(named("GE-ROLL"))("%s", (_, c) => {
    const weight = sheetWeight(given(c.inputs, "area") * FOOT ** 2, USUAL_LINER_WEIGHT);
    expectCase(c, "weight", weight / POUND);
  });

  it.each(named("GE-GEO"))("%s", (_, c) => {
    const perArea = given(c.inputs, "mass") * OUNCE_PER_SQUARE_YARD;
    expectCase(c, "gsm", perArea * 1000);
    expectCase(c, "lbPerFt2", sheetWeight(FOOT ** 2, perArea) / POUND);
  });
});
