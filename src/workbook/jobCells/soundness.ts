import { FACTS } from "../../job/facts";
import { RESULTS } from "../../job/results";
import { GLANCE } from "../glance";
import type { Recalculated } from "../recalculate";
import { sheets } from "../sheets";

/**
 * Why a workbook has no price that could be trusted: a sheet or a name is gone, or a cell is in error. Empty where it is sound.
 */
export function unsound(workbook: Recalculated): string[] {
  const present = new Set(workbook.sheets);
  const gone = sheets.map(({ name }) => name).filter((name) => !present.has(name));
  const known = new Set([...workbook.names.keys()].map((name) => name.toLowerCase()));
  const lost = neededNames().filter((name) => !known.has(name.toLowerCase()));
  const errors = [...workbook.results].flatMap(([cell, result]) => {
    const error = [result].flat(2).find((value) => typeof value === "string" && /^#[A-Z/0!?]+$/.test(value));
    return error === undefined
      ? []
      : [`${cell} is in error (${String(error)}): ${workbook.reasons.get(cell) ?? "see what it reads"}`];
  });
  return [
    ...gone.map((name) => `the sheet ${name} is missing`),
    ...lost.map((name) => `no cell is named ${name}`),
    ...errors,
  ];
}

/** The names that inputs and results are read by. */
function neededNames(): string[] {
  const facts = Object.values(FACTS).flatMap((fact) =>
    fact.type === "table" ? [fact.name, ...Object.values(fact.columns).flatMap(({ name }) => name ?? [])] : [fact.name],
  );
  const results = Object.values(RESULTS).flatMap((topic) => topic.map(({ name }) => name));
  return [...new Set([...facts, ...results, ...GLANCE.map(({ name }) => name), "Units", "Checks"])].filter(
    (name) => !ONLY_COLUMNS.has(name),
  );
}

/** Tables whose columns have names, and the whole has none. */
const ONLY_COLUMNS: ReadonlySet<string> = new Set(
  Object.values(FACTS).flatMap((fact) =>
    fact.type === "table" && Object.values(fact.columns).every(({ name }) => name !== undefined && name !== fact.name)
      ? [fact.name]
      : [],
  ),
);
