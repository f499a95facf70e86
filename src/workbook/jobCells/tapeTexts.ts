import { plain, Problem } from "../../calc/problem";
import { defaultUnit, isMeasure, unitLabel } from "../../calc/quantity/measures";
import { readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS } from "../../job/facts";
import type { Fact } from "../../job/facts/fact";
import { inSystem } from "../../job/facts/units";
import type { CellValue } from "../model";
import { hasPlaces, tablePlaces, type Names } from "./places";

/** A text in a column of a table, and the number that a tape says with it. */
export interface TapeText {
  /** "Water!B9" */
  readonly cell: string;
  readonly text: string;
  readonly value: number;
  /** `Water!B9: 9' 4 taken as 112 in` */
  readonly said: string;
}

/** Digits of a length in a sentence, and in its cell: all but the noise of a conversion. */
const DIGITS = 4;
const EXACT = 12;

/** The names of tables, and of their columns, that hold lengths and other measures. */
export const TAPE_PLACES: readonly string[] = [
  ...new Set(
    Object.values(FACTS).flatMap((fact: Fact) =>
      fact.type === "table"
        ? Object.values(fact.columns).flatMap((column) =>
            column.type === "number" && isMeasure(column.kind) ? [column.name ?? fact.name] : [],
          )
        : [],
    ),
  ),
];

/**
 * The texts in columns of tables that a tape says as a number the cell takes. Formulas read no text there, as they do where a
 * fact has a row to itself: a person has it turned into a number, and sees which.
 *
 * @param held what a place of TAPE_PLACES holds; undefined where the workbook has no such name
 */
export function tapeTexts(
  held: (name: string) => readonly (readonly CellValue[])[] | undefined,
  { system, names }: { system: UnitSystem; names: Names },
): TapeText[] {
  return Object.values(FACTS).flatMap((fact: Fact) => {
    if (fact.type !== "table" || !hasPlaces(fact, names)) return [];
    return tablePlaces(fact, names).flatMap(({ fact: column, cell }) => {
      if (column.type !== "number" || !isMeasure(column.kind)) return [];
      const { kind, range, whole } = column;
      const [least, most] = inSystem(range, system);
      const rows = held(column.name ?? fact.name)?.slice(0, fact.rows) ?? [];
      return rows.flatMap((row, index) => {
        const text = row[column.at - 1];
        if (typeof text !== "string" || text.trim() === "") return [];
        const value = read(text, defaultUnit(kind, system));
        if (value === undefined || value < least || value > most || (whole && !Number.isInteger(value))) return [];
        const shown = plain(Number(value.toPrecision(DIGITS)));
        const at = cell(index);
        return [{ cell: at, text, value, said: `${at}: ${text.trim()} taken as ${shown} ${unitLabel(kind, system)}` }];
      });
    });
  });
}

function read(text: string, unit: string): number | undefined {
  try {
    return Number(readQuantity(text, unit).toPrecision(EXACT));
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
