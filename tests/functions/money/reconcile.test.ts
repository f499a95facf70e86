import { describe, expect, it } from "vitest";
import { RECONCILE } from "../../../src/functions/money/reconcile";
import { manyPapers } from "../../bench/reconcileLines";

type Rows = (string | number)[][];
const call = (...raw: unknown[]): Rows => RECONCILE.evaluate(raw) as Rows;
const column = (rows: Rows, title: string): number => rows[0]?.indexOf(title) ?? -1;
const cell = (rows: Rows, row: number, title: string): string | number | undefined => rows[row]?.[column(rows, title)];

const order = ["PO-1", "GRAVEL", 15, "m3", 50, "Quarry"];

describe("RILL.RECONCILE", () => {
  it("takes a density by name, with its unit, or in the default unit of the system", () => {
    // 24 t at 1.6 t/m³ are 15 m³.
    const tickets = [["PO-1", "GRAVEL", 24, "t", "T1", ""]];
    expect(cell(call([[...order, 1.6]], tickets, [[]], null, "SI"), 1, "Delivered")).toBe(15);
    expect(cell(call([[...order, "1600 kg/m3"]], tickets, [[]], null, "US"), 1, "Delivered")).toBe(15);
    const named = cell(call([[...order, "crushed stone"]], tickets, [[]]), 1, "Delivered") as number;
    // EPA, Standard Volume-to-Weight Conversion Factors: 2,700 lb/yd³ = 1601.8 kg/m³.
    expect(named).toBeCloseTo(24000 / 1601.846, 3);
  });

  it("reads day cells and days as text alike", () => {
    // The spreadsheet counts days from 30 December 1899.
    const serial = (Date.UTC(2031, 4, 28) - Date.UTC(1899, 11, 30)) / 86_400_000;
    for (const late of [serial + 1, "2031-05-29"]) {
      const rows = call(
        [["PO-1", "A", 1, "", 5]],
        [["PO-1", "A", 1, "", "T", late]],
        [["PO-1", "A", 1, "", 5, "I", serial]],
      );
      expect(cell(rows, 1, "Verdict")).toContain("Invoice I is dated before its delivery");
    }
    expect(() => call([["PO-1", "A", 1, "", 5]], [["PO-1", "A", 1, "", "T", "28/5/31"]])).toThrow(
      'deliveries row 1: date must be a date cell or text like 2031-05-28; got "28/5/31"',
    );
    expect(() => call([["PO-1", "A", 1, "", 5]], [["PO-1", "A", 1, "", "T", "2031-02-31"]])).toThrow("date must be");
  });

  it("takes numbers for codes, and blank cells whether they arrive as nothing or as 0", () => {
    const rows = call([[1001, 7, 1, 0, 5, 0, 0]], [[1001, 7, 1, 0, 0, 0]], [[1001, 7, 1, 0, 5, 0, 0]]);
    expect(rows[1]?.slice(0, 4)).toEqual(["1001", "", "7", "each"]);
    expect(cell(rows, 1, "State")).toBe("Agrees");
  });

  it("names the row and column of what can't be read", () => {
    expect(() => call([["PO-1", "", 1, "", 5]])).toThrow("orders row 1: item is needed");
    expect(() => call([["PO-1", "A", "many", "", 5]])).toThrow("orders row 1: quantity");
    expect(() => call([["PO-1", "A", 1, "", 5]], [["PO-1", "A", { error: "#N/A" }]])).toThrow(
      "deliveries row 1: quantity holds the error #N/A",
    );
    expect(() => call([[]], [[]], [[]])).toThrow("orders is needed");
  });

  it("is a table with one header, every row as wide, totals last", () => {
    const rows = call([order], [["PO-2", "GRAVEL", 1]], [[null, "tax", null, null, 5, "I"]]);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([15]));
    expect(rows[rows.length - 1]?.[0]).toBe("Grand total");
    expect(rows.map((row) => row[0])).toEqual([
      "Order",
      "PO-1",
      "PO-2",
      "(none)",
      "Total PO-1",
      "Total PO-2",
      "Total without order",
      "Total Quarry",
      "Total without supplier",
      "Grand total",
    ]);
  });

  it("reconciles 50,000 lines within a second", () => {
    const papers = manyPapers(50_000);
    RECONCILE.evaluate(manyPapers(2_000)); // warm
    const times = [0, 1, 2].map(() => {
      const before = process.cpuUsage();
      RECONCILE.evaluate(papers);
      // The processor's own time: the clock would count what else the machine is doing.
      return process.cpuUsage(before).user / 1000;
    });
    expect(Math.min(...times)).toBeLessThan(1000);
  });
});
