import type { CellModel } from "../model";
import { cellAddress } from "./address";
import { COLUMN, FACTS_SHEET, factRow } from "./factCells";
import type { Page } from "./page";
import { columnRoom, linesOf } from "./textRoom";

/** The column of the words beside what is used. */
const REASON = 5;

interface Spec {
  /** The fact. */
  readonly name: string;
  /** What can stand there while nothing is wrong. */
  readonly usual: readonly string[];
  readonly remark?: ((reason: string) => string) | undefined;
}

/**
 * The words beside what is used: why, or what is wrong. Where they take one line they run on over the blank cells beside them,
 * and one formula gives those of rows below each other. Longer ones wrap over merged cells, into which no formula spills.
 */
export function addReason(page: Page, { name, usual, remark }: Spec): void {
  const { row, reasons: above } = page;
  const last = factRow(name);
  const across = page.lastColumn - REASON + 1;
  const characters = page.charactersAcross(REASON, across) - 1;
  const reasonsFrom = (top: number): string => {
    const first = cellAddress(last - (row - top), COLUMN.reason);
    return `${FACTS_SHEET}!${top === row ? first : `${first}:${cellAddress(last, COLUMN.reason)}`}&""`;
  };
  if (remark || usual.some((text) => linesOf(text, columnRoom(characters)) > 1)) {
    const formula = `=${remark?.(reasonsFrom(row)) ?? reasonsFrom(row)}`;
    page.put(row, REASON, { formula, style: "remark", look: { indent: 1 }, across });
    for (const text of usual) page.fitHeight(row, text, characters);
    return;
  }
  for (let column = REASON; column < REASON + across; column++)
    page.put(row, column, { style: "remark", look: { wrap: false, ...(column === REASON ? { indent: 1 } : {}) } });
  const goesOn = above?.bottom === row - 1 && above.last === last - 1;
  const head = goesOn ? above.head : (page.sheet.rows.get(row)?.get(REASON) as CellModel);
  const top = goesOn ? above.top : row;
  head.formula = `=${reasonsFrom(top)}`;
  if (goesOn) head.spill = { rows: row - top + 1, columns: 1 };
  page.reasons = { head, top, bottom: row, last };
}
