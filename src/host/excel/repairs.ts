import { cellName, quotedSheet } from "../../xlsx/address";
import type { Repairs, Task } from "../port";
import { repairedFormula } from "../repair";
import { inExcel } from "./run";

/** Enters every unbound formula again, sheet by sheet; only that heals one. */
export async function repairWorkbook(task: Task): Promise<Repairs> {
  const sheets = await inExcel("list the sheets", async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load({ name: true });
    await context.sync();
    return worksheets.items.map((sheet) => sheet.name);
  });
  return repairSheets(sheets, task);
}

/** The same for some sheets. */
export async function repairSheets(sheets: readonly string[], task: Task): Promise<Repairs> {
  const total = { found: 0, repaired: 0, left: [] as string[] };
  for (const [index, sheet] of sheets.entries()) {
    if (task.signal.aborted) return { ...total, stopped: true };
    // One batch a sheet: a whole workbook's formulas can exceed what one request may carry.
    const part = await repairSheet(sheet);
    total.found += part.found;
    total.repaired += part.repaired;
    total.left.push(...part.left);
    task.progress(index + 1, sheets.length);
  }
  return { ...total, stopped: false };
}

function repairSheet(name: string): Promise<Omit<Repairs, "stopped">> {
  return inExcel(`repair the sheet ${name}`, async (context) => {
    const sheet = context.workbook.worksheets.getItem(name);
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load({ formulas: true, values: true, rowIndex: true, columnIndex: true });
    const guard = context.workbook.worksheets.getItem(name).protection;
    guard.load({ protected: true, options: true });
    await context.sync();
    if (used.isNullObject) return { found: 0, repaired: 0, left: [] };

    const broken: { row: number; column: number; formula: string }[] = [];
    (used.formulas as unknown[][]).forEach((cells, row) =>
      cells.forEach((formula, column) => {
        if (typeof formula !== "string" || !formula.startsWith("=")) return;
        const repaired = repairedFormula(formula, (used.values as unknown[][])[row]?.[column]);
        if (repaired !== undefined) broken.push({ row, column, formula: repaired });
      }),
    );
    if (broken.length === 0) return { found: 0, repaired: 0, left: [] };

    const guarded = guard.protected;
    const options = guarded ? guard.options : undefined;
    if (guarded && !(await unlocked(context, sheet))) {
      const left = broken.map(
        ({ row, column }) => `${quotedSheet(name)}!${cellName(used.rowIndex + row, used.columnIndex + column)}`,
      );
      return { found: broken.length, repaired: 0, left };
    }
    try {
      for (const { row, column, formula } of broken) used.getCell(row, column).formulas = [[formula]];
      await context.sync();
    } finally {
      if (guarded) guard.protect(options);
      await context.sync();
    }
    return { found: broken.length, repaired: broken.length, left: [] };
  });
}

/** Takes a sheet's protection off for the repair; false when it has a password. */
async function unlocked(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<boolean> {
  try {
    sheet.protection.unprotect();
    await context.sync();
    return true;
  } catch {
    return false;
  }
}
