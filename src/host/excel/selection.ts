import { areaName, parseArea } from "../../xlsx/address";
import { HostRefusal, type CellValue, type Place, type Selected } from "../port";
import { resolvePlace } from "../places";
import { readNames } from "./cells";
import { inExcel } from "./run";

/** Selects a place and brings its sheet to the front. */
export async function selectPlace(place: Place): Promise<void> {
  const area = resolvePlace(place, await readNames());
  if (!area) throw new HostRefusal(`"${place}" is not in this workbook.`);
  await inExcel(`go to ${areaName(area)}`, async (context) => {
    const sheet = context.workbook.worksheets.getItem(area.sheet);
    sheet.activate();
    sheet.getRange(areaName(area).split("!").pop()).select();
    await context.sync();
  });
}

/** The selection, with the value and formula of its active cell. */
export function readSelected(): Promise<Selected> {
  return inExcel("read the selection", async (context) => {
    const range = context.workbook.getSelectedRange();
    const cell = context.workbook.getActiveCell();
    range.load({ address: true });
    cell.load({ values: true, formulas: true });
    await context.sync();
    const area = parseArea(range.address);
    const formula = String(cell.formulas[0]?.[0] ?? "");
    return {
      sheet: area?.sheet ?? "",
      address: area ? areaName(area) : range.address,
      value: (cell.values[0]?.[0] ?? "") as CellValue,
      formula: formula.startsWith("=") ? formula : "",
    };
  });
}

/** Writes a formula into the active cell, unless it is locked; gives the cell's address. */
export function insertAtSelection(formula: string): Promise<string> {
  return inExcel("insert the formula", async (context) => {
    const cell = context.workbook.getActiveCell();
    const guard = context.workbook.worksheets.getActiveWorksheet().protection;
    const lock = context.workbook.getActiveCell().format.protection;
    cell.load({ address: true });
    guard.load({ protected: true });
    lock.load({ locked: true });
    await context.sync();
    if (guard.protected && lock.locked !== false) {
      throw new HostRefusal(`${cell.address} is protected; select an unlocked cell or a sheet of your own.`);
    }
    cell.formulas = [[formula]];
    await context.sync();
    return cell.address;
  });
}
