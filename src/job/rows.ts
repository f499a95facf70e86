import { invalid } from "../calc/problem";
import { isKnown, type Derived } from "./derived";
import { Problem } from "../calc/problem";

/** A row of a table with its number in the table, from 1. */
export type Numbered<R> = R & { readonly row: number };

/** The rows that say something: a row of nothing but zeros is as good as blank. */
export function filledRows<R extends object>(rows: readonly R[]): Numbered<R>[] {
  return rows.flatMap((row, index) => (saysSomething(row) ? [{ ...row, row: index + 1 }] : []));
}

function saysSomething<R extends object>(row: R): boolean {
  for (const column in row) {
    const value: unknown = row[column];
    if (value !== undefined && value !== null && value !== 0) return true;
  }
  return false;
}

/** A row's value, which the row cannot do without. */
export function needed<T>(value: T | undefined | null, table: string, row: number, what: string): T {
  if (value === undefined || value === null) throw invalid(`${table} row ${row}: ${what} is needed`);
  return value;
}

/** The sum of what is known; nothing where nothing is known, and a problem where a part has one. */
export function sumOf(values: readonly Derived<number>[]): Derived<number> {
  const numbers = values.filter(isKnown);
  if (numbers.length === 0) return undefined;
  return values.find((value) => value instanceof Problem) ?? total(numbers);
}

export function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, each) => sum + each, 0);
}

/** The most of what is known; undefined where nothing is. */
export function mostOf(values: readonly Derived<number>[]): Derived<number> {
  const numbers = values.filter(isKnown);
  return numbers.length === 0 ? undefined : Math.max(...numbers);
}

/** Parts of a piece below which rounding noise lies: 2.0000001 truckloads are two. */
const NOISE = 1e6;

/** Whole pieces that a quantity takes. */
export function wholeUp(quantity: number): number {
  return Math.ceil(Math.round(quantity * NOISE) / NOISE);
}
