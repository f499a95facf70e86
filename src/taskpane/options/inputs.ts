import { FACTS } from "../../job/facts";
import { OPTION_TABLES } from "../../job/options/changed";
import { isOfWork } from "../../job/options/changed";
import type { CellFact, Fact } from "../../job/facts/fact";
import type { CellValue, Grid, NamedCells } from "../../host/port";
import { areaName, cellArea, parseArea } from "../../xlsx/address";
import { yoursName } from "../../workbook/yoursName";

/** Input cells under one name: a fact's own cell, or some columns of a table. */
export interface Inputs {
  readonly place: string;
  readonly fact: string;
  /** Its columns that a person types, by their offset; a fact's own cell is its only column. */
  readonly columns: readonly { readonly offset: number; readonly key: string }[];
}

/** An input cell that holds something else than it did. */
export interface ChangedInput {
  /** "Water!B7" */
  readonly cell: string;
  /** "Bed width", "Lips 1 width" */
  readonly label: string;
  readonly from: CellValue;
  readonly to: CellValue;
  /** The fact as an option names it: "BedWidth", "LipTable 1 width"; undefined where no option can change it. */
  readonly named: string | undefined;
}

/** Everything a person types about the job itself; prices, markups and terms on these sheets belong to all options alike. */
export const INPUTS: readonly Inputs[] = Object.values<Fact>(FACTS)
  .filter(({ sheet }) => sheet !== "Price" && sheet !== "Rates")
  .flatMap((fact): Inputs[] => {
    if (fact.type !== "table") {
      return [{ place: yoursName(fact.name), fact: fact.name, columns: [{ offset: 0, key: "" }] }];
    }
    const typed = Object.entries<CellFact & { readonly at: number; readonly worked?: true }>(fact.columns).filter(
      // What a rule fills follows from other cells by itself.
      ([, { worked }]) => worked !== true,
    );
    const places = new Set(typed.map(([, { name }]) => name ?? fact.name));
    return [...places].map((place) => ({
      place,
      fact: fact.name,
      columns: typed
        .filter(([, { name }]) => (name ?? fact.name) === place)
        .map(([key, { at }]) => ({ offset: at - 1, key })),
    }));
  });

/** Input cells that differ between two readings of INPUTS. */
export function changedInputs(
  before: readonly (Grid | undefined)[],
  now: readonly (Grid | undefined)[],
  names: readonly NamedCells[],
): ChangedInput[] {
  const addresses = new Map(names.map(({ name, address }) => [name, address]));
  return INPUTS.flatMap(({ place, fact, columns }, index) => {
    const area = parseArea(addresses.get(place) ?? "");
    const [was, is] = [before[index], now[index]];
    if (!area || !was || !is) return [];
    return is.flatMap((row, down) =>
      columns.flatMap(({ offset, key }): ChangedInput[] => {
        const [from, to] = [was[down]?.[offset] ?? "", row[offset] ?? ""];
        if (from === to) return [];
        const cell = areaName(cellArea(area.sheet, area.top + down, area.left + offset));
        return [{ cell, label: labelOf(fact, key, down), from, to, named: namedAs(fact, key, down) }];
      }),
    );
  });
}

/** Tables that an option may change a cell of. */
const CHANGED_TABLES: ReadonlySet<string> = new Set([...OPTION_TABLES].map((key) => FACTS[key].name));

/** Facts that the work follows from: an answer on Start is none, for Site holds what it was taken for. */
const CHANGED_FACTS: ReadonlySet<string> = new Set(
  Object.values<Fact>(FACTS)
    .filter(isOfWork)
    .map(({ name }) => name),
);

function namedAs(fact: string, key: string, down: number): string | undefined {
  if (key === "") return CHANGED_FACTS.has(fact) ? fact : undefined;
  return CHANGED_TABLES.has(fact) ? `${fact} ${down + 1} ${key}` : undefined;
}

function labelOf(fact: string, key: string, down: number): string {
  const words = inWords(fact.replace(/Table$|Typed$/, ""));
  return key === "" ? words : `${words} ${down + 1} ${inWords(key).toLowerCase()}`;
}

/** "BedWidth" as "Bed width". */
function inWords(name: string): string {
  const words = name.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** "Bed width 36 → 48", with blanks named; one change after the other. */
export function changesInWords(changes: readonly ChangedInput[]): string {
  const shown = (value: CellValue): string => (value === "" ? "blank" : String(value));
  return changes.map(({ label, from, to }) => `${label} ${shown(from)} → ${shown(to)}`).join(", ");
}
