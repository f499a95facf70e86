import { defineSheet, type SheetLayout } from "../layout";
import { orderBook, UNKNOWN_ITEM } from "./money/orderBook";
import { MOST_SUPPLIERS, ORDER_LINES, purchaseOrder, supplierTable } from "./money/purchaseOrders";

/** Purchase orders by supplier from the takeoff, and the book of what was really ordered. */
export const orders = defineSheet({
  name: "Orders",
  order: 15,
  turn: 1,
  build(s, job) {
    s.widths([36, 14, 14, 11, 11, 13, 30, 17, 12, 13]);
    s.title(
      "Orders",
      "Number and date the orders, print a page for each supplier, then enter what was ordered in the book.",
    );
    s.print({ landscape: true });
    const suppliers = supplierTable(s, job);
    orderBook(s);
    for (let number = 1; number <= MOST_SUPPLIERS; number++) purchaseOrder(s, suppliers, number);
    checks(s);
  },
});

function checks(s: SheetLayout): void {
  const unknown = `COUNTIF(OrderDescriptions,"${UNKNOWN_ITEM}")`;
  const lines = Array.from({ length: MOST_SUPPLIERS }, (_, index) => `COUNTIF(TakeoffSupplierNumbers,${index + 1})`);
  s.check({
    label: "Lines on the longest order",
    value: `=MAX(${lines.join(",")})`,
    limit: ORDER_LINES,
    ok: `MAX(${lines.join(",")})<=${ORDER_LINES}`,
    cure: "A printed order is too short for its lines: split the supplier's name on Rates, or order the rest from Takeoff.",
    fix: "SupplierTable",
    kind: "count",
  });
  s.check({
    label: "Suppliers without a page",
    value: `=MAX(0,MAX(TakeoffSupplierNumbers)-${MOST_SUPPLIERS})`,
    limit: 0,
    ok: `MAX(TakeoffSupplierNumbers)<=${MOST_SUPPLIERS}`,
    cure: "Order from fewer suppliers, or take the lines from Takeoff.",
    fix: "SupplierTable",
    kind: "count",
  });
  s.check({
    label: "Items ordered that the takeoff does not know",
    value: `=${unknown}`,
    limit: 0,
    ok: `${unknown}=0`,
    cure: "Mend the code in the order book, or add the item to your own lines of Takeoff.",
    fix: "OrderItems",
    kind: "count",
    weight: "look",
    needs: ["OrderQuantities"],
  });
}
