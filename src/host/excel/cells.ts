import { areaName, cellName, type Area } from "../address";
import { fits, namedCells, resolvePlace } from "../places";
import { HostRefusal, type Change, type Grid, type NamedCells, type Place } from "../port";
import { inExcel } from "./run";

/** An area's address without its sheet, as Excel's sheets take it. */
function local(area: Area): string {
  return `${cellName(area.top, area.left)}:${cellName(area.bottom, area.right)}`;
}

async function loadNames(context: Excel.RequestContext): Promise<NamedCells[]> {
  const { names } = context.workbook;
  names.load({ name: true, formula: true, visible: true });
  await context.sync();
  return names.items.filter((item) => item.visible).map((item) => namedCells(item.name, String(item.formula)));
}

/** The workbook's defined names. */
export function readNames(): Promise<NamedCells[]> {
  return inExcel("read the workbook's names", loadNames);
}

/** Values of several places in two round trips, however many places. */
export function readPlaces(places: readonly Place[]): Promise<(Grid | undefined)[]> {
  return inExcel("read the sheets", async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load({ name: true });
    const names = await loadNames(context);
    const sheets = new Set(worksheets.items.map((sheet) => sheet.name));
    const ranges = places.map((place) => {
      const area = resolvePlace(place, names);
      if (!area || !sheets.has(area.sheet)) return undefined;
      const range = worksheets.getItem(area.sheet).getRange(local(area));
      range.load({ values: true });
      return range;
    });
    await context.sync();
    return ranges.map((range) => range?.values as Grid | undefined);
  });
}

/** Writes all changes in one batch, or none: a locked cell on a protected sheet refuses the whole. */
export function writeChanges(changes: readonly Change[]): Promise<void> {
  return inExcel("write to the sheets", async (context) => {
    const names = await loadNames(context);
    const targets = changes.map(({ place, values }) => {
      const area = resolvePlace(place, names);
      if (!area) throw new HostRefusal(`"${place}" is not in this workbook, so nothing was written.`);
      if (!fits(values, area))
        throw new HostRefusal(`The values for ${place} do not fit ${areaName(area)}; nothing was written.`);
      const sheet = context.workbook.worksheets.getItem(area.sheet);
      const range = sheet.getRange(local(area));
      sheet.protection.load({ protected: true });
      range.format.protection.load({ locked: true });
      return { area, sheet, range, values };
    });
    await context.sync();
    const refused = targets.find(
      ({ sheet, range }) => sheet.protection.protected && range.format.protection.locked !== false,
    );
    if (refused)
      throw new HostRefusal(`${areaName(refused.area)} holds results and is protected, so nothing was written.`);
    for (const { range, values } of targets) range.formulas = values.map((row) => [...row]);
    await context.sync();
  });
}
