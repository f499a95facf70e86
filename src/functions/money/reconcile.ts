import { fromCents } from "../../calc/money/cents";
import type { Amounts, Paper, ReconciledLine, UnreadLine, UnreadVerdict } from "../../calc/money/reconcile/lines";
import { reconcile, USUAL_TOLERANCE } from "../../calc/money/reconcile/reconcile";
import { clean } from "../../calc/money/reconcile/stoneUnits";
import type { Total } from "../../calc/money/reconcile/totals";
import { besideUnit, type WrittenQuantity } from "../../calc/money/reconcile/writtenQuantity";
import { declare } from "../contract/declaration";
import { lenientTable, type LenientRows } from "../contract/lenientTable";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { errorTextOf } from "../contract/raw";
import { number, share } from "../contract/scalars";
import { stone } from "../stone/arguments";
import { code, currency, day, digitsOf, PAPER_RANGE } from "./arguments";
import { paperQuantity } from "./paperQuantity";

const unit = optional(code("Unit, such as ton, lb, t, kg, yd3, m3, each"), "the order's unit");
const order = optional(code("Order number"), "none named");

/** A row with its quantity as a number in one unit. */
type Plain<T> = Omit<T, "quantity" | "unit"> & { readonly quantity: number | undefined; readonly unit?: string };

/** Gives a row whose quantity was written with its unit one quantity and one unit. */
function plainRow<T extends { quantity: number | WrittenQuantity | undefined; unit?: string; density?: number }>(
  row: T,
): Plain<T> {
  if (typeof row.quantity !== "object") return row as Plain<T>;
  return { ...row, ...besideUnit(row.quantity, row.unit, row.density, "quantity") };
}

export const RECONCILE = declare({
  name: "RECONCILE",
  topic: "money",
  summary:
    "Squares orders, delivery tickets and invoices per order and item, with a verdict in plain words and totals.",
  formula:
    "outstanding = ordered - delivered; price difference = Σ (invoice line - its quantity at the ordered prices); " +
    "at stake = billed - the least of ordered, delivered and invoiced at the ordered prices, at least 0",
  source: "Three-way match of order, receipt and invoice, any text on purchasing; weights and volumes by NIST SP 811",
  limits:
    "Order lines of the same order and item add up (a cut is a line below zero). Ordered at several prices, an invoice line takes its own price while that has quantity left, " +
    "and otherwise the cheapest still free: the cheapest reading for you. " +
    "The same quantity under the same ticket number counts once. So does an invoice line entered twice, unless deliveries cover both. " +
    "Weight meets volume only with a density. Prices agree to the currency's smallest unit, quantities to the tolerance; " +
    "a price turned into another unit may be off by its rounding, at most 0.1%, without a query, but all of it is counted. " +
    "Freight and tax need no ticket. A row that cannot be read is a line of its own, to query; its money is in no sum.",
  args: {
    orders: lenientTable(
      "Orders: order, item, quantity, unit, price, supplier, stone or density",
      {
        order: code("Order number"),
        item: code("Item code"),
        quantity: paperQuantity("Quantity ordered; below zero cuts an earlier line"),
        unit: optional(code("Unit of quantity and price"), "the quantity's own, or each"),
        price: number("Price per unit", PAPER_RANGE),
        supplier: optional(code("Supplier"), "none"),
        density: optional(stone, "none"),
      },
      (row) => plainRow(row) as Plain<typeof row> & { readonly quantity: number },
    ),
    deliveries: lenientTable(
      "Tickets: order, item, quantity, unit, ticket, date",
      {
        order,
        item: code("Item code"),
        quantity: optional(paperQuantity("Quantity delivered; below zero went back"), "remarked"),
        unit,
        ticket: optional(code("Ticket number"), "none"),
        date: optional(day("Day delivered"), "unknown"),
      },
      plainRow,
    ),
    invoices: lenientTable(
      "Invoices: order, item, quantity, unit, price, invoice, date",
      {
        order,
        item: code("Item code, or freight, tax"),
        quantity: optional(paperQuantity("Quantity invoiced; below zero is a credit"), "remarked"),
        unit,
        price: optional(number("Price per unit", PAPER_RANGE), "remarked"),
        invoice: optional(code("Invoice number"), "none"),
        date: optional(day("Day of the invoice"), "unknown"),
      },
      plainRow,
    ),
    tolerance: optional(share("Share by which quantities may differ"), `${USUAL_TOLERANCE}`, USUAL_TOLERANCE),
    currency,
  },
  result: tableResult("the reconciliation, totals last", [
    { title: "Order" },
    { title: "Supplier" },
    { title: "Item" },
    { title: "State" },
    { title: "Verdict" },
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
  ]),
  examples: [
    {
      args: [
        [["PO-1", "GRAVEL", 24, "ton", 32, "Quarry"]],
        [["PO-1", "GRAVEL", 48000, "lb", "T-7", "2031-05-28"]],
        [["PO-1", "GRAVEL", 24, "ton", 33, "88", "2031-05-30"]],
      ],
      gives: [
        { at: [1, 7], is: 24 },
        { at: [1, 8], is: 0 },
        { at: [1, 12], is: 24 },
        { at: [1, 14], is: 24 },
        { at: [1, 3], is: "Query" },
      ],
      within: 0,
      from: "by hand: 48,000 lb / 2,000 = 24 tons; 24 × (33 - 32) = 24 too much",
    },
    {
      args: [
        [["PO-1", "GRAVEL", 3, "t", 4150.5, "Quarry"]],
        [["PO-1", "GRAVEL", 3, "t", "T-7", "2031-05-28"]],
        [["PO-1", "GRAVEL", 3, "t", 4200.5, "88", "2031-05-30"]],
        null,
        "JPY",
      ],
      gives: [
        { at: [1, 10], is: 12_452 },
        { at: [1, 11], is: 12_602 },
        { at: [1, 12], is: 150 },
        { at: [1, 14], is: 150 },
      ],
      within: 0,
      from: "by hand, yen: 3 × 4,150.5 = 12,451.5, half a yen up; 3 × 4,200.5 = 12,601.5, up; 150 too much",
    },
  ],
  compute({ orders, deliveries, invoices, tolerance, currency: said }) {
    const digits = digitsOf(said);
    const wrong = [
      ...unreadLines("Order", orders),
      ...unreadLines("Delivery", deliveries, "ticket", 4),
      ...unreadLines("Invoice", invoices, "invoice", 5),
    ];
    const { lines, unread, totals } = reconcile(orders.rows, deliveries.rows, invoices.rows, tolerance, wrong, digits);
    return [
      ...lines.map((line) => lineCells(line, digits)),
      ...unread.map(unreadCells),
      ...totals.map((total) => totalCells(total, digits)),
    ];
  },
});

