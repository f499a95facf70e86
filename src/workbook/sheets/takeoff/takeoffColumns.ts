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
  "least",
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

type Worked = "order" | "cost" | "ordered" | "open" | "look" | "number" | "part" | "mark" | "least";

/** Whether what a line needs is known and is bought at all; an error in it travels. */
export const BOUGHT = 'IF([order]="",FALSE,[order]>0)';

/** So much in whole packs, one at least; a millionth of a pack is noise. */
export function inPacks(least: string, pack: string): string {
  const size = `IF(${pack}>0,${pack},1)`;
  return `ROUND(ROUNDUP(ROUND(IF(${least}>${size},${least},${size})/${size}-0.000001,9),0)*${size},6)`;
}

/**
 * The columns that work alike in both tables, each by one formula.
 *
 * @param ordered rows whose orders one formula gives: the line of all freight, which waits for the other orders, has its own
 */
export function workedOut(rows: number, ordered = rows): Readonly<Record<Worked, ColumnSpec>> {
  const terms = "ISNUMBER([waste])*ISNUMBER([minimum])*ISNUMBER([pack])=0";
  const untaxed = '([taxable]<>"yes")*([taxable]<>"no")';
  const wasted = "[need]*(1+[waste])";
  return {
    order: {
      key: "order",
      title: "To order",
      source: "by definition: need with waste, the minimum at least, in whole packs; a millionth of a pack is noise",
      kind: "number",
      whole: ordered,
      formula: `=IF([least]="","",IF([least]<=0,0,${inPacks("[least]", "[pack]")}))`,
    },
    cost: {
      key: "cost",
      title: "Cost",
      source: "by definition: amount × price, rounded to a cent",
      kind: "money",
      whole: rows,
      formula: '=IF(([order]="")+([price]="")>0,"",ROUND([order]*[price],MoneyDigits))',
    },
    ordered: {
      key: "ordered",
      title: "Ordered so far",
      kind: "number",
      whole: rows,
      formula: '=IF([code]="","",SUMIFS(OrderQuantities,OrderItems,[code],OrderUnits,[unit]))',
    },
    open: {
      key: "open",
      title: "Still to order",
      kind: "number",
      whole: rows,
      formula: '=IF(ISNUMBER([order]),IF([ordered]="",[order],IF([order]>[ordered],ROUND([order]-[ordered],6),0)),"")',
    },
    look: {
      key: "look",
      title: "Look at",
      kind: "text",
      whole: rows,
      formula:
        `=IF([description]&[code]&[need]&[price]="","",IF([need]="","no quantity",IF([need]<=0,"",IF(([least]="")+${untaxed}>0,"no terms",` +
        `IF(IF([cost]="",0,[cost])=0,"no cost",IF(COUNTIF(CostKinds,[kind]),IF(([ordered]>0)*([ordered]<[order]),"ordered short",""),"no cost kind"))))))`,
    },
    number: { key: "number", title: "Supplier no.", kind: "number", whole: rows },
    part: { key: "part", title: "Part", kind: "text" },
    mark: { key: "mark", title: "Mark", kind: "text", whole: rows },
    least: {
      key: "least",
      title: "With waste",
      source: "by definition: need with waste, the minimum at least",
      kind: "number",
      whole: ordered,
      formula: `=IF([need]="","",IF([need]<=0,0,IF(${terms},"",IF(${wasted}>[minimum],${wasted},[minimum]))))`,
    },
  };
}
