import { readUnitSystem } from "../calc/quantity/unitSystem";
import type { Place } from "../host/port";
import { GLANCE } from "../workbook/glance";
import { unitOf } from "../workbook/layout/formats";
import { amount } from "./amount";

/** One number of the job, as the workbook shows it. */
export interface Glance {
  readonly label: string;
  readonly text: string;
  readonly name: string;
}

/** What an owner looks at while markups change, behind the numbers that Start shows. */
const NUMBERS: typeof GLANCE = [
  ...GLANCE,
  { name: "GrossMargin", label: "Gross margin", kind: "share" },
  { name: "PriceLow", label: "Price with tax, low", kind: "money" },
  { name: "PriceHigh", label: "Price with tax, high", kind: "money" },
];

/** The names that `readGlance` needs, in its order. */
export const GLANCE_PLACES: readonly Place[] = ["Units", "Currency", ...NUMBERS.map(({ name }) => name)];

/** The job in a dozen numbers, from what their cells show; nothing where the workbook is none of ours. */
export function readGlance(shown: readonly (readonly (readonly string[])[] | undefined)[]): readonly Glance[] {
  const [units, currency = "", ...texts] = shown.map((rows) => rows?.[0]?.[0]);
  if (units !== "US" && units !== "SI") return [];
  const system = readUnitSystem(units);
  return NUMBERS.flatMap(({ name, label, kind }, index) => {
    const text = texts[index];
    if (text === undefined) return [];
    if (text === "") return [{ name, label, text: "to fill" }];
    // Words stand in place of a price that is not complete.
    if (kind === "money" && /[a-z]{3}/i.test(text)) return [{ name, label, text }];
    return [{ name, label, text: amount(text, kind === "money" ? currency : unitOf(kind, system)) }];
  });
}
