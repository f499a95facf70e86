import { saveWorkbook } from "../bench/saving/saveWorkbook";
import type { Result } from "../bench/work/work";
import type { CellValue } from "../workbook/model";
import type { OpenedWorkbook, Recalculated } from "../workbook/recalculate";
import { parseArea } from "../xlsx/address";

/** A workbook's file with cells typed over and everything calculated afresh; whatever else it holds stays as it was. */
export function typedFile(
  bytes: Uint8Array,
  opened: OpenedWorkbook,
  typed: ReadonlyMap<string, CellValue>,
): Uint8Array {
  const cells = new Map([...typed].map(([key, content]) => [key, apart(content)]));
  const edits = [...cells].flatMap(([key, content]) => {
    const at = key.lastIndexOf("!");
    const area = parseArea(key.slice(at + 1), key.slice(0, at));
    return area ? [{ sheet: area.sheet, row: area.top, column: area.left, content }] : [];
  });
  const over = new Set(edits.map(({ sheet, row, column }) => `${sheet}!${row},${column}`));
  const results = resultsOf(opened.recalculate(cells)).filter(
    ({ sheet, row, column }) => !over.has(`${sheet}!${row},${column}`),
  );
  return saveWorkbook(bytes, { edits, results, pictures: [] });
}

/** A text from elsewhere must not become a formula. */
function apart(content: CellValue): CellValue {
  return typeof content === "string" && content.startsWith("=") ? `'${content}` : content;
}

/** What every formula of a calculated workbook shows, to be saved with it. */
export function resultsOf({ results, formulas }: Recalculated): Result[] {
  return [...results].flatMap(([key, result]) => {
    const at = key.lastIndexOf("!");
    const area = parseArea(key.slice(at + 1), key.slice(0, at));
    if (!area) return [];
    const { sheet, top: row, left: column } = area;
    const values = Array.isArray(result) ? result : [[result]];
    return [{ sheet, row, column, formula: `=${formulas.get(key) ?? ""}`, values }];
  });
}
