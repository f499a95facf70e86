import { describe, expect, it } from "vitest";
import { findLipShape, lipDepth, lipFlow, ownLip } from "../../src/calc/water/lip";
import { agrees, given, publishedCase, publishedCases, type PublishedCase } from "./cases";
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
      expect(agrees(c, name, lipFlow(feet * FOOT, inSI(c, "head"), narrowed) / GPM), name).toBe(true);
    }
  });

  it.each(cases("WE-SUP-"))("%s suppressed weir (Francis)", (_, c) => {
    const [length, head] = [inSI(c, "length"), inSI(c, "head")];
    const flow = lipFlow(length, head, sharp);
    expect(agrees(c, "flow", flow / CFS)).toBe(true);
    expect(agrees(c, "gpmPerFoot", flow / GPM / (length / FOOT))).toBe(true);
  });

  it.each(cases("WE-INV-"))("%s head for a flow per foot, sharp and broad", (_, c) => {
    // Per foot of a 5 ft lip, so that the sheet stays shallower than the lip is wide.
    const flow = 5 * given(c.inputs, "unitFlow") * GPM;
    expect(agrees(c, "headSharp", lipDepth(flow, 5 * FOOT, sharp) / INCH)).toBe(true);
    expect(agrees(c, "headBroad_C2p63", lipDepth(flow, 5 * FOOT, findLipShape("broad")) / INCH)).toBe(true);
  });

  it.each([...cases("WE-BC-0"), ...cases("WE-BC-1")])("%s broad lip with the table's coefficient", (_, c) => {
    const flow = lipFlow(10 * FOOT, inSI(c, "head"), ownLip(inUS(given(c.expected, "C"))));
    expect(agrees(c, "unitFlow", flow / CFS / 10)).toBe(true);
  });

  it("WE-BC-0.2-2 is the coefficient of a deep stone", () => {
    const c = publishedCase("WE-BC-0.2-2");
    expect(agrees(c, "C", findLipShape("broad, deep").coefficient / Math.sqrt(FOOT))).toBe(true);
  });

  it("WE-BC-SDSU the frictionless broad lip", () => {
    const c = publishedCase("WE-BC-SDSU");
    const smooth = findLipShape("broad, smooth");
    expect(agrees(c, "C", smooth.coefficient / Math.sqrt(FOOT))).toBe(true);
    expect(agrees(c, "flow", lipFlow(inSI(c, "length"), inSI(c, "head"), smooth) / CFS)).toBe(true);
  });

  // Other men's weirs of the same kind count the speed of the water that arrives, which Francis leaves out. With the
  // crest at least twice the head above the bottom they must lie close to ours.
  it.each([...cases("WE-KCQ-"), ...cases("WE-RB-")])("%s another formula lies within 5 %%", (_, c) => {
    const [length, head, unit] = c.id.startsWith("WE-KCQ")
      ? [inSI(c, "length"), inSI(c, "head"), CFS]
      : [inSI(c, "b"), inSI(c, "h"), 1];
    const ours = lipFlow(length, head, sharp) / unit;
    expect(Math.abs(ours / given(c.expected, "flow") - 1)).toBeLessThan(0.05);
  });
});
