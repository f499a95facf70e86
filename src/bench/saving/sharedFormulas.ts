import type { Edit, Result } from "../work/work";
import type { WideFormula } from "./sheetXml";

interface ExplicitFormula {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/**
 * Other programs store a filled-down formula once, in its first cell. When an edit takes that cell, the cells that
 * share it must carry their formula themselves.
 */
export function explicitShared(
  wide: readonly WideFormula[],
  edits: readonly Edit[],
  formulas: ReadonlyMap<string, Result>,
  sheet: string,
): ExplicitFormula[] {
  const members = wide.filter(({ type }) => type === "shared");
  const edited = new Set(edits.map(({ row, column }) => `${row},${column}`));
  const lost = new Set(
    members
      .filter(({ row, column, ref }) => ref !== undefined && edited.has(`${row},${column}`))
      .map(({ group }) => group),
  );
  return members.flatMap(({ row, column, group }) => {
    const formula = formulas.get(`${sheet}!${row},${column}`)?.formula;
    return lost.has(group) && !edited.has(`${row},${column}`) && formula ? [{ row, column, formula }] : [];
  });
}
