import type { ICellData, Nullable } from "@univerjs/core";
import type { CellValue } from "../../host/port";

const BOOLEAN = 3;

/** What a person put into a cell: a value, a formula that begins with "=", or "" for nothing. */
export type Content = CellValue;

/** Whether a content is a formula; everything else stands in its cell as it is. */
export function isFormula(content: Content): content is `=${string}` {
  return typeof content === "string" && content.startsWith("=");
}

/** The value a cell of the grid shows, as the port gives it. */
export function shownValue(cell: Nullable<ICellData>): CellValue {
  if (!cell) return "";
  const written = cell.p?.body?.dataStream;
  // The grid ends every paragraph with \r and the text with \n.
  if (written !== undefined) return written.replace(/\r\n$/, "").replace(/\r/g, "\n");
  if (cell.v === null || cell.v === undefined) return "";
  if (cell.t === BOOLEAN) return cell.v === 1 || cell.v === true || cell.v === "1";
  return cell.v;
}

/** What a formula came to, as the grid takes it. */
export function asResult(value: CellValue): ICellData {
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: BOOLEAN };
  return { v: value, t: typeof value === "number" ? 2 : 1 };
}

/** A person's content as the grid takes it; the cell's own format stays. */
export function asCell(content: Content): ICellData {
  const nothing: ICellData = { v: null, f: null, si: null, p: null, t: null };
  if (content === "") return nothing;
  if (isFormula(content)) return { ...nothing, f: content };
  if (typeof content === "boolean") return { ...nothing, v: content ? 1 : 0, t: BOOLEAN };
  return { ...nothing, v: content, t: typeof content === "number" ? 2 : 1 };
}
