import type { CellValue } from "../model";
import { areaAddress, cellAddress } from "./address";
import type { Kind } from "./formats";
import type { InputSpec } from "./inputSpec";
import type { Both } from "./job";

/** One column of a table: an input column, or one with a formula, or fixed texts. */
export interface ColumnSpec {
  readonly key: string;
  readonly title: string;
  readonly kind: Kind;
  readonly unit?: Both<string>;
  /** Defined name of the column's cells. */
  readonly name?: string;
  /** The user types here. */
  readonly input?: Pick<InputSpec, "min" | "max" | "whole" | "choices" | "message">;
  /**
   * Formula of every row. "[key]" is this row's cell of another column, "[key:all]" that whole column,
   * "[key:above]" its cell in the row above (in the first row the heading), "[#]" the row's number from 1.
   * An input column may have one too: the user may type over it. Or one for each row, where they differ.
   */
  readonly formula?: string | readonly string[];
  /** What the formula rests on, as of a result. */
  readonly source?: Both<string>;
  /**
   * One formula fills the column from its first row down, or so many of its rows: "[key]" is a column of these rows in it.
   * AND and OR would make one value of a column: use * and +. Not where a row may read what another row of the column gives,
   * by hand or by rule: that is a circle. Without a formula here, formulas that fill several rows are put in afterwards.
   */
  readonly whole?: true | number;
  /** Fixed texts or numbers, one for each row. */
  readonly fixed?: readonly CellValue[];
  readonly format?: string;
  /** Sheet columns this one takes (merged); 1 if left out. */
  readonly across?: number;
}

/** Where each column begins, by key, and the sheet column right of the last one. */
export function placesOf(columns: readonly ColumnSpec[], left: number): [places: Map<string, number>, next: number] {
  const places = new Map<string, number>();
  let next = left;
  for (const column of columns) {
    places.set(column.key, next);
    next += column.across ?? 1;
  }
  return [places, next];
}

/** The sheet column a table column begins at. */
export function placeOf(places: ReadonlyMap<string, number>, key: string, sheet: string): number {
  const at = places.get(key);
  if (at === undefined) throw new Error(`${sheet}: a table has no column "${key}"`);
  return at;
}

/** Puts cell addresses where a column's formula says "[key]". */
export function fillIn(
  text: string,
  row: number,
  top: number,
  bottom: number,
  places: ReadonlyMap<string, number>,
  sheet: string,
): string {
  return text.replace(/\[(#|[a-zA-Z][\w]*)(:all|:above)?\]/g, (_, key: string, which?: string) => {
    if (key === "#") return String(row - top + 1);
    const at = placeOf(places, key, sheet);
    if (which === ":all") return areaAddress({ top, left: at, bottom, right: at }, true);
    return cellAddress(which === ":above" ? row - 1 : row, at);
  });
}

/** The same for a formula that fills the whole column: "[key]" is a column. */
export function fillInWhole(
  text: string,
  top: number,
  bottom: number,
  places: ReadonlyMap<string, number>,
  sheet: string,
): string {
  return text.replace(/\[([a-zA-Z]\w*)\]/g, (_, key: string) => {
    const at = placeOf(places, key, sheet);
    return areaAddress({ top, left: at, bottom, right: at });
  });
}
