import { amount } from "./amount";

/** A check as the Start sheet lists it. */
export interface Check {
  readonly label: string;
  /** "4.2 ft/s", as far as there is a value. */
  readonly value: string;
  readonly limit: string;
  readonly verdict: string;
  readonly state: "bad" | "look" | "fill" | "good";
  /** The name or address of the cell to change, and how it is shown. */
  readonly place: string;
  readonly where: string;
  readonly cure: string;
}

/** The defined name of the list on Start. */
export const CHECK_LIST = "Checks";

const STATES: Readonly<Record<string, Check["state"]>> = { OK: "good", LOOK: "look", "to fill": "fill" };
const ORDER: readonly Check["state"][] = ["bad", "look", "fill", "good"];

/** The checks of the list's rows as shown (label, value, unit, limit, verdict, where, cure), what needs attention first. */
export function readChecks(rows: readonly (readonly string[])[]): readonly Check[] {
  const checks = rows
    .filter(([label]) => label !== undefined && label !== "")
    .map(([label = "", value = "", unit = "", limit = "", verdict = "", where = "", cure = ""]): Check => ({
      label,
      value: value === "" ? "" : amount(value, unit),
      limit,
      verdict,
      state: STATES[verdict] ?? "bad",
      place: where.split(": ").pop() ?? where,
      where,
      cure,
    }));
  return ORDER.flatMap((state) => checks.filter((check) => check.state === state));
}
