import { defineSheet, type SheetLayout } from "../../layout";
import { orderBook, UNKNOWN_ITEM } from "./orderBook";
import { MOST_SUPPLIERS, ORDER_LINES, purchaseOrder, supplierTable } from "./purchaseOrders";

/** Purchase orders by supplier, and the book of what was really ordered. */
export const orders = defineSheet({
  name: "Orders",
  order: 15,
  turn: 1,
  build(s, job) {
    s.widths([36, 14, 14, 11, 11, 13, 30, 17, 12, 13]);
    s.title(
      "Orders",
      "Number the orders, pick a supplier and print his order, then enter what was ordered in the book at the end.",
    );
    s.print({ landscape: true });
    const suppliers = supplierTable(s, job);
    totals(s);
    checks(s);
    s.checksHere();
    purchaseOrder(s, suppliers, job);
    s.pageBreak();
    orderBook(s);
  },
});

/** What the book comes to, above the book, which ends the sheet. */
function totals(s: SheetLayout): void {
  s.section("The order book at a glance");
  s.result({
    name: "OrderBookRows",
    label: "Rows of the book in use",
    kind: "count",
    // The last row with an item, looked for from the end.
    formula: '=MAX(1,IFERROR(XMATCH("?*",OrderItems,2,-1),1))',
  });
  s.result({ name: "OrderedAmount", label: "All orders", kind: "money", formula: "=SUM(OrderAmounts)", strong: true });
}

function checks(s: SheetLayout): void {
  const unknown = `COUNTIF(OrderDescriptions,"${UNKNOWN_ITEM}")`;
  s.check({
    label: "Lines of the order that is shown",
    source: "by definition: the lines that its page has room for",
    value: '=MAX(PrintedFromBook,COUNTIFS(TakeoffSupplierNumbers,PrintedNumber,TakeoffOpen,">0"))',
    limit: ORDER_LINES,
    cure: "A printed order is too short for its lines: split the supplier's name on Rates, or order the rest from Takeoff.",
    fix: "SupplierTable",
    kind: "count",
  });
  s.check({
    label: "Suppliers without a page",
    source: "by definition: the pages that are kept",
    value: `=MAX(0,MAX(TakeoffSupplierNumbers)-${MOST_SUPPLIERS})`,
    limit: 0,
    cure: "Order from fewer suppliers, or take the lines from Takeoff.",
    fix: "SupplierTable",
    kind: "count",
  });
  s.check({
    label: "Order quantities or prices in text",
    value: "=SUMPRODUCT(ISTEXT(OrderQuantities)+ISTEXT(OrderPrices))",
    limit: 0,
    cure: "Type the number alone, its unit under Unit: Takeoff counts no text.",
    fix: "OrderQuantities",
    kind: "count",
  });
  s.check({
    label: "Items ordered that the takeoff does not know",
    value: `=${unknown}`,
    limit: 0,
    cure: "Fix the code in the order book, or add the item to your own lines of Takeoff.",
    fix: "OrderItems",
    kind: "count",
    weight: "look",
    needs: ["OrderQuantities"],
  });
}
