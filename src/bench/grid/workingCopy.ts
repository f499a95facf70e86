import type { IWorkbookData } from "@univerjs/core";
import { contentOf } from "../work/fileContent";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { sheetId } from "../reading/sheetId";
import { asCell } from "../work/content";
import type { Edit } from "../work/work";
import { Edits } from "./edits";
import { GENERAL, type GridModel } from "./model";

/** Puts kept edits into the data of a workbook before it is shown, and remembers them as a person's. */
export function withEdits(
  data: IWorkbookData,
  { workbook }: OpenedWorkbook,
  kept: readonly Edit[],
  model: GridModel,
): Edits {
  const sheets = new Map(workbook.sheets.map((sheet, index) => [sheet.name, { sheet, id: sheetId(index) }]));
  const dates1904 = workbook.dateSystem === "1904";
  const edits = new Edits(
    (sheet, row, column) => model.content(sheet, row, column),
    (sheet, row, column) => contentOf(sheets.get(sheet)?.sheet, row, column, dates1904),
    (sheet, row, column) => {
      const { cells, columns } = sheets.get(sheet)?.sheet ?? {};
      const { numFmt = GENERAL } = cells?.get(`${row},${column}`)?.style ?? columns?.[column]?.style ?? {};
      return numFmt === GENERAL ? model.form(sheet, row, column) : undefined;
    },
  );
  for (const { sheet, row, column, content, form } of kept) {
    const rows = data.sheets[sheets.get(sheet)?.id ?? ""]?.cellData;
    if (!rows) continue;
    const cells = (rows[row] ??= {});
    const { s } = cells[column] ?? {};
    const look = typeof s === "string" ? data.styles[s] : s;
    cells[column] = {
      ...cells[column],
      ...asCell(content),
      ...(form === undefined ? {} : { s: { ...look, n: { pattern: form } } }),
    };
    edits.touch(sheet, row, column);
  }
  return edits;
}
