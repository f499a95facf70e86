import type { CellValue, Grid } from "../host/port";

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

/** The checks of the list's rows (label, value, unit, limit, verdict, where, cure), what needs attention first. */
export function readChecks(rows: Grid): readonly Check[] {
  const checks = rows
    .filter(([label]) => label !== undefined && label !== "")
    .map(([label, value, unit, limit, verdict, where, cure]): Check => {
      const place = String(where);
      return {
        label: String(label),
        value: [shown(value), shown(value) === "" ? "" : String(unit ?? "")].filter(Boolean).join(" "),
        limit: shown(limit),
        verdict: String(verdict),
        state: STATES[String(verdict)] ?? "bad",
        place: place.split(": ").pop() ?? place,
        where: place,
        cure: String(cure ?? ""),
      };
    });
  return ORDER.flatMap((state) => checks.filter((check) => check.state === state));
}

/** A number as a person reads it: four significant digits, thousands grouped. */
export function shown(value: CellValue | undefined): string {
  if (typeof value !== "number") return String(value ?? "");
  return value.toLocaleString("en-US", { maximumSignificantDigits: 4 });
}
