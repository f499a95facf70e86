import { hideBlankRows } from "../../layout/conditions";
import { Ref, type Job, type SheetLayout, type TableRef } from "../../layout";
import { STYLE } from "../../layout/style";
import { besideNumbers, head } from "../../layout/tableHead";
import { fillDown } from "../money/cells";
import { UNIT_COST_FORMAT } from "../takeoff/takeoffColumns";

/** Suppliers a job can order from. */
export const MOST_SUPPLIERS = 8;
/** Where a purchase order says which of an item is meant, right of its amounts. */
const WHICH_COLUMN = 7;
/** Apart from the amounts before it; an indent counts only where the side is said. */
const WHICH_LOOK = { align: "left", indent: 1 } as const;
/** Lines of a purchase order. */
export const ORDER_LINES = 24;

/** The suppliers that the takeoff orders from, with what their orders need besides. */
export function supplierTable(s: SheetLayout, job: Job): TableRef {
  s.section("Suppliers of this job");
  const each = `{${Array.from({ length: MOST_SUPPLIERS }, (_, index) => index + 1).join(";")}}`;
  return s.table({
    name: "SupplierTable",
    rows: MOST_SUPPLIERS,
    columns: [
      {
        key: "supplier",
        title: "Supplier",
        kind: "text",
        name: "OrderSuppliers",
        whole: true,
        formula: `=IFERROR(INDEX(TakeoffSuppliers,MATCH(${each},TakeoffSupplierNumbers,0)),"")`,
      },
      { key: "order", title: "Order no.", kind: "text", input: { max: 20, message: "Number of the purchase order." } },
      { key: "wanted", title: "Wanted on", kind: "date", input: { message: "Day the goods are wanted on site." } },
      {
        key: "loads",
        title: "Loads",
        kind: "count",
        input: { min: 1, max: 99, message: "Deliveries it should come in." },
      },
      {
        key: "amount",
        title: "Takeoff",
        kind: "money",
        whole: true,
        formula: `=IF([supplier]="","",SUMIFS(TakeoffCosts,TakeoffSupplierNumbers,${each}))`,
      },
      {
        key: "open",
        title: "Lines to order",
        kind: "count",
        whole: true,
        formula: `=IF([supplier]="","",COUNTIFS(TakeoffSupplierNumbers,${each},TakeoffOpen,">0"))`,
      },
      {
        key: "remark",
        title: "Remark for the supplier",
        kind: "text",
        across: 4,
        input: { message: "Access, unloading, whom to call." },
      },
    ],
    demo: Array.from({ length: 7 }, (_, index) => [
      `HB-${101 + index}`,
      job.pick({ US: 46182, SI: 46189 }) + (index % 3),
      index < 2 ? 2 : 1,
      index === 0 ? "Call before you come; gate is 8 ft wide" : "",
    ]),
    totals: { label: "All suppliers", keys: ["amount", "open"] },
  });
}

/**
 * The order of the supplier that is picked: the lines of the order book under its number, or, while there are none, what
 * the takeoff still asks of him.
 */
export function purchaseOrder(s: SheetLayout, suppliers: TableRef, job: Job): void {
  s.section("The purchase order to print");
  s.input({
    name: "PrintedSupplier",
    label: "Supplier",
    kind: "text",
    choices: "=OrderSuppliers",
    message: "Whose order is shown below; blank shows the first supplier's.",
    optional: true,
  });
  s.result({
    name: "PrintedNumber",
    label: "Its row in the list above",
    kind: "count",
    formula: `=IF(PrintedSupplier="",1,IFERROR(MATCH(PrintedSupplier,OrderSuppliers,0),1))`,
  });
  s.result({ name: "PrintedName", label: "Order for", kind: "text", formula: `=${picked(suppliers, "supplier")}&""` });
  s.result({
    name: "PrintedOrderNumber",
    label: "Order no.",
    kind: "text",
    formula: `=${picked(suppliers, "order")}&""`,
  });
  s.result({
    name: "PrintedFromBook",
    label: "Lines in the order book under that number",
    kind: "count",
    formula: '=IF(PrintedOrderNumber="",0,COUNTIF(OrderNumbers,PrintedOrderNumber))',
    note: "The order shows these; while there are none, what Takeoff still asks of him.",
  });
  s.pageBreak();
  page(s, suppliers, job);
}

/** A cell of the supplier that is picked. */
function picked(suppliers: TableRef, key: string): string {
  return `INDEX(${suppliers.column(key).address.replace("Orders!", "")},PrintedNumber)`;
}

