import { describe, expect, it } from "vitest";
import type { CellValue, Grid } from "../../src/host/port";
import { markupsWanted, WANTED_PLACES } from "../../src/taskpane/wantedPrice";

const column = (values: readonly CellValue[]): Grid => values.map((value) => [value]);
/** Eight rows: six kinds of cost, overhead, contingency. */
const COSTS = [1000, 500, 0, 0, 0, 0, 180, 75];
const MARKUPS = [0.2, 0.4, "", "", "", "", 0.1, 0];

function grids(changed: Readonly<Record<string, Grid | undefined>> = {}): (Grid | undefined)[] {
  const usual: Readonly<Record<string, Grid>> = {
    Markups: column(MARKUPS),
    CostsA: column(COSTS),
    CostsB: column(COSTS.map((cost) => 2 * cost)),
    CostsC: column(COSTS.map(() => "")),
    ChosenOption: [["A"]],
    RoundTo: [[0]],
    PriceStanding: [[""]],
    Currency: [["$"]],
    OwnPriceYours: [[""]],
    OwnMarginYours: [[""]],
  };
  return WANTED_PLACES.map((place) => (place in changed ? changed[place] : usual[place]));
}

/** The price before rounding, as the sheet rounds each line. */
function priced(costs: readonly number[], markups: Grid): number {
  return costs.reduce((sum, cost, row) => sum + Math.round(cost * (1 + Number(markups[row]?.[0])) * 100), 0) / 100;
}

describe("the price or margin that is wanted", () => {
  it("sets markups that come to the price: 1,755 of cost, 418 on it by 200, 200 and 18; 2,173 doubles to 2,591", () => {
    const {
      changes: [change],
      said,
    } = markupsWanted("price", "$2,591", grids());
    expect(change.place).toBe("Markups");
    expect(change.values[2]).toEqual([""]);
    expect(change.values.map(([markup]) => Number(Number(markup).toFixed(9)))).toEqual([0.4, 0.8, 0, 0, 0, 0, 0.2, 0]);
    // Gross margin over 1,000 + 500 + 75: (2591 - 1575) / 2591 = 39.2 %.
    expect(said).toBe("Markups set: $2,591.00 before tax; gross margin 39.2%.");
  });

  it.each(["37%", "37", "0.37", "37.0 %"])("reads a margin of %s: 1,575 / 0.63 = 2,500", (typed) => {
    const {
      changes: [change],
      said,
    } = markupsWanted("margin", typed, grids());
    expect(priced(COSTS, change.values)).toBe(2500);
    expect(said).toContain("gross margin 37.0%");
  });

  it("takes the costs of the option that is quoted, and keeps the step", () => {
    const {
      changes: [change],
      said,
    } = markupsWanted("price", "4,801", grids({ ChosenOption: [["B"]], RoundTo: [[10]] }));
    expect(
      priced(
        COSTS.map((cost) => 2 * cost),
        change.values,
      ),
    ).toBe(4810);
    expect(said).toMatch(/\$4,810\.00 before tax, a multiple of 10 as set on Price/);
  });

  it("clears a price typed on Price, which would go before the markups", () => {
    const { changes } = markupsWanted("price", "2591", grids({ OwnPriceYours: [[2400]] }));
    expect(changes.map(({ place }) => place)).toEqual(["Markups", "OwnPriceYours"]);
    expect(changes[1]).toEqual({ place: "OwnPriceYours", values: [[""]] });
  });

  it.each<[string, () => unknown, RegExp]>([
    ["nothing typed", () => markupsWanted("price", " ", grids()), /type the price/],
    ["no number", () => markupsWanted("price", "cheap", grids()), /price "cheap"/],
    ["a price under the cost", () => markupsWanted("price", "1700", grids()), /1700 is under the cost of 1755/],
    ["a margin over the range", () => markupsWanted("margin", "95", grids()), /0 to 90% of the price; got 95%/],
    ["a margin too thin to pay the overhead", () => markupsWanted("margin", "5", grids()), /under the cost of 1755/],
    [
      "a job without a price",
      () => markupsWanted("price", "2500", grids({ PriceStanding: [["not complete: Liner"]] })),
      /no price to set yet \(not complete: Liner\)/,
    ],
    ["a workbook that is none", () => markupsWanted("price", "2500", grids({ Markups: undefined })), /see Price/],
  ])("says what is wrong with %s", (_, work, sentence) => {
    expect(work).toThrow(sentence);
  });
});
