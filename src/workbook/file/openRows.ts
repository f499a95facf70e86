import { parseArea } from "../../xlsx/address";
import { attributeOf, childOf, startTag, type Piece, type XmlElement } from "../../xlsx/xml";
import { DEFAULT_HEIGHT, STYLE } from "../layout/style";
import type { CellModel, SheetModel } from "../model";

/**
 * The rows that a file holds of a sheet which ends with a growing table. What stands above the table gets a cell in every
 * column, since the columns carry the look of the table's rows; of the table itself only rows up to the last that holds
 * something are written. Any other sheet is given back as it is.
 */
export function rowsInFile(
  sheet: SheetModel,
  holds: (row: number, column: number, cell: CellModel) => boolean,
): ReadonlyMap<number, ReadonlyMap<number, CellModel>> {
  const { openFrom } = sheet;
  if (openFrom === undefined) return sheet.rows;
  const rows = new Map<number, Map<number, CellModel>>();
  for (let row = 1; row < openFrom; row++) {
    const cells = new Map(sheet.rows.get(row));
    sheet.widths.forEach((_, index) => {
      if (!cells.has(index + 1)) cells.set(index + 1, { style: STYLE.plain });
    });
    rows.set(row, cells);
  }
  const last = lastHeld(sheet, openFrom, holds);
  for (const [row, cells] of sheet.rows) if (row >= openFrom && row <= last) rows.set(row, cells);
  return rows;
}

function lastHeld(
  sheet: SheetModel,
  openFrom: number,
  holds: (row: number, column: number, cell: CellModel) => boolean,
): number {
  let last = openFrom;
  for (const [row, cells] of sheet.rows) {
    if (row > last && [...cells].some(([column, cell]) => holds(row, column, cell))) last = row;
  }
  return last;
}

/** Heights by row; above a growing table every row has one, since the height of the table's rows is the sheet's usual one. */
export function heightsInFile({ openFrom = 1, heights }: SheetModel): ReadonlyMap<number, number> {
  const above = Array.from({ length: openFrom - 1 }, (_, index) => [index + 1, DEFAULT_HEIGHT] as const);
  return new Map([...above, ...heights]);
}

/** What gives the columns of a sheet the look of the cells in a row, and all further rows its height. */
export function openColumns(
  sheet: XmlElement,
  { openFrom, heights }: Pick<SheetModel, "openFrom" | "heights">,
): Piece[] {
  if (openFrom === undefined) return [];
  const looks = new Map<number, string | undefined>();
  const rows = childOf(sheet, "sheetData")?.children ?? [];
  const row = rows.find((one) => attributeOf(one, "r") === String(openFrom));
  for (const cell of row?.children ?? []) {
    const area = parseArea(attributeOf(cell, "r") ?? "", "");
    if (area) looks.set(area.left + 1, attributeOf(cell, "s"));
  }
  const height = heights.get(openFrom) ?? DEFAULT_HEIGHT;
  const usual = childOf(sheet, "sheetFormatPr");
  const columns = childOf(sheet, "cols")?.children ?? [];
  return [
    ...(usual ? [startTag(usual, { defaultRowHeight: String(height), customHeight: "1" })] : []),
    ...columns.flatMap((column) => {
      const style = looks.get(Number(attributeOf(column, "min")));
      return style === undefined ? [] : [startTag(column, { style })];
    }),
  ];
}
