import { fillDown } from "./money/cells";
import { defineSheet, type Job, type SheetLayout, type TableRef } from "../layout";

/** Suppliers a job can order from, each with a page of its own. */
const MOST_SUPPLIERS = 8;
/** Lines of a purchase order. */
const ORDER_LINES = 16;
/** Rows of the order book. */
const BOOK_ROWS = 60;

/** Purchase orders by supplier from the takeoff, and the book of what was really ordered. */
export const orders = defineSheet({
  name: "Orders",
  order: 15,
  turn: 1,
  build(s, job) {
    s.widths([36, 14, 14, 11, 11, 13, 26, 17, 12, 13]);
    s.title(
      "Orders",
      "Number and date the orders, print a page for each supplier, then enter what was ordered in the book.",
    );
    s.print({ landscape: true, titleRows: [1, 2] });
    const suppliers = supplierTable(s, job);
    book(s);
    for (let number = 1; number <= MOST_SUPPLIERS; number++) purchaseOrder(s, suppliers, number);
    checks(s);
  },
});

function supplierTable(s: SheetLayout, job: Job): TableRef {
  s.section("Suppliers of this job");
  return s.table({
    name: "SupplierTable",
    rows: MOST_SUPPLIERS,
    columns: [
      {
        key: "supplier",
        title: "Supplier",
        kind: "text",
        name: "OrderSuppliers",
        formula: `=IFERROR(INDEX(TakeoffSuppliers,MATCH([#],TakeoffSupplierNumbers,0)),"")`,
      },
      { key: "order", title: "Order no.", kind: "text", input: { max: 20, message: "Number of the purchase order." } },
      { key: "wanted", title: "Wanted on", kind: "date", input: { message: "Day the goods are wanted on site." } },
      {
        key: "lines",
        title: "Lines",
        kind: "count",
        formula: `=IF([supplier]="","",COUNTIF(TakeoffSupplierNumbers,[#]))`,
      },
      {
        key: "loads",
        title: "Loads",
        kind: "count",
        input: { min: 1, max: 99, message: "Deliveries it should come in." },
      },
      {
        key: "amount",
        title: "Amount",
        kind: "money",
        formula: `=IF([supplier]="","",SUMIFS(TakeoffCosts,TakeoffSupplierNumbers,[#]))`,
      },
      {
        key: "remark",
        title: "Remark for the supplier",
        kind: "text",
        input: { message: "Access, unloading, whom to call." },
      },
    ],
    demo: Array.from({ length: 7 }, (_, index) => [
      `HB-${101 + index}`,
      job.pick({ US: 46182, SI: 46189 }) + (index % 3),
      index < 2 ? 2 : 1,
      index === 0 ? "Ring before you come; gate is 8 ft wide" : "",
    ]),
    totals: { label: "All orders", keys: ["amount"] },
  });
}

function book(s: SheetLayout): void {
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
        format: "#,##0.##",
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
    demo: BOOK,
    totals: { label: "All orders", keys: ["amount"], names: { amount: "OrderedAmount" } },
  });
  fillDown(s, table.column("what"), '=IF(OrderItems="","",XLOOKUP(OrderItems,TakeoffCodes,TakeoffDescriptions,""))');
  const first = table.column("order");
  s.define("OrderLines", first.top, first.left, first.bottom, table.column("density").left);
}

function purchaseOrder(s: SheetLayout, suppliers: TableRef, number: number): void {
  s.pageBreak();
  const at = (key: string): string => suppliers.cell(key, number).address.replace(`${s.name}!`, "");
  const shown = (formula: string): string => `=IF(${at("supplier")}="","",${formula})`;
  s.put(s.row, 1, {
    formula: `=IF(${at("supplier")}="","No supplier number ${number}","Purchase order "&${at("order")}&" to "&${at("supplier")})`,
    style: "section",
    across: s.lastColumn,
  });
  s.row++;
  const facts: readonly (readonly [string, string])[] = [
    ["From", `CompanyName&", "&CompanyPhone`],
    ["Deliver to", `SiteAddress&" ("&JobName&")"`],
    [
      "Wanted on",
      `IF(${at("wanted")}="","to be agreed",TEXT(${at("wanted")},"yyyy-mm-dd"))&IF(${at("loads")}="","",IF(${at("loads")}=1,", in one delivery",", in "&${at("loads")}&" deliveries"))`,
    ],
    ["Remark", `${at("remark")}&""`],
  ];
  for (const [label, formula] of facts) {
    s.put(s.row, 1, { value: label, style: "label" });
    s.put(s.row, 2, { formula: shown(formula), style: "resultText", look: { wrap: false }, across: 6 });
    s.row++;
  }
  const first = s.row + 1;
  s.spill({
    header: "ours",
    rows: ORDER_LINES,
    // What, code, unit, quantity, price and amount of the lines that this supplier delivers.
    formula: shown(`CHOOSECOLS(FILTER(TakeoffLines,TakeoffSupplierNumbers=${number}),1,2,3,8,9,10)`),
    columns: [
      { title: "What", kind: "text" },
      { title: "Code", kind: "text" },
      { title: "Unit", kind: "text" },
      { title: "Quantity", kind: "number", format: "#,##0.##" },
      { title: "Price", kind: "money" },
      { title: "Amount", kind: "money" },
    ],
  });
  s.put(s.row, 1, { value: "Total without tax", style: "strong", look: { align: "left" }, across: 5 });
  s.put(s.row, 6, {
    formula: `=SUM(F${first}:F${s.row - 1})`,
    style: "strong",
    kind: "money",
  });
  s.row++;
}

function checks(s: SheetLayout): void {
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
    value: '=SUMPRODUCT((OrderItems<>"")*(COUNTIF(TakeoffCodes,OrderItems)=0))',
    limit: 0,
    ok: 'SUMPRODUCT((OrderItems<>"")*(COUNTIF(TakeoffCodes,OrderItems)=0))=0',
    cure: "Mend the code in the order book, or add the item to your own lines of Takeoff.",
    fix: "OrderItems",
    kind: "count",
    weight: "look",
    needs: ["OrderQuantities"],
  });
}

/** Order, item, quantity, unit, price, supplier, stone or density, day. */
const BOOK = { US: [], SI: [] } as const;
