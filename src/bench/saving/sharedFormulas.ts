import { columnNumber } from "../../host/address";
import type { SavedEdit, SavedResult } from "./saveWorkbook";

interface ExplicitFormula {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/**
 * Other programs store a filled-down formula once, in its first cell. When an edit takes that cell, the cells that
 * leaned on it must carry their formula themselves.
 */
export function explicitShared(
  xml: string,
  edits: readonly SavedEdit[],
  formulas: ReadonlyMap<string, SavedResult>,
  sheet: string,
): ExplicitFormula[] {
  if (!xml.includes('t="shared"')) return [];
  const members = sharedCells(xml);
  const edited = new Set(edits.map(({ row, column }) => `${row},${column}`));
  const lost = new Set(
    members.filter(({ row, column, leads }) => leads && edited.has(`${row},${column}`)).map(({ group }) => group),
  );
  return members.flatMap(({ row, column, group }) => {
    const formula = formulas.get(`${sheet}!${row},${column}`)?.formula;
    return lost.has(group) && !edited.has(`${row},${column}`) && formula ? [{ row, column, formula }] : [];
  });
}

function sharedCells(xml: string): { row: number; column: number; group: string; leads: boolean }[] {
  const pattern = /<(?:\w+:)?c\b[^>]*\br="([A-Z]+)(\d+)"[^>]*>\s*<(?:\w+:)?f\b([^>]*\bt="shared"[^>]*)>/g;
  return [...xml.matchAll(pattern)].map(([, letters, row, attributes]) => ({
    row: Number(row) - 1,
    column: columnNumber(letters ?? "A"),
    group: /\bsi="(\d+)"/.exec(attributes ?? "")?.[1] ?? "",
    leads: /\bref="/.test(attributes ?? ""),
  }));
}
