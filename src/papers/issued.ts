import { issuesIn, QUOTE_PART, type Issue } from "../job/story/issue";
import type { CellValue } from "../workbook/model";
import type { Recalculated } from "../workbook/recalculate";
import { PaperCells } from "./cells";
import { wordsFor } from "./words";
import { unitsHeld } from "../workbook/unitsHeld";

/** Every quote that a job's workbook says was issued. */
export function issuesOf(workbook: Pick<Recalculated, "named">): Issue[] {
  return issuesIn(workbook.named("IssuedList") ?? []);
}

/** A quote as its client holds it: the cells of that day, and none of today's. */
export function issuedCells({ revision, day, state }: Issue): PaperCells {
  const system = unitsHeld(state.get("Units"));
  const said = `Revision ${revision}, issued ${wordsFor(system, "").day(day)}`;
  const rows = (part: string): CellValue[][] | undefined =>
    part === "QuoteIssue" ? [[said]] : state.get(part)?.map((row) => [...row]);
  const none = { sheets: [], results: new Map(), formulas: new Map(), reasons: new Map(), names: new Map() };
  return new PaperCells({ ...none, named: rows, cells: () => rows(QUOTE_PART), lastRow: () => 0 });
}
