import type { IWorkbookData } from "@univerjs/core";
import { contentOf } from "../reading/contents";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { sheetId } from "../reading/sheetId";
import { asCell } from "./content";
import { Edits, type Edit } from "./edits";
import type { GridModel } from "./model";

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
  );
  for (const { sheet, row, column, content } of kept) {
    const rows = data.sheets[sheets.get(sheet)?.id ?? ""]?.cellData;
    if (!rows) continue;
    const cells = (rows[row] ??= {});
    cells[column] = { ...cells[column], ...asCell(content) };
    edits.touch(sheet, row, column);
  }
  return edits;
}
