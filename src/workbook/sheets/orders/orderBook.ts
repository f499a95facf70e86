import type { SheetLayout } from "../../layout";
import { headsInSight } from "../../layout/headsInSight";
import { fillDown } from "../money/cells";
import { ORDER_BOOK } from "../money/demoPapers";
import { UNIT_COST_FORMAT } from "../takeoff/takeoffColumns";

/** What stands beside an item that the takeoff does not have. */
export const UNKNOWN_ITEM = "not on Takeoff";
/** Rows laid out, and rows the book may grow to. */
const BOOK_ROWS = 20;
const MOST_ROWS = 300;

/** What was really ordered; RILL.RECONCILE reads it. It ends the sheet. */
export function orderBook(s: SheetLayout): void {
  s.section("Order book: what was really ordered");
  s.note(
    "One row for each line of an order, as sent: type them, or let the pane enter what is still to order. A change is another row with the difference, below zero where less is wanted. " +
      "Give stone a name or a density where it is ordered by weight and delivered by volume, or the other way.",
  );
  const table = s.table({
    name: "OrderBook",
    rows: BOOK_ROWS,
    open: { rows: MOST_ROWS },
    columns: [
      {
        key: "what",
        title: "What",
        kind: "text",
        name: "OrderDescriptions",
      },
      {
        key: "order",
        title: "Order no.",
        kind: "text",
        name: "OrderNumbers",
        input: { max: 20, message: "Number of the purchase order." },
      },
      {
        key: "item",
        title: "Item",
        kind: "text",
        name: "OrderItems",
        input: { max: 100, message: "Code of the item, as on Takeoff." },
      },
      {
        key: "quantity",
        title: "Quantity",
        kind: "number",
        name: "OrderQuantities",
        input: { min: -1_000_000, max: 1_000_000, message: "Quantity ordered; below zero cuts an earlier line." },
      },
      {
        key: "unit",
        title: "Unit",
        kind: "text",
        name: "OrderUnits",
        input: { max: 20, message: "Unit of quantity and price." },
      },
      {
        key: "price",
        title: "Price",
        kind: "money",
        name: "OrderPrices",
        format: UNIT_COST_FORMAT,
        input: { min: 0, max: 1_000_000, message: "Price agreed for one unit, without tax." },
      },
      { key: "supplier", title: "Supplier", kind: "text", input: { max: 100, message: "Who was ordered from." } },
      {
        key: "density",
        title: "Stone or density",
        kind: "text",
        input: { max: 60, message: 'For stone: its name, or its own figure such as "1.4 ton/yd3".' },
      },
      { key: "day", title: "Ordered on", kind: "date", input: { message: "Day of the order." } },
      {
        key: "amount",
        title: "Amount",
        name: "OrderAmounts",
        kind: "money",
      },
    ],
    demo: ORDER_BOOK,
  });
  headsInSight(s, table.body.top - 1, "Order book");
  s.filter(table.body.top - 1, table.body.left, table.body.bottom, table.body.right);
  // As far down as the book is filled, so that its blank rows hold nothing and do not print; a single cell is no column.
  const used = (column: string): string => `FILTER(${column},SEQUENCE(ROWS(${column}))<=MAX(2,OrderBookRows))`;
  fillDown(
    s,
    table.column("what"),
    // The embedded grid shows a 0 for each blank of a column that is blank throughout.
    `=IF(COUNTA(OrderItems)=0,"",LET(item,${used("OrderItems")},IF(item="","",XLOOKUP(item,TakeoffCodes,TakeoffDescriptions,"${UNKNOWN_ITEM}"))))`,
  );
  fillDown(
    s,
    table.column("amount"),
    `=IF(COUNT(OrderQuantities)=0,"",LET(quantity,${used("OrderQuantities")},price,${used("OrderPrices")},IF(ISNUMBER(quantity)*ISNUMBER(price),ROUND(quantity*price,MoneyDigits),"")))`,
    { label: "Amount", source: "by definition: quantity × price, rounded to a cent" },
  );
  const first = table.column("order");
  s.define("OrderLines", first.top, first.left, first.bottom, table.column("density").left);
}
