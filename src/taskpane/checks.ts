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

/** The defined names of the list on Start, and of the cells to change beside it. */
export const CHECK_LIST = "Checks";
export const CHECK_PLACES = "CheckPlaces";

const STATES: Readonly<Record<string, Check["state"]>> = { OK: "good", LOOK: "look", "to fill": "fill" };
const ORDER: readonly Check["state"][] = ["bad", "look", "fill", "good"];

/** The checks of the list's rows as shown (label, value, unit, limit, verdict, where, cure) and the cells they lead to, what needs attention first. */
export function readChecks(
  rows: readonly (readonly string[])[],
  places: readonly (readonly string[])[] = [],
): readonly Check[] {
  const checks = rows
    .map((row, index) => ({ row, place: places[index]?.[0] ?? "" }))
    .filter(({ row: [label] }) => label !== undefined && label !== "")
    .map(
      ({
        row: [label = "", value = "", unit = "", limit = "", verdict = "", where = "", cure = ""],
        place,
      }): Check => ({
        label,
        value: value === "" ? "" : amount(value, unit),
        limit,
        verdict,
        state: STATES[verdict] ?? "bad",
        // A workbook of an older edition has the cell's name in place of its words, and no places beside it.
        place: place || (where.split(": ").pop() ?? where),
        where,
        cure,
      }),
    );
  return ORDER.flatMap((state) => checks.filter((check) => check.state === state));
}
