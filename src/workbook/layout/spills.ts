import { Ref } from "./address";
import { hideBlankRows, whenFilled } from "./conditions";
import { formatOf, type Kind } from "./formats";
import { originOf } from "./forms";
import type { Both } from "./job";
import type { Page } from "./page";
import { besideNumbers, head } from "./tableHead";

/** One column of a spilled table: how its numbers show, and its own title where the function gives none. */
export interface SpillColumn {
  readonly title?: string;
  readonly kind: Kind;
  readonly format?: string;
  /** False where text may run on over the blank cells beside it; true where a column of numbers also holds texts. */
  readonly wrap?: boolean;
}

/** A formula that fills an area by itself, such as RILL.TDHTABLE or FILTER. */
export interface SpillSpec {
  /** Defined name of the whole reserved area, without the header row. */
  readonly name?: string;
  readonly formula: string;
  /** What the formula rests on, as of a result. */
  readonly source?: Both<string>;
  /** The most rows it may give, header not counted. */
  readonly rows: number;
  readonly columns: readonly SpillColumn[];
  /** "function": the first row it gives is the header (every RILL table). "ours": it gives no header. */
  readonly header: "function" | "ours";
  readonly needs?: readonly string[];
  readonly at?: number;
  /** Lines of text each row has room for, or row by row; 1 if left out. */
  readonly lines?: number | readonly number[];
  /** Lines of the header row; 2 if left out. */
  readonly headerLines?: number;
  /** It ends the sheet; rows it does not fill have no cells in the file. */
  readonly open?: boolean;
}

/** A spilled table as laid out. `cell(row, column)` counts rows without the header and reads as formula text. */
export interface SpillRef {
  readonly body: Ref;
  /** The cell that holds the formula. */
  readonly anchor: Ref;
  cell(row: number, column: number): Ref;
}

export function addSpill(page: Page, spec: SpillSpec): SpillRef {
  const left = spec.at ?? 1;
  const right = left + spec.columns.length - 1;
  const headRow = page.row;
  const fromFunction = spec.header === "function";
  const anchorRow = fromFunction ? headRow : headRow + 1;
  const bottom = headRow + spec.rows;
  // The head of a blank table says why; below it all is blank, as names and charts expect.
  const formula = whenFilled(spec.formula, spec.needs, fromFunction ? '"Inputs missing"' : '""');

  for (let column = left; column <= right; column++) {
    const shape = spec.columns[column - left];
    if (!shape) continue;
    const isText = shape.kind === "text";
    const room = besideNumbers(isText && column > left);
    if (fromFunction) page.put(headRow, column, { style: isText ? "headText" : "head", look: room });
    else head(page, headRow, column, { title: shape.title ?? "", kind: shape.kind });
    const format = shape.format ?? (isText ? "General" : formatOf(shape.kind, page.job.system));
    for (let row = headRow + 1; row <= bottom; row++) {
      page.put(row, column, {
        style: isText ? "resultText" : "result",
        kind: shape.kind,
        look: { format, ...room, ...(shape.wrap === undefined ? {} : { wrap: shape.wrap }) },
      });
    }
  }
  // Headers come with units, which take a second line in narrow columns.
  page.roomFor(headRow, spec.headerLines ?? 2);
  const { lines = 1 } = spec;
  for (let row = headRow + 1; row <= bottom; row++) {
    page.roomFor(row, typeof lines === "number" ? lines : (lines[row - headRow - 1] ?? 1));
  }

  const anchorCell = page.sheet.rows.get(anchorRow)?.get(left);
  if (!anchorCell) throw new Error(`${page.name}: a spilled table needs at least one column`);
  anchorCell.formula = formula;
  anchorCell.origin = originOf(page, spec.name ?? spec.columns[0]?.title ?? "", spec.source);
  anchorCell.spill = { rows: fromFunction ? spec.rows + 1 : spec.rows, columns: spec.columns.length };
  if (!spec.open) hideBlankRows(page, { top: headRow + 1, left, bottom, right });
  if (spec.open) page.openFrom(headRow + 1);
  if (fromFunction) {
    const area = { top: headRow, left, bottom, right };
    page.job.spilled.push({ ...(spec.name ? { name: spec.name } : {}), sheet: page.name, area });
  }
  page.row = bottom + 1;

  const body = spec.name
    ? page.define(spec.name, headRow + 1, left, bottom, right)
    : new Ref(page.name, headRow + 1, left, bottom, right);
  return {
    body,
    anchor: new Ref(page.name, anchorRow, left, anchorRow, left),
    cell: (row, column) => body.cell(row, column),
  };
}
