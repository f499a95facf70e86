import type { SheetLayout } from "../../layout";
import { fillDown } from "./cells";
import { ORDER_BOOK } from "./demoPapers";
import { UNIT_COST_FORMAT } from "./takeoffColumns";

/** What stands beside an item that the takeoff does not have. */
export const UNKNOWN_ITEM = "not on Takeoff";
/** Rows of the order book. */
const BOOK_ROWS = 60;

/** What was really ordered; RILL.RECONCILE reads it. */
export function orderBook(s: SheetLayout): void {
  s.section("Order book: what was really ordered");
  s.note(
    "One row for each line of an order, as sent. A change is another row with the difference, below zero where less is wanted. " +
      "Give stone a name or a density where it is ordered by weight and delivered by volume, or the other way.",
  );
  const table = s.table({
    rows: BOOK_ROWS,
    columns: [
      {
        key: "what",
        title: "What",
        kind: "text",
        name: "OrderDescriptions",
      },
      { key: "order", title: "Order no.", kind: "text", input: { max: 20, message: "Number of the purchase order." } },
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
        kind: "money",
        formula: `=IF(COUNT([quantity],[price])=2,ROUND([quantity]*[price],2),"")`,
      },
    ],
    demo: ORDER_BOOK,
    totals: { label: "All orders", keys: ["amount"], names: { amount: "OrderedAmount" } },
  });
  fillDown(
    s,
    table.column("what"),
    `=MAP(OrderItems,LAMBDA(item,IF(item="","",XLOOKUP(item,TakeoffCodes,TakeoffDescriptions,"${UNKNOWN_ITEM}"))))`,
  );
  const first = table.column("order");
  s.define("OrderLines", first.top, first.left, first.bottom, table.column("density").left);
}
