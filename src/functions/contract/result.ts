import { Problem } from "../../calc/problem";
import { fromInside, unitLabel, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";

/** What a cell of the worksheet can hold as a result. */
export type Cell = number | string | boolean;
export type Value = Cell | Cell[][];

/** A table cell that carries its own measure, for tables whose rows measure different things. */
export interface Measured {
  readonly measure: Measure;
  readonly inside: number;
}

export type TableCell = Cell | Measured;

export interface Column {
  /** One for both systems, or one for each where a system counts by another piece. */
  readonly title: string | Readonly<Record<UnitSystem, string>>;
  /** Numbers of this column are SI and are turned into the default unit, which the header names. */
  readonly measure?: Measure;
  /** A unit that is the same in both systems, for the header. */
  readonly unit?: string;
}

/** Says what a function returns, and turns what the calculation gave (SI) into what the cell shows. */
export interface Result<T> {
  readonly about: string;
  readonly hostType: "any" | "any[][]";
  readonly measure?: Measure;
  readonly columns?: readonly Column[];
  present(value: T, system: UnitSystem): Value;
}

/** The formula left the numbers that a cell can hold; whoever knows the arguments turns it into a sentence. */
export class NoFiniteValue extends Error {}

/** A quantity in the default unit of the system. */
export function quantityResult(measure: Measure, about: string): Result<number> {
  return {
    about,
    hostType: "any",
    measure,
    present: (value, system) => finite(fromInside(measure, value, system), about),
  };
}

/** A number without a unit, or with one that is the same in both systems. */
export function numberResult(about: string): Result<number> {
  return { about, hostType: "any", present: (value) => finite(value, about) };
}

export function textResult(about: string): Result<string> {
  return { about, hostType: "any", present: (value) => value };
}

/** A rectangular table under a header row; blanks inside are "". */
export function tableResult(about: string, columns: readonly Column[]): Result<readonly (readonly TableCell[])[]> {
  return {
    about,
    hostType: "any[][]",
    columns,
    present(rows, system) {
      const header: Cell[] = columns.map(({ title, measure, unit }) => {
        const shown = measure ? unitLabel(measure, system) : unit;
        const named = typeof title === "string" ? title : title[system];
        return shown ? `${named} (${shown})` : named;
      });
      const body = rows.map((row) => {
        if (row.length !== columns.length) throw new Problem("value", `${about}: a row of the result is incomplete`);
        return row.map((cell, index) => presentCell(cell, columns[index]?.measure, system, about));
      });
      return [header, ...body];
    },
  };
}

function presentCell(cell: TableCell, measure: Measure | undefined, system: UnitSystem, about: string): Cell {
  if (typeof cell === "object") return finite(fromInside(cell.measure, cell.inside, system), about);
  if (typeof cell !== "number") return cell;
  return finite(measure ? fromInside(measure, cell, system) : cell, about);
}

function finite(value: number, about: string): number {
  if (!Number.isFinite(value)) throw new NoFiniteValue(about);
  // Minus zero would print as "-0" in some hosts.
  return value === 0 ? 0 : value;
}
