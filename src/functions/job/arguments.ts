import { invalid } from "../../calc/problem";
import type { Argument } from "../contract/argument";
import { errorTextOf, isBlank, refuseErrorCell } from "../contract/raw";

/** A row of facts as it was handed over: where it stands, what it names, what it says. */
export interface FactRow {
  /** Counted from 0. */
  readonly row: number;
  readonly at: string;
  readonly name: string;
  readonly value: unknown;
}

const MOST_ROWS = 500;

/** Facts as rows of a name and what stands behind it, of which the first that is not blank counts. */
export const facts = factRows("What is known: name, value (fall, run, lip, water, soil, way in, or names of cells)");

/** As `facts`; for what an option changes. */
export const changes = factRows("What is different: name, value");

function factRows(about: string): Argument<FactRow[]> {
  return {
    about,
    hostType: "any[][]",
    optional: false,
    dimensioned: true,
    rule: () => "rows of name and value; a blank value is not known",
    blank: isBlank,
    read(raw, label) {
      refuseErrorCell(raw, label);
      if (!Array.isArray(raw)) throw invalid(`${label} must be rows of name and value`);
      const rows = raw as unknown[];
      if (rows.length === 0) throw invalid(`${label} is needed: rows of name and value`);
      if (rows.length > MOST_ROWS) throw invalid(`${label} takes at most ${MOST_ROWS} rows; got ${rows.length}`);
      return rows.flatMap((cells, row) => factRow(Array.isArray(cells) ? cells : [cells], row, label));
    },
  };
}

function factRow([name, ...cells]: readonly unknown[], row: number, label: string): FactRow[] {
  const at = `${label} row ${row + 1}`;
  const value = firstOf(cells);
  for (const [part, cell] of Object.entries({ name, value })) {
    const error = errorTextOf(cell);
    if (error !== undefined) throw invalid(`${at}: ${part} holds the error ${error}; fix that cell first`);
  }
  if (isBlank(name) && isBlank(value)) return [];
  if (typeof name !== "string" || isBlank(name)) throw invalid(`${at}: a name is needed, like fall or run`);
  return [{ row, at, name, value }];
}

/** The first cell that is not blank. Hosts pass a blank one as 0, and no answer of a visit is 0. */
function firstOf(cells: readonly unknown[]): unknown {
  return cells.find((cell) => cell !== 0 && (!isBlank(cell) || errorTextOf(cell) !== undefined));
}

/** The facts with what `values` holds in the same rows, where they stand apart from their names. */
export function withValues(rows: readonly FactRow[], values: readonly (readonly unknown[])[]): readonly FactRow[] {
  if (values.length === 0) return rows;
  return rows.map((fact) => {
    const value = firstOf(values[fact.row] ?? []);
    const error = errorTextOf(value);
    if (error !== undefined)
      throw invalid(`values row ${fact.row + 1} (${fact.name}) holds the error ${error}; fix that cell first`);
    return value === undefined ? fact : { ...fact, value };
  });
}

/** Rows of a table of the workbook, as they stand there; nothing where it was left out. */
function workbookRows(
  about: string,
  most: number,
  fallback = "those of the book that ships, which are invented",
): Argument<readonly (readonly unknown[])[]> {
  return {
    about,
    hostType: "any[][]",
    optional: true,
    dimensioned: true,
    fallback,
    rule: () => "the table's rows as the workbook has them",
    blank: isBlank,
    read(raw, label) {
      if (isBlank(raw)) return [];
      refuseErrorCell(raw, label);
      if (!Array.isArray(raw)) throw invalid(`${label} must be rows of the workbook's table`);
      if (raw.length > most) throw invalid(`${label} takes at most ${most} rows; got ${raw.length}`);
      return (raw as unknown[]).map((row) => (Array.isArray(row) ? (row as unknown[]) : [row]));
    },
  };
}

export const values = workbookRows(
  "Values of the facts, row by row, where they stand apart from their names",
  MOST_ROWS,
  "those beside the names",
);
export const prices = workbookRows("Your price list, as on Rates", 20_200);
export const pumps = workbookRows("Your pumps, as on Pump", 6);

export const INVENTED =
  "Without your own prices, pumps, wages, rates and markups those of the book that ships stand in. All of them are " +
  "invented: a draft to talk about, and nothing to sign.";
