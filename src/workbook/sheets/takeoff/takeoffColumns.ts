import { COST_KIND_WORDS } from "../../../calc/money/costKinds";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import { columnLetters } from "../../layout/address";
import type { ColumnSpec } from "../../layout/tableColumns";

/** The columns of Takeoff, in order. */
export const TAKEOFF_KEYS = [
  "description",
  "code",
  "unit",
  "need",
  "waste",
  "minimum",
  "pack",
  "order",
  "price",
  "cost",
  "kind",
  "supplier",
  "taxable",
  "origin",
  "ordered",
  "open",
  "look",
  "number",
  "part",
  "mark",
  "freight",
] as const;
type Key = (typeof TAKEOFF_KEYS)[number];

/** Prices of single units keep what lies below the cent. */
export const UNIT_COST_FORMAT = "#,##0.00####";

/** Headings of the columns that both tables share. */
export const TITLES: Readonly<Partial<Record<Key, string>>> = {
  description: "What",
  code: "Code",
  unit: "Unit",
  waste: "Waste",
  minimum: "Minimum",
  pack: "Pack",
  price: "Unit cost",
  kind: "Cost kind",
  supplier: "Supplier",
  taxable: "Taxable",
  mark: "Mark",
};

/** What bringing an order of the line costs; it is a line of its own below. */
export const FREIGHT_COLUMN: ColumnSpec = { key: "freight", title: "Freight", kind: "money" };

/** Names of the columns that other sheets read; they cover the lines of the sheets and the user's own. */
export const TAKEOFF_NAMES: Readonly<Partial<Record<Key, string>>> = {
  description: "TakeoffDescriptions",
  code: "TakeoffCodes",
  order: "TakeoffOrders",
  price: "TakeoffPrices",
  cost: "TakeoffCosts",
  kind: "TakeoffKinds",
  supplier: "TakeoffSuppliers",
  taxable: "TakeoffTaxables",
  open: "TakeoffOpen",
  look: "TakeoffLooks",
  number: "TakeoffSupplierNumbers",
  part: "TakeoffParts",
  mark: "TakeoffMarks",
  freight: "TakeoffFreights",
};

/** What a line looks up in the price list: the name of the column it stands in there, and what holds without one. */
export const LOOKED_UP = [
  { key: "description", name: "RateDescriptions", otherwise: '""' },
  { key: "unit", name: "RateUnits", otherwise: '""' },
  { key: "waste", name: "RateWastes", otherwise: "0" },
  { key: "minimum", name: "RateMinimums", otherwise: "0" },
  { key: "pack", name: "RatePacks", otherwise: "1" },
  { key: "price", name: "RateCosts", otherwise: '""' },
  { key: "kind", name: "RateKinds", otherwise: '"material"' },
  { key: "supplier", name: "RateSuppliers", otherwise: '""' },
  { key: "taxable", name: "RateTaxables", otherwise: '"yes"' },
] as const satisfies readonly { key: Key; name: string; otherwise: string }[];

/** Whether the line is to be ordered; text would count as more than 0. */
const TO_ORDER = "IF(ISNUMBER([order]),[order]>0,FALSE)";

/** The columns that work alike in both tables; both count suppliers on from the heading of the first. */
export function workedOut(
  head: number,
  system: UnitSystem,
): Readonly<Record<"order" | "cost" | "ordered" | "open" | "look" | "number" | "part" | "mark", ColumnSpec>> {
  const above = (key: Key): string => `$${columnLetters(TAKEOFF_KEYS.indexOf(key) + 1)}$${head}:[${key}:above]`;
  const [numbers, suppliers] = [above("number"), above("supplier")];
  const known = `ISNUMBER(MATCH([kind],{${COST_KIND_WORDS[system].map((kind) => `"${kind}"`).join(",")}},0))`;
  const terms = "COUNT([waste]:[pack])<3";
  const untaxed = 'AND([taxable]<>"yes",[taxable]<>"no")';
  return {
    order: {
      key: "order",
      title: "To order",
      kind: "number",
      formula:
        `=IF([need]="","",IF([need]<=0,0,IF(${terms},"",ROUND(MAX(1,ROUNDUP(ROUND(MAX([need]*(1+[waste]),[minimum])` +
        "/IF([pack]>0,[pack],1)-0.000001,9),0))*IF([pack]>0,[pack],1),6))))",
    },
    cost: {
      key: "cost",
      title: "Cost",
      kind: "money",
      formula: '=IF(OR([order]="",[price]=""),"",ROUND([order]*[price],2))',
    },
    ordered: {
      key: "ordered",
      title: "Ordered so far",
      kind: "number",
      formula: '=IF([code]="","",SUMIFS(OrderQuantities,OrderItems,[code],OrderUnits,[unit]))',
    },
    open: {
      key: "open",
      title: "Still to order",
      kind: "number",
      formula: '=IF(COUNT([order])=0,"",MAX(0,ROUND([order]-N([ordered]),6)))',
    },
    look: {
      key: "look",
      title: "Look at",
      kind: "text",
      formula:
        `=IF([description]&[code]&[need]&[price]="","",IF([need]="","no quantity",IF([need]<=0,"",IF(OR(${terms},${untaxed}),"no terms",` +
        `IF(N([cost])=0,"no cost",IF(${known},IF(AND(N([ordered])>0,[ordered]<[order]),"ordered short",""),"no cost kind"))))))`,
    },
    number: {
      key: "number",
      title: "Supplier no.",
      kind: "number",
      formula: `=IF(AND([supplier]<>"",${TO_ORDER}),IF(COUNTIFS(${suppliers},[supplier],${numbers},">0")>0,MAXIFS(${numbers},${suppliers},[supplier]),MAX(${numbers})+1),"")`,
    },
    part: { key: "part", title: "Part", kind: "text" },
    mark: { key: "mark", title: "Mark", kind: "text" },
  };
}
