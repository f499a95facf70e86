import type { CellFact, ColumnFact, Fact, TableFact } from "../../job/facts/fact";
import { parseArea } from "../../xlsx/address";
import { cellAddress } from "../layout/address";
import { yoursName } from "../yoursName";

/** Defined names and what the workbook says they stand for: "Site!$B$5". */
export type Names = ReadonlyMap<string, string>;

/** The cell of a fact, as "Site!B5", and what belongs into it. */
export interface Place {
  readonly cell: string;
  readonly fact: CellFact;
}

/** A cell of the workbook that a fact needs and the workbook has no name for. */
export class MissingName extends Error {
  constructor(readonly missing: string) {
    super(`the workbook has no name ${missing}`);
  }
}

interface Corner {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

function cornerOf(names: Names, name: string): Corner {
  const area = parseArea(names.get(name) ?? "");
  if (!area) throw new MissingName(name);
  return { sheet: area.sheet, row: area.top + 1, column: area.left + 1 };
}

function addressOf({ sheet, row, column }: Corner, down: number, across: number): string {
  return `${sheet}!${cellAddress(row + down, column + across)}`;
}

/** Whether the workbook has the cells of a fact; one of an older edition lacks some. */
export function hasPlaces(fact: Fact, names: Names): boolean {
  const needed =
    fact.type === "table" ? Object.values(fact.columns).map(({ name = fact.name }) => name) : [yoursName(fact.name)];
  return needed.every((name) => parseArea(names.get(name) ?? "") !== undefined);
}

/** The cell that a person types a fact into. */
export function placeOf(fact: Exclude<Fact, TableFact>, names: Names): Place {
  return { cell: addressOf(cornerOf(names, yoursName(fact.name)), 0, 0), fact };
}

/** Where a table's cells stand: of each column, the cell in a row counted from 0. */
export function tablePlaces(
  table: TableFact,
  names: Names,
): { readonly key: string; readonly fact: ColumnFact; readonly cell: (row: number) => string }[] {
  return Object.entries(table.columns).map(([key, fact]) => {
    const corner = cornerOf(names, fact.name ?? table.name);
    return { key, fact, cell: (row) => addressOf(corner, row, fact.at - 1) };
  });
}
