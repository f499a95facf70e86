import { describe, it } from "vitest";
import { findLipShape, lipFlow, ownLip } from "../../src/calc/water/lip";
import { kindsvaterCarterCoefficient } from "../../src/calc/water/sharpCrest";
import { expectPublished, given, publishedCase, publishedCases, type PublishedCase } from "./cases";
import { FOOT, inSI } from "./si";

const WEIRS = "6 weirs";
const CFS = FOOT ** 3;
/** A coefficient printed in ft^½/s, in m^½/s. */
const inUS = (coefficient: number): number => coefficient * Math.sqrt(FOOT);

const cases = (prefix: string): [string, PublishedCase][] => publishedCases(WEIRS, prefix).map((c) => [c.id, c]);

describe("lips against published weirs", () => {
  it.each([...cases("WE-BC-0"), ...cases("WE-BC-1")])("%s broad lip with the table's coefficient", (_, c) => {
    const flow = lipFlow(10 * FOOT, inSI(c, "head"), ownLip(inUS(given(c.expected, "C"))));
    expectPublished(c, "unitFlow", flow / CFS / 10);
  });

  it("WE-BC-0.2-2 is the coefficient of a deep stone", () => {
    const c = publishedCase("WE-BC-0.2-2");
    expectPublished(c, "C", findLipShape("broad, deep").coefficient / Math.sqrt(FOOT));
  });

  it.each(cases("WE-KC-"))("%s Kindsvater and Carter's coefficient", (_, c) => {
    const coefficient = (headRatio: number): number =>
      kindsvaterCarterCoefficient(given(c.inputs, "LoverB"), headRatio) / Math.sqrt(FOOT);
    expectPublished(c, "Ce", coefficient(given(c.inputs, "HoverP")));
    expectPublished(c, "c1", coefficient(1) - coefficient(0));
    expectPublished(c, "c2", coefficient(0));
  });
});
