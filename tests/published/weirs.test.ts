import { describe, it } from "vitest";
import { findLipShape, lipDepth, lipFlow, ownLip } from "../../src/calc/water/lip";
import { expectNear, expectPublished, given, publishedCase, publishedCases, type PublishedCase } from "./cases";
import { FOOT, GPM, INCH, inSI } from "./si";

const WEIRS = "6 weirs";
const CFS = FOOT ** 3;
const sharp = findLipShape("sharp");
const narrowed = findLipShape("sharp, narrowed");
/** A coefficient printed in ft^½/s, in m^½/s. */
const inUS = (coefficient: number): number => coefficient * Math.sqrt(FOOT);

const cases = (prefix: string): [string, PublishedCase][] => publishedCases(WEIRS, prefix).map((c) => [c.id, c]);

describe("lips against published weirs", () => {
  // A standard weir table, printed in gpm to three digits; its formula stands beneath it.
  it.each(cases("WE-FR-"))("%s contracted weir table", (_, c) => {
    for (const [name, feet] of [
      ["flow_L1ft", 1],
      ["flow_L3ft", 3],
      ["flow_L5ft", 5],
    ] as const) {
      expectPublished(c, name, lipFlow(feet * FOOT, inSI(c, "head"), narrowed) / GPM);
    }
  });

  it.each(cases("WE-SUP-"))("%s suppressed weir (Francis)", (_, c) => {
    const [length, head] = [inSI(c, "length"), inSI(c, "head")];
    const flow = lipFlow(length, head, sharp);
    expectPublished(c, "flow", flow / CFS);
    expectPublished(c, "gpmPerFoot", flow / GPM / (length / FOOT));
  });

  it.each(cases("WE-INV-"))("%s head for a flow per foot, sharp and broad", (_, c) => {
    // Per foot of a 5 ft lip, so that the sheet stays shallower than the lip is wide.
    const flow = 5 * given(c.inputs, "unitFlow") * GPM;
    expectPublished(c, "headSharp", lipDepth(flow, 5 * FOOT, sharp) / INCH);
    expectPublished(c, "headBroad_C2p63", lipDepth(flow, 5 * FOOT, findLipShape("broad")) / INCH);
  });

  it.each([...cases("WE-BC-0"), ...cases("WE-BC-1")])("%s broad lip with the table's coefficient", (_, c) => {
    const flow = lipFlow(10 * FOOT, inSI(c, "head"), ownLip(inUS(given(c.expected, "C"))));
    expectPublished(c, "unitFlow", flow / CFS / 10);
  });

  it("WE-BC-0.2-2 is the coefficient of a deep stone", () => {
    const c = publishedCase("WE-BC-0.2-2");
    expectPublished(c, "C", findLipShape("broad, deep").coefficient / Math.sqrt(FOOT));
  });

  it("WE-BC-SDSU the frictionless broad lip", () => {
    const c = publishedCase("WE-BC-SDSU");
    const smooth = findLipShape("broad, smooth");
    expectPublished(c, "C", smooth.coefficient / Math.sqrt(FOOT));
    expectPublished(c, "flow", lipFlow(inSI(c, "length"), inSI(c, "head"), smooth) / CFS);
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
});
