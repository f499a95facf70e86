import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS } from "../../job/facts";
import type { NumberFact } from "../../job/facts/fact";
import { parseArea } from "../../xlsx/address";
import { yoursName } from "../../workbook/yoursName";
import { placeOf, tablePlaces, type Names } from "../../workbook/jobCells/places";

/** What a cell measures, where it holds a number of the job; rows and columns counted from 0. */
export type Measured = (sheet: string, row: number, column: number) => NumberFact | undefined;

interface Stretch {
  readonly first: number;
  readonly last: number;
  readonly fact: NumberFact;
}

/**
 * The cells of a job's workbook that hold a number of the job. They are a hundred thousand, nearly all in long tables, and
 * the bench asks when it opens: stretches of columns are kept, not cells.
 */
export function measuredCells(names: Names): Measured {
  const columns = new Map<string, Stretch[]>();
  const put = (first: string, rows: number, fact: NumberFact): void => {
    const at = first.lastIndexOf("!");
    const area = parseArea(first.slice(at + 1), first.slice(0, at));
    if (!area) return;
    const key = `${area.sheet}!${area.left}`;
    columns.set(key, [...(columns.get(key) ?? []), { first: area.top, last: area.top + rows - 1, fact }]);
  };
  for (const fact of Object.values(FACTS)) {
    // A workbook of the person's own has none of these names, one of an older edition lacks some.
    if (fact.type === "table") {
      if (
        ![fact.name, ...Object.values(fact.columns).flatMap(({ name }) => name ?? [])].every((name) => names.has(name))
      )
        continue;
      for (const { fact: column, cell } of tablePlaces(fact, names))
        if (column.type === "number") put(cell(0), fact.rows, column);
    } else if (fact.type === "number" && names.has(yoursName(fact.name))) put(placeOf(fact, names).cell, 1, fact);
  }
  return (sheet, row, column) =>
    columns.get(`${sheet}!${column}`)?.find(({ first, last }) => row >= first && row <= last)?.fact;
}

/** The units that a job's workbook is in; undefined for a workbook of the person's own. */
export function systemOf(units: unknown): UnitSystem | undefined {
  return units === "US" || units === "SI" ? units : undefined;
}
