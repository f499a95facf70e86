import type { Job, SheetLayout, TableRef } from "../../layout";
import { UNIT_COST_FORMAT } from "./takeoffColumns";

/** Suppliers a job can order from, each with a page of its own. */
export const MOST_SUPPLIERS = 8;
/** Lines of a purchase order. */
export const ORDER_LINES = 16;

/** The suppliers that the takeoff orders from, with what their orders need besides. */
export function supplierTable(s: SheetLayout, job: Job): TableRef {
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
        across: 3,
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

/** The page of one supplier. */
export function purchaseOrder(s: SheetLayout, suppliers: TableRef, number: number): void {
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
      { title: "Quantity", kind: "number" },
      { title: "Price", kind: "money", format: UNIT_COST_FORMAT },
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
