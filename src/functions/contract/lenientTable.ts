import { Problem } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Argument, Arguments } from "./argument";
import { rowLabel, rowReader, type Row } from "./tables";

/** A row that could not be read: its number in the range, its cells, and what is wrong with it. */
export interface UnreadRow {
  readonly row: number;
  readonly cells: readonly unknown[];
  /** A sentence without its full stop: 'quantity "half" is not understood'. */
  readonly reason: string;
}

/** The rows that could be read, and those that could not. */
export interface LenientRows<T> {
  readonly rows: readonly T[];
  readonly unread: readonly UnreadRow[];
}

/**
 * Rows of a range where one bad row must not take the others away: it is set aside with the reason. `finish` makes what
 * the calculation receives of a row that was read, and may refuse it too.
 */
export function lenientTable<C extends Arguments, T>(
  about: string,
  columns: C,
  finish: (row: Row<C, Record<never, never>>) => T,
): Argument<LenientRows<T>> {
  const { facts, filledRows, readRow } = rowReader(about, columns, {});
  return {
    ...facts,
    read(raw, label, system: UnitSystem) {
      const rows: T[] = [];
      const unread: UnreadRow[] = [];
      for (const { cells, number } of filledRows(raw, label)) {
        try {
          rows.push(finish(readRow(cells, number, label, system)));
        } catch (error) {
          if (!(error instanceof Problem)) throw error;
          const at = rowLabel(label, number);
          const reason = error.message.startsWith(at) ? error.message.slice(at.length) : error.message;
          unread.push({ row: number, cells, reason });
        }
      }
      return { rows, unread };
    },
  };
}
