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
    expect(tried.value("ReconciledOrdered")).toBe(last[8]);
    expect(tried.value("ReconciledBilled")).toBe(last[9]);
    expect(tried.value("ReconciledAtStake")).toBe(last[12]);
    expect(tried.value("OrderedAmount")).toBeCloseTo(last[8] as number, 9);
    expect(tried.verdict("Reconcile", "Money at stake")).toBe("LOOK");
  });

  it("agrees when tickets and invoices repeat the orders", async () => {
    const one = await demo({
      ...NO_PAPERS,
      OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""], ...NO_PAPERS.OrderLines.slice(1)],
      TicketLines: [["P-1", "PACKS", 25, "each", "T", 46200], ...NO_PAPERS.TicketLines.slice(1)],
      InvoiceLines: [["P-1", "PACKS", 25, "each", 4, "I", 46201], ...NO_PAPERS.InvoiceLines.slice(1)],
    });
    expect(one.value("Reconciled", 1, 15)).toBe("Agrees.");
    expect(one.value("ReconciledAtStake")).toBe(0);
    expect(one.verdict("Reconcile", "Money at stake")).toBe("OK");
  });
});
