import type { CellValue } from "../workbook/model";
import { NO_PRICE } from "../workbook/sheets/quote/noPrice";
import { textIn, type PaperCells } from "./cells";

/** A part of the sheet Quote: its heading, and the rows under it that show anything. */
export interface QuoteBlock {
  readonly title: string;
  readonly rows: readonly (readonly CellValue[])[];
  /** The rows between blank ones: a table, then its sums. */
  readonly groups: readonly (readonly (readonly CellValue[])[])[];
}

/** Rows of its head, which the paper writes itself: company, contact, draft, revision. */
const HEAD_ROWS = 4;

/** Columns of the sheet's page. */
const COLUMNS = 6;

/** The sheet Quote in its parts: a heading stands alone under a blank row, and what follows belongs to it. */
export function quoteBlocks(cells: PaperCells): QuoteBlock[] {
  const blocks: { title: string; groups: CellValue[][][] }[] = [];
  let blank = false;
  for (const whole of cells.sheet("Quote").slice(HEAD_ROWS)) {
    const row = whole.slice(0, COLUMNS);
    const filled = row.filter((_, column) => textIn(row, column) !== "").length;
    const first = textIn(row, 0);
    if (filled === 1 && blank && !["", NO_PRICE].includes(first) && !first.startsWith("•"))
      blocks.push({ title: first, groups: [] });
    else if (filled > 0) {
      const groups = blocks.at(-1)?.groups;
      if (blank || groups?.length === 0) groups?.push([]);
      groups?.at(-1)?.push(row);
    }
    // Rows that are kept for more show nothing, and are not the space before a heading.
    blank = filled === 0;
  }
  return blocks.map((block) => ({ ...block, rows: block.groups.flat() }));
}

/** The sentences of a block, without the dots that the sheet sets before them. */
export function sentencesOf(block: QuoteBlock): string[] {
  return block.rows.map((row) => textIn(row, 0).replace(/^•\s*/, ""));
}
