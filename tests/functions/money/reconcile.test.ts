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
    expect(cell(call([[...order, 1.6]], tickets, [[]], null, null, "SI"), 1, "Delivered")).toBe(15);
    expect(cell(call([[...order, "1600 kg/m3"]], tickets, [[]], null, null, "US"), 1, "Delivered")).toBe(15);
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
    const unread = (date: string): unknown =>
      cell(call([["PO-1", "A", 1, "", 5]], [["PO-1", "A", 1, "", "T", date]]), 2, "Verdict");
    expect(unread("28/5/31")).toBe(
      'Delivery row 1 (ticket T) was not read: date must be a date cell or text like 2031-05-28; got "28/5/31".',
    );
    expect(unread("2031-02-31")).toContain("date must be");
  });

  it("takes numbers for codes, and blank cells whether they arrive as nothing or as 0", () => {
    const rows = call([[1001, 7, 1, 0, 5, 0, 0]], [[1001, 7, 1, 0, 0, 0]], [[1001, 7, 1, 0, 5, 0, 0]]);
    expect([0, 1, 2, 5].map((at) => rows[1]?.[at])).toEqual(["1001", "", "7", "each"]);
    expect(cell(rows, 1, "State")).toBe("Agrees");
  });

  it("makes a row that can't be read a line of its own, names the row and why, and keeps all others", () => {
    const good = ["PO-1", "A", 1, "", 5, "Yard"];
    const alone = call([good], [["PO-1", "A", 1]], [["PO-1", "A", 1, "", 5, "I"]]);
    const cases: [orders: unknown[][], deliveries: unknown[][], invoices: unknown[][], says: string][] = [
      [[good, ["PO-1", "", 1, "", 5, ""]], [], [], "Order row 2 was not read: item is needed: some text."],
      [[good, ["PO-1", "B", "many", "", 5, ""]], [], [], 'Order row 2 was not read: quantity "many" is not understood'],
      [[good], [["PO-1", "A", "half"]], [], 'Delivery row 2 was not read: quantity "half" is not understood'],
      [[good], [["PO-1", "A", { error: "#N/A" }]], [], "Delivery row 2 was not read: quantity holds the error #N/A"],
      [[good], [["PO-1", "A", 2e9]], [], "Delivery row 2 was not read: quantity must be"],
      [[good], [], [["PO-1", "A", 1, "", "5/ton", "I7"]], "Invoice row 2 (invoice I7) was not read: price must be"],
      [
        [good],
        [],
        [["PO-1", "A", "1 ton", "m3", 5, "I7"]],
        "Invoice row 2 (invoice I7) was not read: quantity is in ton",
      ],
    ];
    for (const [orders, deliveries, invoices, says] of cases) {
      const pad = (rows: unknown[][], width: number): unknown[][] =>
        rows.map((row) => [...row, ...Array.from({ length: width - row.length }, () => "")]);
      const rows = call(
        pad(orders, 6),
        pad([["PO-1", "A", 1], ...deliveries], 3),
        pad([["PO-1", "A", 1, "", 5, "I"], ...invoices], 6),
      );
      expect(rows[1]).toEqual(alone[1]);
      expect(rows[2]?.slice(0, 2)).toEqual(["PO-1", "Yard"]);
      // Nothing is known of its quantities and money, which is not nothing.
      expect(rows[2]?.slice(5)).toEqual(Array.from({ length: 10 }, () => ""));
      expect(cell(rows, 2, "State")).toBe("Query");
      expect(cell(rows, 2, "Verdict")).toContain(says);
      const total = rows.length - 1;
      expect(rows[total]?.slice(5)).toEqual(alone[alone.length - 1]?.slice(5));
      expect(cell(rows, total, "Verdict")).toContain("1 row not read and not in these sums");
    }
  });

  it("refuses what is no list of papers", () => {
    expect(() => call([[]], [[]], [[]])).toThrow("orders is needed");
    expect(() => call([["PO-1", "A"]])).toThrow("orders needs at least 5 columns");
  });

  it("reads a quantity that is text with its unit", () => {
    const orders = [
      ["PO-1", "GRAVEL", "0.5 ton", "", 32],
      ["PO-1", "HOSE", "6 rolls", "", 40],
      ["PO-1", "STONE", "2,000 lb", "ton", 50],
    ];
    const tickets = [
      ["PO-1", "GRAVEL", "1,000 lb", ""],
      ["PO-1", "HOSE", "6", ""],
      ["PO-1", "STONE", "1 ton", ""],
    ];
    const invoices = [
      ["PO-1", "GRAVEL", "0.5 ton", "", 32, "I"],
      ["PO-1", "HOSE", "6 Rolls", "rolls", 40, "I"],
      ["PO-1", "STONE", 1, "", 50, "I"],
    ];
    const rows = call(orders, tickets, invoices);
    // By hand: 1,000 lb / 2,000 = 0.5 ton × 32 = 16; 6 × 40 = 240; 2,000 lb are 1 ton × 50 = 50.
    expect(rows.slice(1, 4).map((row) => [row[5], row[6], row[7], row[9], row[10], row[11], row[3]])).toEqual([
      ["ton", 0.5, 0.5, 0.5, 16, 16, "Agrees"],
      ["rolls", 6, 6, 6, 240, 240, "Agrees"],
      ["ton", 1, 1, 1, 50, 50, "Agrees"],
    ]);
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
