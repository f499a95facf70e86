import { COST_KIND_WORDS, costKindWord, readCostKind } from "../../calc/money/costKinds";
import { convert } from "../../calc/quantity/units";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { askingCode, sizeWords, type Wanted } from "../../book/ask";
import { aboutKind, PRODUCT_KINDS, type ProductKind } from "../../book/kinds";
import type { Product } from "../../book/types";
import { readSaleUnit, unitsOf } from "../../book/units";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";
import { dayCell, markCell, markColumn, orBlank, type RowReader } from "./cells";
import { typedIn } from "../typedIn";

const KINDS: readonly ProductKind[] = PRODUCT_KINDS.map(({ name }) => name);

/** Units that sizes and sides may be typed in. */
const SIZE_UNITS = { US: ["in", "ft"], SI: ["mm", "m"] } as const;

const amount = (key: string, title: string, max: number, message: string): ColumnSpec => ({
  key,
  title,
  kind: "number",
  input: { min: 0, max, message },
});
const words = (key: string, title: string, max: number, message: string): ColumnSpec => ({
  key,
  title,
  kind: "text",
  input: { max, message },
});

/** The columns of Products. */
export function productColumns(system: UnitSystem): readonly ColumnSpec[] {
  const volume = { US: "gal", SI: "L" }[system];
  const side = "In the unit beside it.";
  return [
    { key: "kind", title: "Kind", kind: "text", input: { choices: KINDS, message: "Which kind of product." } },
    words("type", "Type", 60, "Pipe type, rock, grade or conductor; blank if the price holds for all types."),
    amount("size", "Size", 10_000, "Nominal size, lip width, roll width or mean size; blank if for all sizes."),
    amount("length", "Length", 100_000, `Length of a module, tub or stone; of a roll its longest length. ${side}`),
    amount("width", "Width", 10_000, `Width of a module, tub or stone. ${side}`),
    amount("height", "Height", 10_000, `Height of a module, tub or stone. ${side}`),
    {
      key: "in",
      title: "Sizes in",
      kind: "text",
      input: { choices: SIZE_UNITS[system], message: "Unit of the sizes in this row." },
    },
    { key: "volume", title: "Volume", kind: "water", input: { min: 0, max: 100_000, message: `What a tub holds.` } },
    words("description", "Description", 200, "What it is called on orders; blank: kind, type and size."),
    words("code", "Code", 100, "Code it is looked up by, each once; blank: made of kind, size and type."),
    {
      key: "unit",
      title: "Unit",
      kind: "text",
      input: { choices: unitsOf(system), message: "What the price is for." },
    },
    {
      key: "price",
      title: "Price",
      kind: "money",
      format: "#,##0.00##",
      input: { min: 0, max: 1_000_000, message: "What you pay for one unit, without tax; blank if not asked yet." },
    },
    amount("pack", "Pack", 1_000_000, "Units sold in one piece; blank is 1."),
    amount("minimum", "Minimum", 1_000_000, "Least number of units sold."),
    {
      key: "waste",
      title: "Waste",
      kind: "share",
      input: { min: 0, max: 2, message: "Share added to the quantity needed." },
    },
    {
      key: "freight",
      title: "Freight",
      kind: "money",
      input: { min: 0, max: 100_000, message: "Charged once for delivering an order of it." },
    },
    {
      key: "weight",
      title: "Weight of one",
      kind: "weight",
      format: "#,##0.###",
      input: { min: 0, max: 100_000, message: `Weight of one unit of sale, in ${volume === "gal" ? "lb" : "kg"}.` },
    },
    words("supplier", "Supplier", 100, "Who sells it."),
    words("theirs", "Supplier's code", 100, "What the supplier calls it."),
    { key: "day", title: "Price of", kind: "date", input: { message: "Day the price was given." } },
    {
      key: "costKind",
      title: "Cost kind",
      kind: "text",
      input: { choices: COST_KIND_WORDS[system], message: "Which line of Price it counts under; blank is material." },
    },
    {
      key: "taxable",
      title: "Taxable",
      kind: "text",
      input: { choices: ["yes", "no"], message: "Whether sales tax is owed on it; blank is yes." },
    },
    markColumn,
  ];
}

