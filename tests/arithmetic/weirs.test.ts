import { describe, it } from "vitest";
import { findLipShape, lipDepth, lipFlow } from "../../src/calc/water/lip";
import { sharpCrestFlow } from "../../src/calc/water/sharpCrest";
import { expectNear, expectCase, given, arithmeticCase, arithmeticCases, type Case } from "./cases";
import { FOOT, GPM, INCH, inSI } from "../published/si";

const WEIRS = "6 weirs";
const CFS = FOOT ** 3;
const sharp = findLipShape("sharp");
const narrowed = findLipShape("sharp, narrowed");

const cases = (prefix: string): [string, Case][] => arithmeticCases(WEIRS, prefix).map((c) => [c.id, c]);

describe("lips by arithmetic", () => {
  // A standard weir table, printed in gpm to three digits; its formula stands beneath it.
  it.each(cases("WE-FR-"))("%s contracted weir table", (_, c) => {
    for (const [name, feet] of [
      ["flow_L1ft", 1],
      ["flow_L3ft", 3],
      ["flow_L5ft", 5],
    ] as const) {
      expectCase(c, name, lipFlow(feet * FOOT, inSI(c, "head"), narrowed) / GPM);
    }
  });

  it.each(cases("WE-SUP-"))("%s suppressed weir (Francis)", (_, c) => {
    const [length, head] = [inSI(c, "length"), inSI(c, "head")];
    const flow = lipFlow(length, head, sharp);
    expectCase(c, "flow", flow / CFS);
    expectCase(c, "gpmPerFoot", flow / GPM / (length / FOOT));
  });

  it.each(cases("WE-INV-"))("%s head for a flow per foot, sharp and broad", (_, c) => {
    // Per foot of a 5 ft lip, so that the sheet stays shallower than the lip is wide.
    const flow = 5 * given(c.inputs, "unitFlow") * GPM;
    expectCase(c, "headSharp", lipDepth(flow, 5 * FOOT, sharp) / INCH);
    expectCase(c, "headBroad_C2p63", lipDepth(flow, 5 * FOOT, findLipShape("broad")) / INCH);
  });

  it("WE-BC-SDSU the frictionless broad lip", () => {
    const c = arithmeticCase("WE-BC-SDSU");
    const smooth = findLipShape("broad, smooth");
    expectCase(c, "C", smooth.coefficient / Math.sqrt(FOOT));
    expectCase(c, "flow", lipFlow(inSI(c, "length"), inSI(c, "head"), smooth) / CFS);
  });

  // Other men's weirs of the same kind count the speed of the water that arrives, which Francis leaves out. With the
  // crest at least twice the head above the bottom they must lie close to ours.
  it.each([...cases("WE-KCQ-"), ...cases("WE-RB-")])("%s another formula lies within 5 %%", (_, c) => {
    const [length, head, unit] = c.id.startsWith("WE-KCQ")
      ? [inSI(c, "length"), inSI(c, "head"), CFS]
      : [inSI(c, "b"), inSI(c, "h"), 1];
    const ours = lipFlow(length, head, sharp) / unit;
    expectNear(ours, given(c.expected, "flow"), 0.05);
  });

  it.each(cases("WE-RB-"))("%s Rehbock, with the crest's height", (_, c) => {
    const crest = { width: inSI(c, "b"), crestHeight: inSI(c, "P") };
    expectCase(c, "flow", sharpCrestFlow(crest, inSI(c, "h")));
  });

  it.each(cases("WE-KCQ-"))("%s Kindsvater and Carter, as wide as the pool", (_, c) => {
    const width = inSI(c, "length");
    const crest = { width, crestHeight: inSI(c, "crestHeight"), poolWidth: width };
    expectCase(c, "flow", sharpCrestFlow(crest, inSI(c, "head")) / CFS);
  });

  it.each(cases("WR2-0"))("%s Kindsvater and Carter, narrower than the pool", (_, c) => {
    const crest = { width: inSI(c, "L"), crestHeight: inSI(c, "P"), poolWidth: inSI(c, "B") };
    expectCase(c, "Q", sharpCrestFlow(crest, inSI(c, "H")) / CFS);
  });
});
