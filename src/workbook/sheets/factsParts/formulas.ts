import { cellAddress } from "../../layout/address";
import { COLUMN } from "../../layout/factCells";

/** The first day and the last of the numbers that may be days that a host made of 3/4 or 9-4: 2000 to 2099. */
const DAYS = { first: 36526, last: 73050 } as const;

type Cells = Readonly<Record<keyof typeof COLUMN, string>>;

/** The cells of a row of the sheet, by their columns. */
export function cellsIn(row: number): Cells {
  const entries = Object.entries(COLUMN).map(([key, column]) => [key, cellAddress(row, column)]);
  return Object.fromEntries(entries) as Cells;
}

/** What is used where nobody typed: the company's value, or what is assumed, as `taken` holds it to the fact's range. */
function unlessTyped({ yours, company, assumed }: Cells, taken: (cell: string) => string, typed: string): string {
  return `=IF(${yours}="",IF(${company}="",IF(${assumed}="","",${assumed}),${taken(company)}),${typed})`;
}

/** A text: as it was typed. */
export function usedText(cells: Cells): string {
  return unlessTyped(cells, (cell) => cell, cells.yours);
}

/** One of a list, or an error that travels. */
export function usedChoice(cells: Cells): string {
  const taken = (cell: string): string => `IF(ISNUMBER(FIND("|"&${cell}&"|",${cells.takes})),${cell},NA())`;
  return unlessTyped(cells, taken, taken(cells.yours));
}

/** A number in its range, or an error that travels; a text is read only where it is one. */
export function usedNumber(cells: Cells, { tape, whole }: { tape: boolean; whole: boolean }): string {
  const { yours, least, most, read } = cells;
  const inRange = (cell: string): string =>
    `IF(AND(${cell}>=${least},${cell}<=${most}${whole ? `,${cell}=INT(${cell})` : ""}),${cell},NA())`;
  const number = (cell: string): string => `IF(ISNUMBER(${cell}),${inRange(cell)},NA())`;
  return unlessTyped(cells, number, tape ? `IF(ISNUMBER(${yours}),${inRange(yours)},${inRange(read)})` : number(yours));
}

/** The reader is called for a text alone. */
export function reading({ yours }: Cells, unit: string): string {
  return `=IF(ISTEXT(${yours}),IF(${yours}="","",RILL.QTY(${yours},"${unit}")),"")`;
}

export function state({ yours, company, assumed, used, confirmed, shipped }: Cells): string {
  return (
    `=IF(ISERROR(${used}),"wrong",IF(${yours}<>"","yours",IF(${company}<>"","company",IF(${assumed}="","unknown",` +
    `IF(OR(${confirmed}<>"",AND(${shipped}="invented",FactsConfirmed<>"")),"company",${shipped})))))`
  );
}

/**
 * The words beside the value. A number that the cell cannot take, and that a host may have made of 3/4, is said to be a day:
 * no length of this trade comes near it.
 */
export function reason(cells: Cells, { dated, listed }: { dated: boolean; listed: boolean }): string {
  const { yours, company, state, note, because } = cells;
  const takes = listed ? '"one of its list"' : cells.takes;
  const typed = `IF(${yours}="",${company},${yours})`;
  const day = `AND(ISNUMBER(${yours}),${yours}>=${DAYS.first},${yours}<=${DAYS.last})`;
  const wrong =
    `IF(ISERROR(${yours}),"A formula in error: needs "&${takes},` +
    (dated ? `IF(${day},"Excel made a date of it: type "&${takes},` : "") +
    `""""&${typed}&""" is wrong: type "&${takes}${dated ? ")" : ""})`;
  return (
    `=IF(${state}="wrong",${wrong},IF(OR(${state}="yours",${state}="unknown"),${note}&"",` +
    `IF(${state}="company","your company's",${state}&": "&${because})))`
  );
}

/** What has to be filled in or mended: "Site: Run". */
export function missing({ label, state, sheet, needed }: Cells): string {
  return `=IF(OR(${state}="wrong",AND(${state}="unknown",${needed}="yes")),${sheet}&": "&${label},"")`;
}
