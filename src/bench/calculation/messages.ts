import type { Change } from "../../workbook/engine/engine";
import type { RuleResult, RuleText } from "../../workbook/engine/rules";
import type { Content } from "../work/content";

/** What a person put into a cell; rows and columns counted from 0. */
export interface Typed {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: Content;
}

/** What the page asks of the worker that calculates. Each is answered, in the order they were asked. */
export type Asked =
  | { readonly open: Uint8Array; readonly typed: readonly Typed[] }
  | { readonly typed: readonly Typed[] }
  | { readonly watch: readonly RuleText[]; readonly unwatch: readonly string[]; readonly ask: readonly string[] }
  | { readonly all: true };

/** What came of it. */
export interface Answer {
  readonly changes: readonly Change[];
  readonly rules: readonly RuleResult[];
  /** The circles of formulas that read each other. */
  readonly circles: readonly (readonly string[])[];
  /** How many formulas of the file show their stored results, because they cannot be worked out here. */
  readonly unworkable: number;
  /** Why the worker could not do it. */
  readonly problem?: string;
}
