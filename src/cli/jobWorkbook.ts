import type { Book } from "../book/types";
import { madeJob } from "../company/files";
import { blankJob, type Job } from "../job/facts";
import { calculate } from "../workbook/build";
import { areaAddress } from "../workbook/layout/address";
import { assemble } from "../workbook/assemble";
import { cellsToType, type SomeFacts } from "../workbook/reckoning/typeJob";
import { sheets } from "../workbook/sheets";
import { writeWorkbook } from "../workbook/write";
import { parseArea } from "../xlsx/address";

/** A new job workbook with some facts typed into its cells; from a company's book, where there is one. */
export async function jobWorkbook(typed: Job, book?: Book): Promise<Uint8Array> {
  const { system, ...facts } = typed;
  if (book) {
    const blank = await jobWorkbook(blankJob(system));
    return (await madeJob(book, blank, (names) => cellsToType(said(facts), { system, names, digits: 6 }))).bytes;
  }
  const model = assemble(sheets, system, "blank");
  const names = new Map(model.names.map(({ name, sheet, area }) => [name, `${sheet}!${areaAddress(area)}`]));
  for (const [cell, value] of cellsToType(said(facts), { system, names, digits: 6 })) {
    if (value === "") continue;
    const area = parseArea(cell);
    const rows = model.sheets.find(({ name }) => name === area?.sheet)?.rows;
    const held = area && rows?.get(area.top + 1)?.get(area.left + 1);
    if (!held) throw new Error(`the workbook has no cell ${cell}`);
    delete held.formula;
    held.value = value;
  }
  await calculate(model);
  return writeWorkbook(model);
}

function said(facts: Omit<Job, "system">): SomeFacts {
  const known = Object.entries(facts).filter(([, value]) =>
    Array.isArray(value) ? value.length > 0 : value !== undefined,
  );
  return Object.fromEntries(known);
}
