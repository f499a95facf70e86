import { FACTS, type FactKey, type Job } from "../../job/facts";
import type { Draft } from "../../job/draft/draft";
import type { Fact } from "../../job/facts/fact";
import { factCell, MARKED_TABLES } from "../layout/factCells";
import type { CellValue } from "../model";
import { tablePlaces, type Names } from "./places";
import { cellsToType, type SomeFacts } from "./typeJob";

/** Digits of a drafted number, as a cell holds it. */
const DIGITS = 9;

/**
 * What to type into which cells so that a workbook holds what a draft says of some facts, and beside each on Facts what was
 * drafted: until a person changes the cell, the fact shows as assumed and not as his own.
 */
export function draftCells(
  { job }: Draft,
  keys: readonly FactKey[],
  { system, names }: { system: Job["system"]; names: Names },
): Map<string, CellValue> {
  const cells = new Map<string, CellValue>();
  for (const key of keys) {
    const written = cellsToType({ [key]: job[key] } as SomeFacts, { system, names, digits: DIGITS });
    for (const [cell, value] of written) cells.set(cell, value);
    const mark = markOf(key, written, names);
    if (mark !== undefined) cells.set(factCell(FACTS[key].name, "drafted"), mark);
  }
  return cells;
}

/** What is left on Facts of a fact that was drafted: its value, or what the numbers of its table come to. */
function markOf(key: FactKey, written: ReadonlyMap<string, CellValue>, names: Names): CellValue | undefined {
  const fact: Fact = FACTS[key];
  if (fact.type !== "table") return [...written.values()][0];
  return MARKED_TABLES[key] === undefined ? undefined : sumMarked(key, names, (cell) => written.get(cell));
}

/** What the numbers come to that tell whether a table still holds what was drafted. */
export function sumMarked(key: FactKey, names: Names, held: (cell: string) => CellValue | undefined): number {
  const fact: Fact = FACTS[key];
  const last = MARKED_TABLES[key] ?? 0;
  if (fact.type !== "table") return 0;
  let sum = 0;
  for (const { fact: column, cell } of tablePlaces(fact, names)) {
    if (column.name !== undefined || column.at > last) continue;
    for (let row = 0; row < fact.rows; row++) {
      const value = held(cell(row));
      if (typeof value === "number") sum += value;
    }
  }
  return Number(sum.toFixed(6));
}