/** What is known of the rows that could not be read; `numberAt` is the column of the paper's own number. */
function unreadLines(paper: Paper, { unread }: LenientRows<unknown>, noun = "", numberAt = -1): UnreadLine[] {
  return unread.map(({ row, cells, reason }) => {
    const number = asText(cells[numberAt]);
    const [order, item] = [asText(cells[0]), asText(cells[1])];
    return { paper, row, order, item, reason, ...(number === "" ? {} : { number: `${noun} ${number}` }) };
  });
}

/** What a cell of an unread row says, as far as it can be shown. */
function asText(cell: unknown): string {
  if (typeof cell !== "string" && typeof cell !== "number") return errorTextOf(cell) ?? "";
  return cell === 0 ? "" : String(cell).trim().slice(0, 100);
}

function lineCells(line: ReconciledLine, digits: number): TableCell[] {
  const q = line.quantities;
  return [
    orderCell(line),
    line.supplier,
    line.item,
    line.state,
    line.verdict,
    line.unit,
    ...(q ? [q.ordered, q.delivered, clean(q.ordered - q.delivered), q.invoiced] : ["", "", "", ""]),
    ...amountCells(line.amounts, digits),
  ];
}

function unreadCells(line: UnreadVerdict): TableCell[] {
  const { supplier, item, state, verdict } = line;
  const unknown = Array.from({ length: 10 }, () => "");
  return [orderCell(line), supplier, item, state, verdict, ...unknown];
}

function orderCell({ order }: { readonly order: string }): string {
  return order === "" ? "(none)" : order;
}

function totalCells({ name, supplier, amounts, state, verdict }: Total, digits: number): TableCell[] {
  return [name, supplier, "", state, verdict, "", "", "", "", "", ...amountCells(amounts, digits)];
}

function amountCells(a: Amounts, digits: number): TableCell[] {
  return [a.ordered, a.billed, a.priceDifference, a.toCome, a.atStake].map((cents) => fromCents(cents, digits));
}
