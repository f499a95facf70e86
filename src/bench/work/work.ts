import type { Grid } from "../../host/port";
import type { Content } from "./content";
import type { Picture } from "./picture";

/** A cell a person changed, counted from 0, and what it holds now. */
export interface Edit {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: Content;
  /** The form of numbers or days that the content brought into a cell which has none in the file: a typed day, say. */
  readonly form?: string;
}

/** What a formula cell came to, for saving: one cell, or the rows of a spill. */
export interface Result {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly values: Grid;
}

/** What goes into the file when it is saved. */
export interface Work {
  readonly edits: readonly Edit[];
  readonly results: readonly Result[];
  readonly pictures: readonly Picture[];
}
