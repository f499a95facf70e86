import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS } from "../../job/facts";
import type { NumberFact } from "../../job/facts/fact";
import { yoursName } from "../../workbook/yoursName";
import { placeOf, tablePlaces, type Names } from "../../workbook/reckoning/places";

/** The cells of a job's workbook that hold a number of the job, by "Site!B7", and what each measures. */
export function measuredCells(names: Names): Map<string, NumberFact> {
  const cells = new Map<string, NumberFact>();
  for (const fact of Object.values(FACTS)) {
    // A workbook of the person's own has none of these names, one of an older edition lacks some.
    if (fact.type === "table") {
      if (
        ![fact.name, ...Object.values(fact.columns).flatMap(({ name }) => name ?? [])].every((name) => names.has(name))
      )
        continue;
      for (const { fact: column, cell } of tablePlaces(fact, names)) {
        if (column.type !== "number") continue;
        for (let row = 0; row < fact.rows; row++) cells.set(cell(row), column);
      }
    } else if (fact.type === "number" && names.has(yoursName(fact.name))) cells.set(placeOf(fact, names).cell, fact);
  }
  return cells;
}

/** The units that a job's workbook is in; undefined for a workbook of the person's own. */
export function systemOf(units: unknown): UnitSystem | undefined {
  return units === "US" || units === "SI" ? units : undefined;
}
