import { beforeAll, describe, expect, it } from "vitest";
import { ALL, tries } from "../../effort";
import type { CellValue } from "../../../src/workbook/model";
import { assemble } from "../../../src/workbook/assemble";
import type { TAKEOFF_KEYS } from "../../../src/workbook/sheets/takeoff/takeoffColumns";
import { LINES, MONEY_SHEETS, demo, takeoffColumn } from "./moneyJob";
import type { Tried } from "./tried";

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

describe("Rates", () => {
  it("builds an hour up from wage and burden", () => {
    // 7.65 + 2.4 + 8.8 + 3.1 + 6.4 + 5.7 + 1.8 = 35.85 %; 37.50 × 1.3585 = 50.94375; (50.94 + 42.45 + 31.79) / 3 = 41.73
    expect(tried.number("BurdenTotal")).toBeCloseTo(0.3585, 9);
    expect(tried.value("LaborHourRates", 1)).toBe(50.94);
    expect(tried.value("CrewHourRate")).toBe(41.73);
    // 41 + 9.80 + 6.20 = 57.00; 0.7 × 57 + 0.3 × 46.30 = 53.79
    expect(tried.value("MachineHourRate")).toBe(53.79);
  });

  it("calls a shipped price invented until it, or its day, is another, or all are confirmed", async () => {
    const marks = (one: Tried): unknown[] => [1, 2, 3].map((row) => one.value("RateMarks", row));
    expect(marks(tried)).toEqual(["invented", "invented", "invented"]);
    expect(marks(await demo({ RateCosts: [[1.23]], RateDays: [[], [46_200]] }))).toEqual(["", "", "invented"]);
    expect(marks(await demo({ PricesConfirmed: 46_160 }))).toEqual(["", "", ""]);
  });

  it("keeps a mark with its price where the list is sorted, and marks what is added below", async () => {
    const [first, second, below] = [LINES.length + 2, LINES.length + 3, 150];
    const width = 14;
    const row = (at: number): CellValue[] =>
      Array.from({ length: width }, (_, column) => tried.value("RateTable", at, column + 1) as CellValue);
    const rows: CellValue[][] = Array.from({ length: below }, () => []);
    // The two rows change places, the second with a price of its own; far below stands an item from a book that invented it.
    rows[first - 1] = row(second).map((value, column) => (column === 3 ? 12.34 : value));
    rows[second - 1] = row(first);
    rows[below - 1] = ["Lamp", "LAMP", "each", 44, 1, 0, 0, "", "material", "yes", 46_113, "", "invented"];
    expect(row(first)[12]).toBe("invented");
    const one = await demo({ RateTable: rows });
    const mark = (at: number): unknown => one.value("RateMarks", at);
    expect([mark(first), mark(second), mark(below - 1), mark(below), mark(below + 1)]).toEqual([
      ...["", "invented", "", "invented"],
      "",
    ]);
  });

  it("finds codes that stand twice", async () => {
    const one = await demo({ RateCodes: [...LINES.map(() => []), ["NEW"], ["new"]] });
    expect(one.verdict("Rates", "Codes that stand twice")).toBe("FIX");
    expect(tried.verdict("Rates", "Codes that stand twice")).toBe("OK");
  });

  it("takes 20,000 items of one's own, found from Takeoff to the last row", async () => {
    // What lies between is left blank in the short run: writing and reading 220,000 cells takes seconds.
    const filled = (index: number) => ALL || index <= 100 || index > 19_900;
    const item = (index: number) => [
      `Item ${index}`,
      `N-${index}`,
      "each",
      index / 100,
      4,
      0,
      0,
      "Far Yard",
      "material",
      "yes",
      46_113,
    ];
    const one = await demo({
      RateTable: [
        ...LINES.map(() => []),
        [],
        ...Array.from({ length: 20_000 }, (_, index) => (filled(index + 1) ? item(index + 1) : [])),
      ],
      OwnLines: [[], [], [], [undefined, "n-19998", undefined, 5], [undefined, "N-20001", undefined, 1]],
    });
    const own = (row: number, key: (typeof TAKEOFF_KEYS)[number]) => one.value("OwnLinesUsed", row, takeoffColumn(key));
    // 5 in packs of 4 are 8, at 199.98 each 1,599.84.
    expect([own(4, "description"), own(4, "order"), own(4, "price"), own(4, "cost"), own(4, "supplier")]).toEqual([
      ...["Item 19998", 8, 199.98, 1599.84],
      "Far Yard",
    ]);
    expect(own(5, "look")).toBe("no cost");
    expect([one.value("RateCount"), one.value("RateRepeats")]).toEqual([LINES.length + 1 + tries(200, 20_000), 0]);
  });

  it("keeps the codes that Takeoff reads from being changed", () => {
    const model = assemble(MONEY_SHEETS, "US", "demo");
    const codes = model.names.find(({ name }) => name === "RateCodes");
    const sheet = model.sheets.find(({ name }) => name === "Rates");
    const unlocked = (row: number): boolean | undefined =>
      sheet?.rows.get((codes?.area.top ?? 0) + row)?.get(codes?.area.left ?? 0)?.style.unlocked;
    expect(LINES.map((_, index) => unlocked(index))).toEqual(LINES.map(() => undefined));
    // Behind them the line of all freight, then one's own.
    expect([unlocked(LINES.length), unlocked(LINES.length + 1)]).toEqual([undefined, true]);
  });
});
