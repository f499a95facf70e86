import { beforeAll, describe, expect, it } from "vitest";
import { RECONCILE } from "../../../src/functions/money/reconcile";
import { INVOICES, ORDER_BOOK, TICKETS } from "../../../src/workbook/sheets/money/demoPapers";
import { NO_PAPERS, demo } from "./moneyJob";
import type { Tried } from "./tried";

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

describe("Reconcile", () => {
  it("shows what RILL.RECONCILE says of the papers, and its grand total on top", () => {
    const rows = RECONCILE.evaluate([
      ORDER_BOOK.US.map((row) => row.slice(0, 7)),
      TICKETS.US,
      INVOICES.US,
      0.02,
      "US",
    ]) as unknown[][];
    const [, ...body] = rows;
    body.forEach((row, index) => {
      row.forEach((value, at) => expect(tried.value("Reconciled", index + 1, at + 1)).toEqual(value));
    });
    const last = body[body.length - 1] ?? [];
    expect(tried.value("ReconciledOrdered")).toBe(last[10]);
    expect(tried.value("ReconciledBilled")).toBe(last[11]);
    expect(tried.value("ReconciledAtStake")).toBe(last[14]);
    expect(tried.value("OrderedAmount")).toBeCloseTo(last[10] as number, 9);
    expect(tried.verdict("Reconcile", "Money at stake")).toBe("LOOK");
  });

  it("keeps every other line when a row can't be read, and says which row and why", async () => {
    const papers = {
      ...NO_PAPERS,
      OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""], ...NO_PAPERS.OrderLines.slice(1)],
      TicketLines: [
        ["P-1", "PACKS", 25, "each", "T", 46200],
        ["P-1", "LEAST", "half", "", "T2", 46200],
        ["P-1", "ROUND", "0.5 ton", "", "T3", 46200],
        ...NO_PAPERS.TicketLines.slice(3),
      ],
      InvoiceLines: [["P-1", "PACKS", 25, "each", 4, "I", 46201], ...NO_PAPERS.InvoiceLines.slice(1)],
    };
    const one = await demo(papers);
    expect(one.value("Reconciled", 1, 5)).toBe("Agrees.");
    // The ticket of half a ton is read; nobody ordered it.
    expect([2, 6, 8, 5].map((column) => one.value("Reconciled", 2, column))).toEqual([
      "South",
      "ton",
      0.5,
      "Not on the order.",
    ]);
    expect([1, 3, 8, 4].map((column) => one.value("Reconciled", 3, column))).toEqual(["P-1", "LEAST", "", "Query"]);
    expect(one.value("Reconciled", 3, 5)).toContain('Delivery row 2 (ticket T2) was not read: quantity "half"');
    expect(one.value("ReconciledBilled")).toBe(100);
    expect(one.verdict("Reconcile", "Rows that could not be read")).toBe("FIX");
    expect(one.verdict("Reconcile", "Room for every line")).toBe("OK");
    expect(one.errors("Reconcile")).toEqual([]);
    const good = await demo({ ...papers, TicketLines: NO_PAPERS.TicketLines });
    expect(good.verdict("Reconcile", "Rows that could not be read")).toBe("OK");
  });

  it("says of a table that could not be made what is true", async () => {
    const one = await demo({ QuantityTolerance: "much" });
    expect(one.verdict("Reconcile", "Room for every line")).not.toBe("OK");
    const said = one.texts("Reconcile");
    expect(said).toContain("The table could not be made: point at the error in its first cell to read why.");
    expect(said.join()).not.toContain("More than 400 lines");
  });

  it("agrees when tickets and invoices repeat the orders", async () => {
    const one = await demo({
      ...NO_PAPERS,
      OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""], ...NO_PAPERS.OrderLines.slice(1)],
      TicketLines: [["P-1", "PACKS", 25, "each", "T", 46200], ...NO_PAPERS.TicketLines.slice(1)],
      InvoiceLines: [["P-1", "PACKS", 25, "each", 4, "I", 46201], ...NO_PAPERS.InvoiceLines.slice(1)],
    });
    expect(one.value("Reconciled", 1, 5)).toBe("Agrees.");
    expect(one.value("ReconciledAtStake")).toBe(0);
    expect(one.verdict("Reconcile", "Money at stake")).toBe("OK");
  });
});
