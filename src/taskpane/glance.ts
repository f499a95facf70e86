import { readUnitSystem } from "../calc/quantity/unitSystem";
import type { Place } from "../host/port";
import { GLANCE } from "../workbook/glance";
import { unitOf } from "../workbook/layout/formats";

/** One number of the job, as the workbook shows it. */
export interface Glance {
  readonly label: string;
  readonly text: string;
  readonly name: string;
}

/** The names that `readGlance` needs, in its order. */
export const GLANCE_PLACES: readonly Place[] = ["Units", "Currency", ...GLANCE.map(({ name }) => name)];

/** "$1,200.50" and "-$3.00", "1,200.50 kr": a sign stands before the number, a word behind it. */
export function amount(text: string, currency: string): string {
  const [, minus = "", number = text] = /^(-?)(.*)$/.exec(text) ?? [];
  return /[$€£]$/.test(currency) ? `${minus}${currency}${number}` : `${text} ${currency}`.trim();
}

/** The job in a dozen numbers, from what their cells show; nothing where the workbook is none of ours. */
export function readGlance(shown: readonly (readonly (readonly string[])[] | undefined)[]): readonly Glance[] {
  const [units, currency = "", ...texts] = shown.map((rows) => rows?.[0]?.[0]);
  if (units !== "US" && units !== "SI") return [];
  const system = readUnitSystem(units);
  return GLANCE.flatMap(({ name, label, kind }, index) => {
    const text = texts[index];
    if (text === undefined) return [];
    if (text === "") return [{ name, label, text: "to fill" }];
    return [
      { name, label, text: kind === "money" ? amount(text, currency) : `${text} ${unitOf(kind, system)}`.trim() },
    ];
  });
}
