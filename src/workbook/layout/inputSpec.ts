import type { CellValue } from "../model";
import type { Kind } from "./formats";
import type { Both } from "./job";

/** One input in one row: label, cell, unit, note. */
export interface InputSpec {
  /** Defined name. */
  readonly name?: string;
  readonly label: string;
  /** What it measures; gives unit and number format. "text" and "date" are kinds too. */
  readonly kind: Kind;
  /** Unit text where the kind has none of its own. */
  readonly unit?: Both<string>;
  /** Value in the demo only. */
  readonly demo?: Both<CellValue>;
  /** Value in demo and blank alike, of an input that is no fact; what a fact is taken for says `job/facts/usual`. */
  readonly usual?: Both<CellValue>;
  /** Least and most that may be typed. */
  readonly min?: Both<number>;
  readonly max?: Both<number>;
  readonly whole?: boolean;
  /** Names to choose from, or a formula such as "=PumpNames". */
  readonly choices?: Both<readonly string[]> | string;
  /** What to type, in a sentence; shown when the cell is selected and when it is refused. */
  readonly message: Both<string>;
  /** A remark printed beside it. */
  readonly note?: Both<string>;
  /** What a fact's remark says, as a formula made of the one that gives its reason: what is wrong goes before it. */
  readonly remark?: (reason: string) => string;
  /** May stay blank. */
  readonly optional?: boolean;
  readonly format?: string;
}