function page(s: SheetLayout, suppliers: TableRef, job: Job): void {
  const at = (key: string): string => picked(suppliers, key);
  const shown = (formula: string): string => `=IF(PrintedName="","",${formula})`;
  s.put(s.row, 1, {
    formula:
      '=IF(PrintedName="","No supplier yet","Purchase order "&IF(PrintedOrderNumber="","",PrintedOrderNumber&" ")&"to "&PrintedName)',
    style: "title",
    look: { size: 14 },
    across: s.lastColumn,
  });
  s.sheet.heights.set(s.row, 28);
  s.row++;
  s.put(s.row, 1, {
    formula:
      '=IF(QuoteDraft="","",SUBSTITUTE(QuoteDraft,"Draft, not to be signed:","Draft without prices, not to be sent:"))',
    style: "plain",
    look: { bold: true, color: STYLE.caution.color },
    across: s.lastColumn,
    name: "OrderDraft",
  });
  s.row++;
  const facts: readonly (readonly [label: string, formula: string, kind?: "date" | "count"])[] = [
    ["From", `CompanyName&IF(CompanyPhone="","",", "&CompanyPhone)`],
    ["Deliver to", `SiteAddress&IF(JobName="",""," ("&JobName&")")`],
    // A cell of its own: a day in the midst of a text would need a pattern, which each region reads in its own way.
    ["Wanted on", `IF(N(${at("wanted")})=0,"to be agreed",${at("wanted")})`, "date"],
    ["Deliveries", `IF(N(${at("loads")})=0,"to be agreed",${at("loads")})`, "count"],
    ["Remark", `${at("remark")}&""`],
  ];
  for (const [label, formula, kind] of facts) {
    s.put(s.row, 1, { value: label, style: "label" });
    s.put(s.row, 2, {
      formula: shown(formula),
      style: "resultText",
      ...(kind ? { kind } : {}),
      look: { wrap: false, align: "left" },
      across: s.lastColumn - 1,
    });
    s.row++;
  }
  s.row++;
  const first = s.row + 1;
  const printed = (booked: string, open: string): string =>
    `IF(PrintedFromBook>0,FILTER(${booked},OrderNumbers=PrintedOrderNumber),FILTER(${open},(TakeoffSupplierNumbers=PrintedNumber)*(TakeoffOpen>0),""))`;
  const columns: readonly (readonly [title: string, formula: string, kind: "text" | "number" | "money"])[] = [
    ["What", printed("OrderDescriptions", "TakeoffDescriptions"), "text"],
    ["Code", printed("OrderItems", "TakeoffCodes"), "text"],
    ["Unit", printed("OrderUnits", "INDEX(TakeoffLines,0,3)"), "text"],
    ["Quantity", printed("OrderQuantities", "TakeoffOpen"), "number"],
    ["Price", printed("OrderPrices", "TakeoffPrices"), "money"],
  ];
  const last = first + ORDER_LINES - 1;
  const [orders, prices] = ["D", "E"].map((column) => `${column}${first}:${column}${last}`);
  const amount = `IF(ISNUMBER(${orders})*ISNUMBER(${prices}),ROUND(${orders}*${prices},MoneyDigits),"")`;
  [...columns, ["Amount", undefined, "money"] as const].forEach(([title, formula, kind], index) => {
    const column = index + 1;
    head(s, first - 1, column, { title, kind });
    for (let row = first; row <= last; row++) {
      s.put(row, column, {
        style: kind === "text" ? "resultText" : "result",
        kind,
        look: {
          ...besideNumbers(kind === "text" && index > 0),
          ...(title === "Price" ? { format: UNIT_COST_FORMAT } : {}),
        },
      });
    }
    const gated = title === "Price" ? `IF(QuoteDraft="",${formula},"")` : formula;
    fillDown(s, new Ref(s.name, first, column, last, column), gated ? shown(gated) : amount, {
      label: title,
      source: "by definition: quantity × price, rounded to a cent",
    });
  });
  hideBlankRows(s, { top: first, left: 1, bottom: last, right: columns.length + 1 });
  s.row = last + 1;
  s.define("PrintedOrder", first, 1, last, columns.length + 1);
  s.put(first - 1, WHICH_COLUMN, {
    value: "Which",
    style: "headText",
    look: WHICH_LOOK,
    across: s.lastColumn - WHICH_COLUMN + 1,
  });
  const codes = `$B$${first}:$B$${last}`;
  const which = `=IF(${codes}="","",IFERROR(INDEX(ParticularTexts,MATCH(${codes},ParticularCodes,0)),""))`;
  for (let row = first; row <= last; row++) s.put(row, WHICH_COLUMN, { style: "plain", look: WHICH_LOOK });
  fillDown(s, new Ref(s.name, first, WHICH_COLUMN, last, WHICH_COLUMN), which);
  s.put(s.row, 1, { value: "Total without tax", style: "strong", look: { align: "left" }, across: 5 });
  s.put(s.row, 6, {
    formula: `=IF(QuoteDraft="",SUM(F${first}:F${s.row - 1}),"")`,
    style: "strong",
    kind: "money",
    name: "PrintedTotal",
  });
  s.row++;
  if (job.system === "US") s.note("Please confirm price and day. Number this order on tickets and invoices.");
  else s.note("Please confirm price and day. Put this order's number on delivery notes and invoices.");
}
