import type { SourceCell } from "../../src/workbook/engine/book";
import { Engine } from "../../src/workbook/engine/engine";

/*
 * What an estimator has without these functions: lookups and sums of an ordinary sheet. Both kinds of cells are calculated
 * by the same engine, so that the ratio says what our functions cost, and not whose engine is faster.
 */

/** Calculates one sheet in which every row holds the formula that `written` gives for it. */
function sheetOf(
  rows: number,
  written: (row: number) => string,
  fill: (put: Put) => void = () => undefined,
): () => void {
  const cells: SourceCell[] = [];
  fill((column, row, value) => void cells.push({ row, column, value }));
  for (let row = 1; row <= rows; row++) cells.push({ row, column: 1, value: undefined, formula: written(row) });
  const sheet = { name: "Sheet1", cells, filled: [], merged: [], hiddenRows: [] };
  const engine = new Engine({ sheets: [sheet], names: [], date1904: false });
  return () => void engine.runAll();
}

type Put = (column: number, row: number, value: string | number) => void;

/** Cells with the head of a pipe run: the lift, and a line of a printed friction table for the length. */
export const headsLookedUp = (rows: number): (() => void) =>
  sheetOf(
    rows,
    (row) => `6+VLOOKUP(${2400 + row / 100},$H$1:$I$100,2,TRUE)*100/100`,
    (put) => {
      for (let line = 1; line <= 100; line++) {
        put(8, line, 100 * line);
        put(9, line, (line / 20) ** 1.852);
      }
    },
  );

/** The same cells with TDH. */
export const headsCalculated = (rows: number): (() => void) =>
  sheetOf(rows, (row) => `RILL.TDH(${2400 + row / 100},6,2,100)`);

/** Order lines held against as many tickets and invoices with SUMIFS, as a bookkeeper would; no units, no verdicts. */
export const linesSummed = (lines: number): (() => void) =>
  sheetOf(
    lines,
    (row) =>
      `SUMIFS($F$1:$F$${lines},$D$1:$D$${lines},B${row},$E$1:$E$${lines},C${row})` +
      `-SUMIFS($I$1:$I$${lines},$G$1:$G$${lines},B${row},$H$1:$H$${lines},C${row})`,
    (put) => {
      for (let row = 1; row <= lines; row++) {
        for (const column of [2, 4, 7]) put(column, row, `PO-${Math.floor(row / 8)}`);
        for (const column of [3, 5, 8]) put(column, row, `ITEM-${row % 8}`);
        put(6, row, 20 + (row % 7) / 4);
        put(9, row, 20 + (row % 7) / 4);
      }
    },
  );
