import type { Job } from "../facts";
import type { Kind } from "../facts/units";
import type { State } from "../evaluate";
import type { Derived } from "../derived";

/** What a cell of a result holds, in SI: a number, a word, or nothing yet. */
export type ResultValue = Derived<number> | Derived<string>;

/** A result by the name it has in the workbook, so that both calculations can be laid side by side. */
export interface Result {
  /** Defined name of the cell or the range. */
  readonly name: string;
  /** What its numbers are; one for each column where the columns of a range differ. */
  readonly kind: Kind | readonly Kind[];
  /** The column of the range it stands in; left out where the whole range, row by row, is meant. */
  readonly column?: number;
  /** The column goes on below what is compared, with something else. */
  readonly partly?: true;
  readonly values: (state: State, job: Job) => readonly ResultValue[];
}

/** A result in one cell. */
export function one(name: string, kind: Kind, value: (state: State, job: Job) => ResultValue): Result {
  return { name, kind, values: (state, job) => [value(state, job)] };
}

/** A column of a range, from its first row on. */
export function column(
  name: string,
  kind: Kind,
  place: number,
  values: (state: State, job: Job) => readonly ResultValue[],
): Result {
  return { name, kind, column: place, values };
}
