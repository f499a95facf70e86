import { toInside, type Measure } from "../../calc/quantity/measures";
import { dateOf, serialOf } from "../../calc/quantity/dateSerial";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { cellAddress } from "../layout/address";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";

/** The word that marks a row as shipped with the tool. */
export const MARK = "invented";

/** The column of the mark, last in every table of the book. */
export const markColumn: ColumnSpec = {
  key: "mark",
  title: "Mark",
  kind: "text",
  input: { choices: [MARK], message: "Marks what came with the tool. Clear it once the row is your own." },
};

export function orBlank(value: number | undefined): CellValue {
  return value ?? "";
}

export function dayCell(day: string): CellValue {
  return serialOf(day) ?? "";
}

export function markCell({ invented }: { readonly invented: boolean }): CellValue {
  return invented ? MARK : "";
}

/** Something in a book that cannot be taken as it stands: where, and what would be right. */
export interface BookProblem {
  /** "Products!L7" */
  readonly cell: string;
  /** "Products!L7 holds -3: price must be 0 or more." */
  readonly sentence: string;
}

/** A row of a book's table, read cell by cell; what cannot be read is noted with its cell, and left unknown. */
export class RowReader {
  constructor(
    readonly sheet: string,
    /** Row of the sheet, from 1. */
    readonly row: number,
    private readonly left: number,
    private readonly columns: readonly ColumnSpec[],
    private readonly cells: readonly CellValue[],
    private readonly system: UnitSystem,
    private readonly problems: BookProblem[],
  ) {}

  /** Whether nothing was typed into the row; a mark alone says nothing. */
  get blank(): boolean {
    return this.columns.every(({ key, input }, index) => !input || key === "mark" || (this.cells[index] ?? "") === "");
  }

  text(key: string): string {
    const value = this.value(key);
    return typeof value === "string" ? value.trim() : String(value);
  }

  number(key: string, rule: { min?: number; above?: number; max?: number } = {}): number | undefined {
    const value = this.value(key);
    if (value === "") return undefined;
    const { min = -Infinity, above = -Infinity, max = Infinity } = rule;
    if (typeof value === "number" && value >= min && value > above && value <= max) return value;
    const least = above > -Infinity ? `more than ${above}` : min > -Infinity ? `${min} or more` : "a number";
    const words = max < Infinity ? `${min > -Infinity ? min : above} to ${max}` : least;
    this.wrong(
      key,
      typeof value === "number" || words === "a number" ? `must be ${words}` : `must be a number, ${words}`,
    );
    return undefined;
  }

  measure(key: string, measure: Measure, rule: { min?: number; above?: number } = { min: 0 }): number | undefined {
    const value = this.number(key, rule);
    return value === undefined ? undefined : toInside(measure, value, this.system);
  }

  /** One of some words, letter case aside; undefined where the cell is blank or holds none of them. */
  choice<const C extends string>(key: string, choices: readonly C[]): C | undefined {
    const text = this.text(key);
    if (text === "") return undefined;
    const found = choices.find((one) => one.toLowerCase() === text.toLowerCase());
    if (found === undefined) this.wrong(key, `must be ${oneOf(choices)}`);
    return found;
  }

  /** As yyyy-mm-dd; "" where it is not known. */
  day(key: string): string {
    const value = this.value(key);
    if (value === "") return "";
    const day = typeof value === "number" ? dateOf(Math.floor(value)) : undefined;
    if (day === undefined) this.wrong(key, "must be a date");
    return day ?? "";
  }

  get invented(): boolean {
    return this.choice("mark", [MARK]) === MARK;
  }

  /** Notes what is wrong with a cell: "must be …". */
  wrong(key: string, what: string): void {
    const { title } = this.column(key);
    const cell = this.cell(key);
    const value = this.value(key);
    const holds = value === "" ? "is blank" : `holds ${typeof value === "string" ? `"${value.slice(0, 40)}"` : value}`;
    this.problems.push({
      cell,
      sentence: `${cell} ${holds}: ${title.charAt(0).toLowerCase()}${title.slice(1)} ${what}.`,
    });
  }

  cell(key: string): string {
    return `${this.sheet}!${cellAddress(this.row, this.left + this.columns.indexOf(this.column(key)))}`;
  }

  private value(key: string): CellValue {
    return this.cells[this.columns.indexOf(this.column(key))] ?? "";
  }

  private column(key: string): ColumnSpec {
    const column = this.columns.find((one) => one.key === key);
    if (!column) throw new Error(`${this.sheet} has no column ${key}`);
    return column;
  }
}

function oneOf(choices: readonly string[]): string {
  const most = 8;
  const listed = choices.slice(0, most).join(", ");
  return choices.length > most ? `${listed} or another of the list` : listed.replace(/, ([^,]*)$/, " or $1");
}
