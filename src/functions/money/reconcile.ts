import { fromCents } from "../../calc/money/cents";
import type { Amounts, ReconciledLine } from "../../calc/money/reconcile/lines";
import { reconcile, USUAL_TOLERANCE } from "../../calc/money/reconcile/reconcile";
import { clean } from "../../calc/money/reconcile/stoneUnits";
import type { Total } from "../../calc/money/reconcile/totals";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { number, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { stone } from "../stone/arguments";
import { code, day, PAPER_RANGE } from "./arguments";

const unit = optional(code("Unit, such as ton, lb, t, kg, yd3, m3, each"), "the order's unit");
const order = optional(code("Order number"), "none named");

export const RECONCILE = declare({
  name: "RECONCILE",
  topic: "money",
  summary:
    "Squares orders, delivery tickets and invoices per order and item, with a verdict in plain words and totals.",
  formula:
    "outstanding = ordered - delivered; price difference = Σ (invoice line - its quantity at the nearest ordered price); " +
    "at stake = billed - the least of ordered, delivered and invoiced at the ordered price, at least 0",
  source: "Three-way match of order, receipt and invoice, any text on purchasing; weights and volumes by NIST SP 811",
  limits:
    "Order lines of the same order and item add up (a cut is a line below zero); invoices are held against the nearest of their prices. " +
    "A ticket or invoice line entered twice with the same quantity counts once. Weight meets volume only with a density. " +
    "Prices agree to the cent, quantities to the tolerance.",
  args: {
    orders: table(
      "Orders: order, item, quantity, unit, price, supplier, stone or density",
      {
        order: code("Order number"),
        item: code("Item code"),
        quantity: number("Quantity ordered; below zero cuts an earlier line", PAPER_RANGE),
        unit: optional(code("Unit of quantity and price"), "each"),
        price: number("Price per unit", PAPER_RANGE),
        supplier: optional(code("Supplier"), "none"),
        density: optional(stone, "none"),
      },
      { mayBeEmpty: true },
    ),
    deliveries: table(
      "Tickets: order, item, quantity, unit, ticket, date",
      {
        order,
        item: code("Item code"),
        quantity: optional(number("Quantity delivered; below zero went back", PAPER_RANGE), "remarked"),
        unit,
        ticket: optional(code("Ticket number"), "none"),
        date: optional(day("Day delivered"), "unknown"),
      },
      { mayBeEmpty: true },
    ),
    invoices: table(
      "Invoices: order, item, quantity, unit, price, invoice, date",
      {
        order,
        item: code("Item code, or freight, tax"),
        quantity: optional(number("Quantity invoiced; below zero is a credit", PAPER_RANGE), "remarked"),
        unit,
        price: optional(number("Price per unit", PAPER_RANGE), "remarked"),
        invoice: optional(code("Invoice number"), "none"),
        date: optional(day("Day of the invoice"), "unknown"),
      },
      { mayBeEmpty: true },
    ),
    tolerance: optional(share("Share by which quantities may differ"), `${USUAL_TOLERANCE}`, USUAL_TOLERANCE),
  },
  result: tableResult("the reconciliation, totals last", [
    { title: "Order" },
    { title: "Supplier" },
    { title: "Item" },
    { title: "Unit" },
    { title: "Ordered" },
    { title: "Delivered" },
    { title: "Outstanding" },
    { title: "Invoiced" },
    { title: "Ordered amount" },
    { title: "Billed amount" },
    { title: "Price difference" },
    { title: "Still to come" },
    { title: "At stake" },
    { title: "State" },
    { title: "Verdict" },
  ]),
  examples: [
    {
      args: [
        [["PO-1", "GRAVEL", 24, "ton", 32, "Quarry"]],
        [["PO-1", "GRAVEL", 48000, "lb", "T-7", "2031-05-28"]],
        [["PO-1", "GRAVEL", 24, "ton", 33, "88", "2031-05-30"]],
      ],
      gives: [
        { at: [1, 5], is: 24 },
        { at: [1, 6], is: 0 },
        { at: [1, 10], is: 24 },
        { at: [1, 12], is: 24 },
        { at: [1, 13], is: "Query" },
      ],
      within: 0,
      from: "by hand: 48,000 lb / 2,000 = 24 tons; 24 × (33 - 32) = 24 too much",
    },
  ],
  compute({ orders, deliveries, invoices, tolerance }) {
    const { lines, totals } = reconcile(orders, deliveries, invoices, tolerance);
    return [...lines.map(lineCells), ...totals.map(totalCells)];
  },
});

function lineCells(line: ReconciledLine): TableCell[] {
  const q = line.quantities;
  return [
    line.order === "" ? "(none)" : line.order,
    line.supplier,
    line.item,
    line.unit,
    ...(q ? [q.ordered, q.delivered, clean(q.ordered - q.delivered), q.invoiced] : ["", "", "", ""]),
    ...amountCells(line.amounts),
    line.state,
    line.verdict,
  ];
}

function totalCells({ name, supplier, amounts, state, verdict }: Total): TableCell[] {
  return [name, supplier, "", "", "", "", "", "", ...amountCells(amounts), state, verdict];
}

function amountCells(a: Amounts): TableCell[] {
  return [a.ordered, a.billed, a.priceDifference, a.toCome, a.atStake].map(fromCents);
}
