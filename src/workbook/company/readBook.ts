import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { checkBook, type Fault } from "../../book/check";
import { changedByHand } from "../../book/marks";
import type { Book } from "../../book/types";
import { parseArea, type Area } from "../../xlsx/address";
import { damaged, FileRefusal, refuseUnreadable } from "../file/refusal";
import { cellAddress } from "../layout/address";
import { bookLogo, NoLogo } from "../logo";
import type { CellValue } from "../model";
import { openWorkbook, UnreadableWorkbook, type Recalculated } from "../recalculate";
import { RowReader, type BookProblem } from "./cells";
import { readFields } from "./readFields";
import { TABLES, type BookTable } from "./tables";

/** A book as it was read. Rows with a problem keep what could be read of them; the file itself is never changed. */
export interface BookRead {
  readonly book: Book;
  readonly problems: readonly BookProblem[];
  /** Its cells as they were read. */
  readonly workbook: Recalculated;
}

/**
 * Reads a company book from its file, cell by cell, and says of every cell that cannot be taken which it is and why.
 *
 * @param wanted the unit system of the job it is for, where there is one
 * @throws FileRefusal for a file that is damaged, no book, of the other unit system, or short of a sheet
 */
export async function readBook(fileName: string, bytes: Uint8Array, wanted?: UnitSystem): Promise<BookRead> {
  refuseUnreadable(fileName, bytes);
  const workbook = await open(fileName, bytes);
  const system = systemOf(fileName, workbook, wanted);
  refuseIncomplete(fileName, workbook);
  const problems: BookProblem[] = [];
  const rows = <R>(table: BookTable<R>): R[] => readTable(fileName, workbook, table, system, problems);
  const products = rows(TABLES.products);
  const pumps = rows(TABLES.pumps);
  const burden = rows(TABLES.burden);
  const wages = rows(TABLES.wages);
  const rates = rows(TABLES.rates);
  const sizes = rows(TABLES.sizes);
  const machines = rows(TABLES.machines);
  const pastJobs = rows(TABLES.pastJobs);
  const { company: said, pricing, dayHours, handLimit } = readFields(workbook, system, problems);
  const company = { ...said, ...readBookLogo(bytes, problems) };
  const labor = { burden, wages, rates, sizes, dayHours, handLimit };
  const book = changedByHand({ system, company, products, pumps, labor, machines, pricing, pastJobs });
  const faults = checkBook(book).map((fault) => problemOf(fault, workbook, system));
  return { book, problems: [...problems, ...faults], workbook };
}

/** A picture that cannot be a logo is told of, and the book read without it. */
function readBookLogo(bytes: Uint8Array, problems: BookProblem[]): Pick<Book["company"], "logo"> {
  try {
    const logo = bookLogo(bytes);
    return logo ? { logo } : {};
  } catch (error) {
    if (!(error instanceof NoLogo)) throw error;
    problems.push({
      cell: "Company",
      sentence: `The picture on Company ${error.message}; quotes come without a logo.`,
    });
    return {};
  }
}

async function open(fileName: string, bytes: Uint8Array): Promise<Recalculated> {
  try {
    return (await openWorkbook(bytes)).recalculate();
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw damaged(fileName);
    throw error;
  }
}

const SYSTEM_WORDS = { US: "US units", SI: "metric units" } as const;

function systemOf(fileName: string, workbook: Recalculated, wanted: UnitSystem | undefined): UnitSystem {
  const said = workbook.named("BookUnits")?.[0]?.[0];
  if (said !== "US" && said !== "SI") {
    const what = workbook.names.has("Units") ? "is a job, not a company book" : "is not a company book of Rillwright";
    throw new FileRefusal(`${fileName} ${what}: it has no cell named BookUnits that says US or SI.`);
  }
  if (wanted !== undefined && said !== wanted) {
    throw new FileRefusal(
      `${fileName} is in ${SYSTEM_WORDS[said]}, and the job in ${SYSTEM_WORDS[wanted]}; ` +
        `prices for a ${said === "US" ? "foot" : "meter"} say nothing of a ${said === "US" ? "meter" : "foot"}. Take the book or the job of the other system.`,
    );
  }
  return said;
}

/** Names follow a sheet that is renamed, and lead nowhere once it is deleted. */
function refuseIncomplete(fileName: string, { names }: Recalculated): void {
  const tables: readonly Pick<BookTable, "name" | "sheet">[] = Object.values(TABLES);
  const needed = [{ name: "BookCompany", sheet: "Company" }, { name: "BookMarkups", sheet: "Pricing" }, ...tables];
  const lost = needed.find(({ name }) => !parseArea(names.get(name) ?? ""));
  if (!lost) return;
  throw new FileRefusal(
    `${fileName} has no sheet ${lost.sheet}, or the sheet has lost its name ${lost.name}: ` +
      `take your last good copy, or copy your rows into a blank company book.`,
  );
}

function readTable<R>(
  fileName: string,
  workbook: Recalculated,
  table: BookTable<R>,
  system: UnitSystem,
  problems: BookProblem[],
): R[] {
  const area = parseArea(workbook.names.get(table.name) ?? "") as Area;
  const columns = table.columns(system);
  const cells: readonly CellValue[][] = workbook.named(table.name) ?? [];
  // The last row of the sheet that holds something may lie below the table.
  if (rowsBelow(workbook, table, area)) {
    throw new FileRefusal(
      `${fileName} has more than ${table.rows.toLocaleString("en")} rows on ${table.sheet}; ` +
        `nothing was read. Keep what you buy in the book, and the rest in the supplier's own list.`,
    );
  }
  return cells.flatMap((row, index) => {
    const reader = new RowReader(area.sheet, area.top + index + 1, area.left + 1, columns, row, system, problems);
    if (reader.blank) return [];
    const read = table.read(reader, system);
    return read === undefined ? [] : [read];
  });
}

/** What was put below the table's last row is not in it. */
function rowsBelow(
  workbook: Recalculated,
  { rows, name }: Pick<BookTable, "rows" | "name">,
  { top, sheet }: Area,
): boolean {
  return name === TABLES.products.name && workbook.lastRow(sheet) > top + rows;
}

function problemOf({ table, row, key, words }: Fault, { names }: Recalculated, system: UnitSystem): BookProblem {
  const { name, columns, sheet } = TABLES[table];
  const area = parseArea(names.get(name) ?? "");
  const column = columns(system).findIndex((one) => one.key === key);
  const cell = `${area?.sheet ?? sheet}!${cellAddress(row.row ?? 1, (area?.left ?? 0) + column + 1)}`;
  return { cell, sentence: `${cell} ${words}.` };
}
