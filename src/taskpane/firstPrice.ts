import type { Place } from "../host/port";
import { amount } from "./amount";

/** The draft on Start, as its cells show it. */
export const FIRST_PRICE_PLACES: readonly Place[] = ["DraftShown", "DraftNext", "DraftRemarks"];

export interface FirstPrice {
  readonly numbers: readonly (readonly [label: string, text: string])[];
  /** What to measure next, the weightiest first. */
  readonly next: readonly string[];
  /** What must be known to read the range; mostly nothing. */
  readonly remarks: readonly string[];
}

type Shown = readonly (readonly (readonly string[])[] | undefined)[];

/** The draft that the six answers make; nothing where there is none. */
export function readFirstPrice([numbers = [], next = [], remarks = []]: Shown): FirstPrice | undefined {
  const filled = numbers.flatMap(([label = "", value = "", unit = ""]) =>
    value === "" ? [] : [[label, amount(value, unit)] as const],
  );
  if (filled.length === 0) return undefined;
  return {
    numbers: filled,
    next: said(next),
    remarks: said(remarks),
  };
}

function said(lines: readonly (readonly string[])[]): string[] {
  return lines.flatMap(([line = ""]) => (line === "" ? [] : [line]));
}
