import { describe, expect, it } from "vitest";
import { scopeClashes } from "../../../src/calc/money/scopeClash";

const pairs = (excluded: string[], priced: string[]): string[] =>
  scopeClashes(excluded, priced).map((clash) => `${clash.excluded} | ${clash.priced}`);

describe("scopeClashes", () => {
  it("finds the electrician and the permit that a quote once both priced and excluded", () => {
    expect(
      pairs(
        ["Power to the pump and its protection: a licensed electrician's work.", "Permits.", "Filling water."],
        ["Electrician: GFCI outlet at the pump", "Marsh plants in 4 in pots (24)", "Permit"],
      ),
    ).toEqual([
      "Power to the pump and its protection: a licensed electrician's work. | Electrician: GFCI outlet at the pump",
      "Permits. | Permit",
    ]);
  });

  it("takes words that stand in every sentence of the trade for no clash", () => {
    expect(
      pairs(["Groundwater and large stone below the basin."], ["Stone seat beside the basin", "Second pump"]),
    ).toEqual([]);
    expect(pairs([], ["Permit"])).toEqual([]);
    expect(pairs(["Permits."], ["", "of"])).toEqual([]);
  });

  it("lets an exclusion say where the work in the price ends", () => {
    expect(pairs(["Electrical work beyond the outlet."], ["Electrician: outlet"])).toEqual([]);
    expect(pairs(["Electrical work other than the outlet."], ["Electrician: outlet"])).toEqual([]);
    // "unless named above" says nothing of where it ends.
    expect(pairs(["Permits, unless named above."], ["Permit"])).toHaveLength(1);
  });
});
