import { assemble } from "../workbook/assemble";
import { calculate } from "../workbook/build";
import { cellAddress } from "../workbook/layout/address";
import type { CellModel, SheetModel } from "../workbook/model";
import { sheets } from "../workbook/sheets";

/** For whoever writes a sheet: `npx tsx src/cli/sheet.ts Pump [US|SI] [demo|blank]` prints its cells as calculated. */
async function main([name = "Site", system = "US", filled = "demo"]: readonly string[]): Promise<void> {
  const model = assemble(sheets, system === "SI" ? "SI" : "US", filled === "blank" ? "blank" : "demo");
  const { reasons } = await calculate(model);
  for (const sheet of model.sheets.filter((one) => one.name === name)) printSheet(sheet, reasons);
}

function printSheet(sheet: SheetModel, reasons: ReadonlyMap<string, string>): void {
  for (const row of [...sheet.rows.keys()].sort((a, b) => a - b)) {
    for (const [column, cell] of [...(sheet.rows.get(row) ?? [])].sort(([a], [b]) => a - b)) {
      const at = cellAddress(row, column);
      const shown = shownIn(cell);
      if (shown === undefined) continue;
      const why = reasons.get(`${sheet.name}!${at}`);
      console.log(
        `${at.padEnd(5)} ${shown}${cell.formula ? `   ${cell.formula}` : ""}${why ? `\n      ^ ${why}` : ""}`,
      );
    }
  }
}

function shownIn({ value, formula, result }: CellModel): string | undefined {
  if (formula === undefined) return value === undefined ? undefined : String(value);
  if (Array.isArray(result)) return result.map((row) => `\n      | ${row.join(" | ")}`).join("");
  return String(result ?? "(nothing)");
}

await main(process.argv.slice(2));
