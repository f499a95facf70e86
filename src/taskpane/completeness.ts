import type { Place } from "../host/port";

/** How complete the job is, in one line, and the next cell to fill in or fix. */
export interface Completeness {
  readonly said: string;
  /** Whether any is typed that cannot be read. */
  readonly anyWrong: boolean;
  /** "Site!B19", and what it is called, "Site: Run"; undefined where nothing is left. */
  readonly next: { readonly place: Place; readonly called: string } | undefined;
}

/** The names that `readCompleteness` needs, in its order, and what it calls the facts each counts. */
const COUNTED: readonly (readonly [place: Place, called: string])[] = [
  ["FactsYours", "yours"],
  ["FactsCompany", "your company's"],
  ["FactsAssumed", "assumed"],
  ["FactsInvented", "invented"],
  ["FactsUnknown", "unknown"],
  ["FactsWrong", "wrong"],
];
export const COMPLETENESS_PLACES: readonly Place[] = [
  ...COUNTED.map(([place]) => place),
  "FactsNext",
  "FactPlaces",
  "FactMissing",
];

/** The line from what those cells show; undefined where the workbook has none of them. */
export function readCompleteness(
  shown: readonly (readonly (readonly string[])[] | undefined)[],
): Completeness | undefined {
  const texts = shown.map((rows) => rows?.[0]?.[0]);
  if (texts.some((text) => text === undefined)) return undefined;
  const counts = COUNTED.map(([, called], index) => ({ called, count: Number(texts[index]) }));
  const some = counts.filter(({ count }) => count !== 0);
  const place = texts[COUNTED.length] ?? "";
  const [places = [], missing = []] = shown.slice(COUNTED.length + 1);
  const called = missing[places.findIndex(([one]) => one === place)]?.[0];
  return {
    said: `Facts: ${some.map(({ called, count }) => `${count} ${called}`).join(", ")}.`,
    anyWrong: counts.some(({ called: state, count }) => state === "wrong" && count > 0),
    next: place === "" ? undefined : { place, called: called || place },
  };
}