/** A product as a row of the sheet. */
export function productRow(product: Product, system: UnitSystem): CellValue[] {
  const kind = aboutKind(product.kind);
  const isVolume = kind.size?.measure === "volume";
  const unit = SIZE_UNITS[system][product.kind === "liner" || product.kind === "fabric" ? 1 : 0];
  const inUnit = (inside: number | undefined): CellValue =>
    inside === undefined ? "" : Number(convert(inside, "m", unit).toPrecision(9));
  const sizes = [isVolume ? "" : inUnit(product.size), ...[product.length, product.width, product.height].map(inUnit)];
  return [
    product.kind,
    product.type ?? "",
    ...sizes,
    sizes.some((size) => size !== "") ? unit : "",
    isVolume ? typedIn("water", product.size, system) : "",
    product.description,
    product.code,
    product.unit,
    orBlank(product.price),
    product.pack,
    product.minimum,
    product.waste,
    product.freight,
    typedIn("weight", product.weight, system),
    product.supplier,
    product.theirs,
    dayCell(product.day),
    costKindWord(product.costKind, system),
    product.taxable ? "yes" : "no",
    markCell(product),
  ];
}

/** The product a row says; undefined where it does not say which. */
export function readProduct(row: RowReader, system: UnitSystem): Product | undefined {
  const kind = row.choice("kind", KINDS);
  if (kind === undefined) {
    if (row.text("kind") === "") row.wrong("kind", "must say which kind of product it is");
    return undefined;
  }
  const wanted = readWanted(row, kind, system);
  const unit = readSaleUnit(row.text("unit"));
  const own = unitsOf(system);
  if (unit === undefined || !own.includes(unit)) {
    row.wrong("unit", `must be a unit of sale: ${own.join(", ")}`);
    return undefined;
  }
  const about = aboutKind(kind);
  const type = about.type !== undefined && wanted.type !== undefined ? wanted.type : "";
  const name = [kind, type, sizeWords(wanted, system)].filter(Boolean).join(", ");
  const weight = row.measure("weight", "weight");
  return {
    ...wanted,
    code: row.text("code") || askingCode(wanted, system),
    description: row.text("description") || name.slice(0, 1).toUpperCase() + name.slice(1),
    unit,
    price: row.number("price", { min: 0 }),
    pack: row.number("pack", { above: 0 }) ?? 1,
    minimum: row.number("minimum", { min: 0 }) ?? 0,
    waste: row.number("waste", { min: 0, max: 2 }) ?? 0,
    freight: row.number("freight", { min: 0 }) ?? 0,
    ...(weight === undefined ? {} : { weight }),
    supplier: row.text("supplier"),
    theirs: row.text("theirs"),
    day: row.day("day"),
    costKind: readCostKind(row.choice("costKind", [...COST_KIND_WORDS.US, ...COST_KIND_WORDS.SI]) ?? "") ?? "material",
    taxable: row.choice("taxable", ["yes", "no"]) !== "no",
    invented: row.invented,
    row: row.row,
  };
}

function readWanted(row: RowReader, kind: ProductKind, system: UnitSystem): Wanted {
  const about = aboutKind(kind);
  const units: readonly string[] = SIZE_UNITS[system];
  const said = row.choice("in", units);
  const unit = said ?? units[0] ?? "m";
  const inside = (key: string): number | undefined => {
    const typed = row.number(key, { above: 0 });
    return typed === undefined ? undefined : convert(typed, unit, "m");
  };
  const isVolume = about.size?.measure === "volume";
  const known = {
    size: isVolume ? row.measure("volume", "water", { above: 0 }) : inside("size"),
    length: inside("length"),
    width: inside("width"),
    height: inside("height"),
    type: row.text("type") || undefined,
  };
  return { kind, ...(Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined)) as object) };
}
