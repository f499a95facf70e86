import { COST_KINDS } from "../../calc/money/costKinds";
import { readUnitSystem } from "../../calc/quantity/unitSystem";
import type { Grid } from "../../host/port";
import { unitOf, type Kind } from "../../workbook/layout/formats";
import { amount } from "../amount";

/** What stands side by side, by the names that hold it; of the options' rows the first cell is that of option A. */
const NUMBERS: readonly { readonly name: string; readonly label: string; readonly kind: Kind }[] = [
  { name: "OptionPrices", label: "Price before tax", kind: "money" },
  { name: "OptionMargins", label: "Gross margin", kind: "share" },
  { name: "DeliveredFlow", label: "Flow", kind: "flow" },
  { name: "PumpName", label: "Pump", kind: "text" },
  { name: "BoulderTons", label: "Boulders", kind: "load" },
  { name: "GravelTons", label: "Gravel", kind: "load" },
  { name: "OptionDays", label: "Crew days", kind: "number" },
];

/** The names that a state is read from, as shown. */
export const SHOWN_PLACES: readonly string[] = ["Units", "Currency", ...NUMBERS.map(({ name }) => name)];

/** The main numbers of a job as its cells show them. */
export function mainNumbers(shown: readonly (readonly (readonly string[])[] | undefined)[]): string[] {
  const [units, currency = "", ...texts] = shown.map((rows) => rows?.[0]?.[0] ?? "");
  const system = readUnitSystem(units === "SI" ? "SI" : "US");
  return NUMBERS.map(({ kind }, index) => {
    const text = texts[index] ?? "";
    return text === "" ? "to fill" : amount(text, kind === "money" ? currency : unitOf(kind, system));
  });
}

/** Rows of label, before and now. */
export function sideBySide(
  before: readonly string[],
  now: readonly string[],
): { readonly label: string; readonly before: string; readonly now: string }[] {
  return NUMBERS.map(({ label }, index) => ({ label, before: before[index] ?? "", now: now[index] ?? "" }));
}

/** The cost of each kind in option A; undefined where the job has no price yet. */
export function costsOf(costs: Grid | undefined): number[] | undefined {
  const read = COST_KINDS.map((_, row) => costs?.[row]?.[0]);
  return read.every((cost) => typeof cost === "number") ? read : undefined;
}
