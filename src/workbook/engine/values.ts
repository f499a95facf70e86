import type { CellValue } from "../model";
import type { RuntimeValue, ScalarValue } from "./library";

/** The kinds of the calculating library's values; its own enumeration exists for the compiler only. */
export const KIND = { blank: 0, number: 1, text: 2, flag: 3, error: 4, table: 5 } as const;

/** What the calculating library gives its functions: a value, or a table of them. */
export interface Scalar {
  readonly kind: number;
  readonly value?: unknown;
  readonly code?: string;
}
export interface Table {
  readonly kind: number;
  readonly rows: readonly (readonly Scalar[])[];
}
export type Given = Scalar | Table;
/** A function as the library calls it. */
export type Invoke = (given: Given[]) => Given;

export function isTable(given: Given): given is Table {
  return "rows" in given;
}

export function asTable(rows: Table["rows"]): Table & { height: number; width: number } {
  return { kind: KIND.table, rows, height: rows.length, width: rows[0]?.length ?? 0 };
}

/** A value as the calculating library reads it off a cell. */
export type Held = number | string | boolean | { readonly error: string };

/** An error as a cell shows it. */
const ERROR = /^#(?:N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;

/** Whether what a cell shows is an error. */
export function isErrorCode(value: unknown): value is string {
  return typeof value === "string" && ERROR.test(value);
}

/** What a formula comes to in its cell: nothing is 0 there, as in every spreadsheet. */
export function heldBy(value: ScalarValue | undefined): Held {
  if (!value || value.kind === KIND.blank) return 0;
  if (value.kind === KIND.error) return { error: value.code };
  if (value.kind === KIND.number && !Number.isFinite(value.value)) return { error: "#NUM!" };
  return (value as { readonly value: Held }).value;
}

/** The rows of what a formula came to. */
export function rowsOf(value: RuntimeValue): Held[][] {
  if (value.kind !== KIND.table)
    return [[value.kind > KIND.table ? { error: "#CALC!" } : heldBy(value as ScalarValue)]];
  const { rows } = value as { readonly rows: readonly (readonly ScalarValue[])[] };
  return rows.length === 0 || rows[0]?.length === 0 ? [[{ error: "#CALC!" }]] : rows.map((row) => row.map(heldBy));
}

export function sameHeld(one: Held | undefined, other: Held | undefined): boolean {
  if (typeof one === "object" && typeof other === "object") return one.error === other.error;
  return one === other;
}

/** What a cell shows: errors as their text. */
export function shown(value: Held | undefined): CellValue {
  return value === undefined ? "" : typeof value === "object" ? value.error : value;
}
