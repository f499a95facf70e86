import { describe, expect, it } from "vitest";
import { fromCents } from "../../../../src/calc/money/cents";
import type { Amounts } from "../../../../src/calc/money/reconcile/lines";
import { reconcile } from "../../../../src/calc/money/reconcile/reconcile";
import { GRAND_TOTAL } from "../../../../src/calc/money/reconcile/totals";
import { deliveries, EXPECTED, invoices, orders } from "./handWorked";

const moneyOf = (a: Amounts): number[] =>
  [a.ordered, a.billed, a.priceDifference, a.toCome, a.atStake].map((cents) => fromCents(cents));

describe("a reconciliation worked by hand", () => {
  const { lines, totals } = reconcile(orders, deliveries, invoices, 0.02);

  it("has a line for every order and item, and none besides", () => {
    expect(lines.map(({ item }) => item).sort()).toEqual(Object.keys(EXPECTED).sort());
  });

  it.each(lines.map((line) => [line.item, line] as const))("%s", (item, line) => {
    const expected = EXPECTED[item];
    const q = line.quantities;
    expect(q && [q.ordered, q.delivered, q.invoiced]).toEqual(expected?.quantities);
    expect(moneyOf(line.amounts)).toEqual(expected?.amounts);
    for (const sentence of expected?.says ?? []) expect(line.verdict).toContain(sentence);
    expect(line.state).toBe(expected?.state);
  });

  it("adds up per order, per supplier and in all", () => {
    const of = (name: string): number[] => moneyOf(totals.find((total) => total.name === name)?.amounts ?? never());
    // PO-1 ordered 768 + 600 + 400 + 768 + 750 + 450 + 600 + 420 = 4756; billed the goods 4661.10 + tax 299.14 = 4960.24;
    // to come 180 + 450 = 630; at stake 180 + 80 + 445.50 = 705.50
    expect(of("Total PO-1")).toEqual([4756, 4960.24, 0, 630, 705.5]);
    expect(of("Total Quarry")).toEqual(of("Total PO-1"));
    // PO-2 ordered 480 + 215 + 120 + 250 + 1240 + 47.50 + 240 = 2592.50;
    // billed 960 + 240 + 120 + 200 + 1240 + 240 = 3000; to come 50 + 47.50 + 240 = 337.50; at stake 480 + 25 + 240 = 745
    expect(of("Total PO-2")).toEqual([2592.5, 3000, 25, 337.5, 745]);
    // PO-3 ordered 640 + 170 = 810; billed 640 + 170 + 45 = 855; to come 640; at stake 640 + 45 = 685
    expect(of("Total PO-3")).toEqual([810, 855, 0, 640, 685]);
    // All: 4756 + 2592.50 + 810 = 8158.50; 4960.24 + 3000 + 855 = 8815.24; 25; 630 + 337.50 + 640 = 1607.50;
    // 705.50 + 745 + 685 = 2135.50
    expect(of(GRAND_TOTAL)).toEqual([8158.5, 8815.24, 25, 1607.5, 2135.5]);
    // By the states above: to query 02, 03, 06, 08, 09, 10, 11, 15CODEA, 16, 17, 18, fuel; open 07, 12, 14, 15-CODE-A;
    // agreeing 01, 04, 05, 13, freight, tax.
    expect(totals[totals.length - 1]).toMatchObject({
      name: GRAND_TOTAL,
      state: "Query",
      verdict: "12 to query, 4 open, 6 agree; 2135.50 at stake",
    });
  });
});

function never(): never {
  throw new Error("the line is missing");
}
