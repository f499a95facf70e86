import { invalid } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { inWords, type Argument, type Arguments, type Values } from "./argument";
import { errorTextOf, isBlank, refuseErrorCell } from "./raw";

const MOST_ROWS = 100_000;

/** Options of a table argument. */
export interface TableOptions<R extends Arguments> {
  /** Columns that repeat in groups behind the fixed ones; a blank group ends the row. */
  readonly repeated?: R;
  readonly mostRows?: number;
  /** Whether no row at all is an answer (an empty table) or a problem. */
  readonly mayBeEmpty?: boolean;
  /** A row of zeros says something: a point at station 0 on level 0. Elsewhere it is blank cells that a host passes as 0. */
  readonly zerosCount?: boolean;
}

/** What a row of a table reads as: its columns, the groups behind them, and its number in the range. */
export type Row<C extends Arguments, R extends Arguments> = Values<C> & {
  readonly groups: readonly Values<R>[];
  readonly row: number;
};

/** How a range of rows is read: what is said of it, its rows that hold something, and one of these rows. */
export interface RowReader<C extends Arguments, R extends Arguments> {
  readonly facts: Omit<Argument<unknown>, "read">;
  readonly listed: string;
  filledRows(raw: unknown, label: string): { readonly cells: readonly unknown[]; readonly number: number }[];
  readRow(cells: readonly unknown[], number: number, label: string, system: UnitSystem): Row<C, R>;
}

/** Rows of a range, header not included. Wholly blank rows are skipped; a bad row is named by its number. */
export function table<C extends Arguments, R extends Arguments = Record<never, never>>(
  about: string,
  columns: C,
  options: TableOptions<R> = {},
): Argument<Row<C, R>[]> {
  const { facts, listed, filledRows, readRow } = rowReader(about, columns, options);
  return {
    ...facts,
    read(raw, label, system) {
      const result = filledRows(raw, label).map(({ cells, number }) => readRow(cells, number, label, system));
      if (result.length === 0 && !options.mayBeEmpty)
        throw invalid(`${label} is needed: at least one row of ${listed}`);
      return result;
    },
  };
}

/** Reads rows one by one, for arguments that decide themselves what becomes of a bad one. */
export function rowReader<C extends Arguments, R extends Arguments>(
  about: string,
  columns: C,
  options: TableOptions<R>,
): RowReader<C, R> {
  const fixed = columnsOf(columns);
  const repeated = columnsOf(options.repeated ?? {});
  const needed = 1 + fixed.map(({ argument }) => argument.optional).lastIndexOf(false);
  const listed = [...fixed, ...repeated].map(({ words }) => words).join(", ") + (repeated.length > 0 ? ", …" : "");

  const readRow = (cells: readonly unknown[], number: number, label: string, system: UnitSystem): Row<C, R> => {
    const at = rowLabel(label, number);
    const groups: Record<string, unknown>[] = [];
    const result: Record<string, unknown> = { row: number, groups };
    fixed.forEach(({ name, words, argument }, index) => {
      result[name] = argument.read(cells[index], at + words, system);
    });
    for (let start = fixed.length; repeated.length > 0 && start < cells.length; start += repeated.length) {
      const part = cells.slice(start, start + repeated.length);
      if (isEmptyRow(part)) continue;
      const group: Record<string, unknown> = {};
      repeated.forEach(({ name, words, argument }, index) => {
        group[name] = argument.read(part[index], `${at}${words} ${groups.length + 1}`, system);
      });
      groups.push(group);
    }
    return result as unknown as Row<C, R>;
  };

  return {
    listed,
    readRow,
    facts: {
      about,
      hostType: "any[][]",
      optional: false,
      dimensioned: [...fixed, ...repeated].some(({ argument }) => argument.dimensioned),
      columns,
      ...(options.repeated ? { repeated: options.repeated } : {}),
      rule: () => `rows of ${listed}`,
      blank: (raw) => isBlank(raw) || isEmptyRange(raw),
    },
    filledRows(raw, label) {
      const filledRows: { cells: readonly unknown[]; number: number }[] = [];
      asRows(raw, label, options.mostRows ?? MOST_ROWS).forEach((cells, index) => {
        if (isEmptyRow(cells) && !(options.zerosCount && cells.every((cell) => cell === 0))) return;
        if (cells.length < needed) {
          const atLeast = needed < fixed.length || repeated.length > 0 ? "at least " : "";
          throw invalid(`${label} needs ${atLeast}${needed} columns (${listed}); got ${cells.length}`);
        }
        const filled = repeated.length > 0 ? 0 : filledWidth(cells);
        if (filled > fixed.length) {
          const columnCount = fixed.length === 1 ? "1 column" : `${fixed.length} columns`;
          throw invalid(`${label} takes ${columnCount} (${listed}); row ${index + 1} has ${filled}`);
        }
        filledRows.push({ cells, number: index + 1 });
      });
      return filledRows;
    },
  };
}

