import { fromCents, toCents } from "../../calc/money/cents";
import { COST_KINDS } from "../../calc/money/costKinds";
import { HostRefusal, type Change, type Grid, type NamedCells } from "../../host/port";
import type { ChangedInput } from "./inputs";
import { areaName, cellArea, parseArea } from "../../xlsx/address";

/** The names that `optionWrites` needs, in its order. */
export const OPTION_PLACES = [
  "OptionNames",
  "OptionChanges",
  "OptionKinds",
  "OptionChangesB",
  "OptionChangesC",
] as const;

/** Letters an option can be kept under. */
const LETTERS = ["B", "C"] as const;

/** What to write so that an option stands on Price, and under which letter. */
export interface OptionWrites {
  readonly letter: (typeof LETTERS)[number];
  readonly changes: readonly Change[];
}

/**
 * Writes an option as what it adds to each kind of cost, or saves, into the first letter that is free. Markups, overhead and
 * contingency follow on Price as they do for any option.
 *
 * @param costs cost of each kind without the option and with it, in the order of COST_KINDS
 * @param factGrids what OPTION_FACT_PLACES hold: a letter whose facts still stand there is not free, or both would count
 */
export function optionWrites(
  name: string,
  costs: { readonly before: readonly number[]; readonly after: readonly number[] },
  grids: readonly (Grid | undefined)[],
  names: readonly NamedCells[],
  factGrids: readonly (Grid | undefined)[] = [],
): OptionWrites {
  const [optionNames, whats, kinds, ...changes] = grids;
  if (!optionNames || !whats || !kinds || changes.some((grid) => !grid)) {
    throw new HostRefusal("This workbook has no table of options; see Price.");
  }
  if (name.trim() === "") throw new HostRefusal("Give the option a name that the client can read.");
  const letter = LETTERS[freeLetter(optionNames, (at) => [changes[at], ...factGridsOf(at, factGrids)])];
  if (letter === undefined)
    throw new HostRefusal("Options B and C are in use; clear the one you no longer need, on Price.");
  const differences = COST_KINDS.flatMap((kind, row) => {
    const amount = fromCents(toCents(costs.after[row] ?? 0) - toCents(costs.before[row] ?? 0));
    return amount === 0 ? [] : [{ kind, amount }];
  });
  if (differences.length === 0) throw new HostRefusal("These changes alter no cost, so there is no option to keep.");
  const free = whats.flatMap((_, row) =>
    [whats, kinds, ...changes].every((grid) => blank(grid?.[row]?.[0])) ? [row] : [],
  );
  if (free.length < differences.length) {
    throw new HostRefusal(
      `The option takes ${differences.length} rows among the changes on Price, and ${free.length} are free.`,
    );
  }
  const at = rowsOf(names);
  return {
    letter,
    changes: [
      { place: at("OptionNames", LETTERS.indexOf(letter) + 1), values: [[text(name)]] },
      ...differences.flatMap(({ kind, amount }, index): Change[] => {
        const row = free[index] ?? 0;
        return [
          { place: at("OptionChanges", row), values: [[text(name)]] },
          { place: at("OptionKinds", row), values: [[kind]] },
          { place: at(`OptionChanges${letter}`, row), values: [[amount]] },
        ];
      }),
    ],
  };
}

/** The names that `optionFactWrites` needs, in its order. */
export const OPTION_FACT_PLACES = [
  "OptionNames",
  ...LETTERS.flatMap((letter) => [`OptionChanges${letter}`, `OptionFacts${letter}`, `OptionValues${letter}`] as const),
] as const;

/**
 * Writes an option as the facts that it changes, into the first letter that is free: its cost follows by itself, whatever
 * changes in the job. Nothing where they are too many, or where one of them is no fact or was emptied.
 */
export function optionFactWrites(
  name: string,
  facts: readonly ChangedInput[],
  grids: readonly (Grid | undefined)[],
  names: readonly NamedCells[],
): OptionWrites | undefined {
  const [optionNames] = grids;
  if (!optionNames || grids.length !== OPTION_FACT_PLACES.length || grids.some((grid) => !grid)) return undefined;
  const index = freeLetter(optionNames, (at) => factGridsOf(at, grids));
  const letter = LETTERS[index];
  const room = factGridsOf(index, grids)[1]?.length ?? 0;
  if (letter === undefined || facts.length > room || facts.some(({ named, to }) => named === undefined || to === ""))
    return undefined;
  const at = rowsOf(names);
  return {
    letter,
    changes: [
      { place: at("OptionNames", index + 1), values: [[text(name)]] },
      ...facts.flatMap(({ named = "", to }, row): Change[] => [
        { place: at(`OptionFacts${letter}`, row), values: [[named]] },
        { place: at(`OptionValues${letter}`, row), values: [[typeof to === "string" ? text(to) : to]] },
      ]),
    ],
  };
}

/** The letter, by its place, that has neither a name nor anything in its columns; -1 where both are in use. */
function freeLetter(optionNames: Grid, columnsOf: (at: number) => readonly (Grid | undefined)[]): number {
  const allBlank = (grid: Grid | undefined): boolean => (grid ?? []).every(([cell]) => blank(cell) || cell === 0);
  return LETTERS.findIndex((_, at) => blank(optionNames[at + 1]?.[0]) && columnsOf(at).every(allBlank));
}

/** What a letter holds among OPTION_FACT_PLACES: amounts, facts and values. */
function factGridsOf(at: number, grids: readonly (Grid | undefined)[]): readonly (Grid | undefined)[] {
  return at < 0 ? [] : grids.slice(1 + 3 * at, 4 + 3 * at);
}

/** Where a row of a name's first column stands, rows from 0. */
function rowsOf(names: readonly NamedCells[]): (place: string, row: number) => string {
  return (place, row) => {
    const area = parseArea(names.find((one) => one.name === place)?.address ?? "");
    if (!area) throw new HostRefusal(`This workbook's name ${place} is broken; see Repair.`);
    return areaName(cellArea(area.sheet, area.top + row, area.left));
  };
}

function blank(value: unknown): boolean {
  return value === "" || value === undefined || value === null;
}

/** A name that a cell takes as a text, however it begins. */
function text(name: string): string {
  const short = name.trim().slice(0, 80);
  return /^[=+\-@]/.test(short) ? `'${short}` : short;
}
