import { defaultUnit, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { NumberFact, SingleFact } from "../../job/facts/fact";
import { cellsIn, factRow, readsTape, type FactCells } from "./factCells";

/**
 * The formula of what is used for a fact: what was typed, else the company's value, else what is assumed. A value that the fact
 * does not take is an error that travels. It stands by itself and reads the typed cell: a person's own formula in one input may
 * read what is used in another.
 *
 * @param typed the cell that a person types into, as the sheet `on` reads it
 */
export function usedValue(
  fact: SingleFact,
  { typed, on, system }: { readonly typed: string; readonly on: string; readonly system: UnitSystem },
): string {
  const cells = cellsIn(factRow(fact.name), on);
  const { company, assumed } = cells;
  const taken = (value: string): string => takenAs(fact, value, cells);
  const unlessTyped = `IF(${company}="",IF(${assumed}="","",${assumed}),${taken(company)})`;
  return `=IF(${typed}="",${unlessTyped},${readsTape(fact) ? asRead(fact, typed, { taken, system }) : taken(typed)})`;
}

/** The reader is called for a text alone. */
function asRead(
  { kind }: NumberFact,
  typed: string,
  { taken, system }: { readonly taken: (value: string) => string; readonly system: UnitSystem },
): string {
  const read = `RILL.QTY(${typed},"${defaultUnit(kind as Measure, system)}")`;
  return `IF(ISTEXT(${typed}),${taken(read)},${taken(typed)})`;
}

/** The value where the fact takes it. The middle one of a number and its bounds is the number; a text is none of them. */
function takenAs(fact: SingleFact, value: string, { takes, least, most }: FactCells): string {
  if (fact.type === "text") return value;
  if (fact.type === "choice") return `IF(ISNUMBER(FIND("|"&${value}&"|",${takes})),${value},NA())`;
  const whole = fact.whole ? `IF(${value}=INT(${value}),${value},NA())` : value;
  return `IF(${value}=MEDIAN(${value},${least}:${most.replace(/^.*!/, "")}),${whole},NA())`;
}
