import { invalid } from "../../calc/problem";
import type { Argument } from "../contract/argument";
import { errorTextOf, isBlank, refuseErrorCell } from "../contract/raw";

/** A row of facts as it was handed over: where it stands, what it names, what it says. */
export interface FactRow {
  readonly at: string;
  readonly name: string;
  readonly value: unknown;
}

const MOST_ROWS = 500;

/** Facts as rows of name and value: a blank value is not known. */
export const facts = factRows(
  "What is known: name, value (fall, run, lip, water, soil, way in, or names of cells)",
  true,
);

/** As `facts`; for what an option changes. */
export const changes = factRows("What is different: name, value", false);

function factRows(about: string, dimensioned: boolean): Argument<FactRow[]> {
  return {
    about,
    hostType: "any[][]",
    optional: false,
    dimensioned,
    rule: () => "rows of name and value; a blank value is not known",
    blank: isBlank,
    read(raw, label) {
      refuseErrorCell(raw, label);
      if (!Array.isArray(raw)) throw invalid(`${label} must be rows of name and value`);
      const rows = raw as unknown[];
      if (rows.length === 0) throw invalid(`${label} is needed: rows of name and value`);
      if (rows.length > MOST_ROWS) throw invalid(`${label} takes at most ${MOST_ROWS} rows; got ${rows.length}`);
      return rows.flatMap((row, index) => factRow(Array.isArray(row) ? row : [row], `${label} row ${index + 1}`));
    },
  };
}

function factRow([name, value]: readonly unknown[], at: string): FactRow[] {
  for (const [part, cell] of Object.entries({ name, value })) {
    const error = errorTextOf(cell);
    if (error !== undefined) throw invalid(`${at}: ${part} holds the error ${error}; mend that cell first`);
  }
  if (isBlank(name) && isBlank(value)) return [];
  if (typeof name !== "string" || isBlank(name)) throw invalid(`${at}: a name is needed, like fall or run`);
  return [{ at, name, value }];
}

/** Rows of a table of the workbook, as they stand there; nothing where it was left out. */
export function workbookRows(about: string, most: number): Argument<readonly (readonly unknown[])[]> {
  return {
    about,
    hostType: "any[][]",
    optional: true,
    dimensioned: true,
    fallback: "those of the book that ships, which are invented",
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

export const prices = workbookRows("Your price list, as on Rates", 20_200);
export const pumps = workbookRows("Your pumps, as on Pump", 6);

export const INVENTED =
  "Without your own price list and pumps those of the book that ships stand in; wages and hours always do. All of them are " +
  "invented: a draft to talk about, and nothing to sign.";
