import { readCostKind, type CostKind } from "../calc/money/costKinds";

/** A line of a price list. Money per unit; shares from 0; the day as yyyy-mm-dd. */
export interface PriceItem {
  readonly code: string;
  readonly description: string;
  readonly kind: CostKind;
  readonly unit: string;
  readonly cost: number;
  readonly pack: number;
  readonly minimum: number;
  readonly waste: number;
  readonly supplier: string;
  readonly taxable: boolean;
  readonly day: string;
  /** What the supplier calls it, where that is not the code. */
  readonly theirs: string;
}

export type Field = keyof PriceItem;

/** A column of the price list file: the heading it is written under, and others it is known by. */
interface ColumnName {
  readonly field: Field;
  readonly heading: string;
  readonly also: readonly string[];
}

/** The columns in the order they are written; headings are read without regard to case and marks. */
export const COLUMNS: readonly ColumnName[] = [
  { field: "code", heading: "Code", also: ["item", "item code", "item no", "sku", "article", "article no", "number"] },
  { field: "description", heading: "Description", also: ["name", "item name", "text", "product"] },
  { field: "kind", heading: "Cost kind", also: ["kind", "category", "type"] },
  { field: "unit", heading: "Unit", also: ["uom", "unit of measure", "per"] },
  { field: "cost", heading: "Cost", also: ["price", "unit price", "unit cost", "net price", "cost per unit"] },
  { field: "pack", heading: "Pack", also: ["pack size", "pack quantity", "sold by"] },
  { field: "minimum", heading: "Minimum", also: ["minimum order", "min", "min order", "least"] },
  { field: "waste", heading: "Waste", also: ["waste share", "waste percent"] },
  { field: "supplier", heading: "Supplier", also: ["vendor", "merchant", "source"] },
  { field: "taxable", heading: "Taxable", also: ["tax", "sales tax"] },
  { field: "day", heading: "Date", also: ["day", "price date", "valid from", "as of"] },
  {
    field: "theirs",
    heading: "Supplier's code",
    also: ["supplier code", "supplier item", "supplier article", "supplier part no", "their code"],
  },
];

/** What a field is called in a sentence: "supplier's code". */
export function fieldName(field: Field): string {
  return COLUMNS.find((column) => column.field === field)?.heading.toLowerCase() ?? field;
}

/** What stands in for a column that the file does not have. */
export const USUAL: Omit<PriceItem, "code" | "cost"> = {
  description: "",
  kind: "material",
  unit: "each",
  pack: 1,
  minimum: 0,
  waste: 0,
  supplier: "",
  taxable: true,
  day: "",
  theirs: "",
};

const KIND_WORDS: Readonly<Record<string, CostKind>> = {
  materials: "material",
  equipment: "machine",
  machines: "machine",
  plant: "machine",
  sub: "subcontract",
  subcontractor: "subcontract",
  freight: "hauling",
  transport: "hauling",
};

/** A cost kind by its name or another word for it; undefined when it is none. */
export function readKind(text: string): CostKind | undefined {
  return readCostKind(text) ?? KIND_WORDS[text.trim().toLowerCase()];
}

const fields = new Map(
  COLUMNS.flatMap(({ field, heading, also }) =>
    [heading, ...also].map((name, rank) => [headingKey(name), { field, rank }] as const),
  ),
);

/** The field that a heading names, or undefined. */
export function fieldOf(heading: string): Field | undefined {
  return fields.get(headingKey(heading))?.field;
}

/** How near a heading comes to its field's own: 0 for that itself. */
export function exactnessOf(heading: string): number {
  return fields.get(headingKey(heading))?.rank ?? Infinity;
}

function headingKey(heading: string): string {
  return heading.toLowerCase().replace(/\(.*?\)|[^\p{L}\p{N}]+/gu, "");
}
