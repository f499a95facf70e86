import type { Job } from "../job/facts";
import { calculate } from "../workbook/build";
import { areaAddress } from "../workbook/layout/address";
import { assemble } from "../workbook/assemble";
import { cellsToType } from "../workbook/reckoning/typeJob";
import { sheets } from "../workbook/sheets";
import { writeWorkbook } from "../workbook/write";
import { parseArea } from "../xlsx/address";

/** A new job workbook with some facts typed into its cells. */
export async function jobWorkbook(typed: Job): Promise<Uint8Array> {
  const { system, ...facts } = typed;
  const model = assemble(sheets, system, "blank");
  const known = Object.entries(facts).filter(([, value]) =>
    Array.isArray(value) ? value.length > 0 : value !== undefined,
  );
  const names = new Map(model.names.map(({ name, sheet, area }) => [name, `${sheet}!${areaAddress(area)}`]));
  for (const [cell, value] of cellsToType(Object.fromEntries(known), { system, names, digits: 6 })) {
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
