import { describe, expect, it } from "vitest";
import { LINES, MONEY_SHEETS } from "./moneyJob";
import { Tried, type Typed } from "./tried";

describe("the money sheets", () => {
  it("show no error, filled or blank, in either system", async () => {
    const all = [
      await Tried.of(MONEY_SHEETS, "US", "demo"),
      await Tried.of(MONEY_SHEETS, "SI", "demo"),
      await Tried.of(MONEY_SHEETS, "US", "blank"),
    ];
    for (const one of all) {
      for (const { name } of MONEY_SHEETS) expect(one.errors(name), name).toEqual([]);
    }
  });
});

describe("from takeoff to a squared invoice in a blank workbook", () => {
  // A blank workbook has no prices and no suppliers.
  const listed = {
    RateCosts: LINES.map(({ price }) => [price]),
    RateSuppliers: LINES.map(({ supplier }) => [supplier]),
  };
  const blank = (typed: Typed): Promise<Tried> => Tried.of(MONEY_SHEETS, "US", "blank", { ...listed, ...typed });
  const numbered = {
    SupplierTable: [
      [undefined, "P-1"],
      [undefined, "P-2"],
    ],
  };
  // South's two lines, as its order shows them.
  const book = [
    ["P-2", "PACKS", 25, "each", 4, "South", ""],
    ["P-2", "LEAST", 8, "each", 57.5, "South", ""],
  ];
  const tickets = [
    ["P-2", "PACKS", 15, "", "T1", 46200],
    ["P-2", "PACKS", 10, "", "T2", 46202],
    ["P-2", "LEAST", 8, "each", "T1", 46200],
  ];
  const invoices = [
    ["P-2", "PACKS", 25, "each", 4, "I1", 46203],
    ["P-2", "LEAST", 8, "each", 57.5, "I1", 46203],
  ];

  it("orders what is open, and counts what was ordered off it", async () => {
    const before = await blank(numbered);
    expect([before.value("OrderSuppliers", 2), before.value("TakeoffOpen", 2)]).toEqual(["South", 25]);
    expect(before.value("ReconciledAtStake")).toBe("");
    const half = await blank({ ...numbered, OrderLines: [["P-2", "PACKS", 20, "each", 4, "South", ""]] });
    expect([half.value("TakeoffOpen", 2), half.value("TakeoffLooks", 2)]).toEqual([5, "ordered short"]);
    expect(half.value("OrderedAmount")).toBe(80);
    const after = await blank({ ...numbered, OrderLines: book });
    expect([after.value("TakeoffOpen", 2), after.value("TakeoffOpen", 4), after.value("OrderedAmount")]).toEqual([
      0, 0, 560,
    ]);
    expect(after.value("SupplierTable", 2, 6)).toBe(0);
    expect(after.value("ReconciledToCome")).toBe(560);
  });

  it("squares tickets and invoices with the order", async () => {
    const squared = await blank({ ...numbered, OrderLines: book, TicketLines: tickets, InvoiceLines: invoices });
    const amounts = ["ReconciledOrdered", "ReconciledBilled", "ReconciledToCome", "ReconciledAtStake"];
    expect(amounts.map((name) => squared.value(name))).toEqual([560, 560, 0, 0]);
    expect([1, 2].map((row) => squared.value("Reconciled", row, 4))).toEqual(["Agrees", "Agrees"]);
    // One pack too many is billed: 4.00 too much.
    const dear = [["P-2", "PACKS", 26, "each", 4, "I1", 46203], ...invoices.slice(1)];
    const billed = await blank({ ...numbered, OrderLines: book, TicketLines: tickets, InvoiceLines: dear });
    expect([billed.value("ReconciledAtStake"), billed.value("Reconciled", 1, 4)]).toEqual([4, "Query"]);
    for (const sheet of ["Takeoff", "Orders", "Receipts", "Reconcile"])
      expect(squared.errors(sheet), sheet).toEqual([]);
  });
});