/** How the sentences about a row begin. */
export function rowLabel(label: string, number: number): string {
  return `${label} row ${number}: `;
}

function columnsOf(columns: Arguments): { name: string; words: string; argument: Argument<unknown> }[] {
  return Object.entries(columns).map(([name, argument]) => ({ name, words: inWords(name), argument }));
}

/** A list of values, in a row or a column; blanks are skipped, or read as `blankAs` where their place matters. */
export function list<T>(about: string, item: Argument<T>, options: { most?: number; blankAs?: T } = {}): Argument<T[]> {
  return {
    about,
    hostType: "any[][]",
    optional: false,
    dimensioned: item.dimensioned,
    ...(item.measure ? { measure: item.measure } : {}),
    ...(item.range ? { range: item.range } : {}),
    rule: (system) => `list; each ${item.rule(system)}`,
    blank: (raw) => isBlank(raw) || isEmptyRange(raw),
    read(raw, label, system) {
      const cells = asRows(raw, label, MOST_ROWS).flat();
      const result: T[] = [];
      cells.forEach((cell, index) => {
        if (!item.blank(cell)) result.push(item.read(cell, `${label} ${index + 1}`, system));
        else if (options.blankAs !== undefined) result.push(options.blankAs);
      });
      const most = options.most ?? 1000;
      if (result.length === 0) throw invalid(`${label} is needed: at least one value`);
      if (result.length > most) throw invalid(`${label} takes at most ${most} values; got ${result.length}`);
      return result;
    },
  };
}

/** Rows of whatever the host passed for a range; one cell counts as a range of one. */
function asRows(raw: unknown, label: string, mostRows: number): readonly (readonly unknown[])[] {
  refuseErrorCell(raw, label);
  if (!Array.isArray(raw)) return [[raw]];
  const rows = raw as unknown[];
  if (rows.length > mostRows) throw invalid(`${label} takes at most ${mostRows} rows; got ${rows.length}`);
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  rows.forEach((row, index) => {
    if (!Array.isArray(row) || row.length !== width) {
      throw invalid(`${label} must be a rectangular range; row ${index + 1} has another number of columns`);
    }
  });
  return rows as (readonly unknown[])[];
}

/** Columns up to the last that is not blank. */
function filledWidth(cells: readonly unknown[]): number {
  let width = cells.length;
  while (width > 0 && isBlank(cells[width - 1])) width--;
  return width;
}

/** Blank cells can arrive as 0 from some hosts, so a row of nothing but blanks and zeros is a blank row. */
function isEmptyRow(cells: readonly unknown[]): boolean {
  return cells.every((cell) => (isBlank(cell) || cell === 0) && errorTextOf(cell) === undefined);
}

function isEmptyRange(raw: unknown): boolean {
  return Array.isArray(raw) && raw.every((row) => Array.isArray(row) && isEmptyRow(row));
}
