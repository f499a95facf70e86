import { areaName, cellName, type Area } from "../../xlsx/address";
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
  return inPlaces(places, (range) => {
    range.load({ values: true });
    return () => range.values as Grid;
  });
}

/** What cells show, as text, in two round trips. */
export function showPlaces(places: readonly Place[]): Promise<(string[][] | undefined)[]> {
  return inPlaces(places, (range) => {
    range.load({ text: true });
    return () => range.text;
  });
}

/** Whether places exist and are free of locks, in two round trips. */
export async function writablePlaces(places: readonly Place[]): Promise<boolean[]> {
  const answers = await inPlaces(places, (range, sheet) => {
    const lock = range.format.protection;
    const guard = sheet.protection;
    lock.load({ locked: true });
    guard.load({ protected: true });
    return () => !guard.protected || lock.locked === false;
  });
  return answers.map((answer) => answer ?? false);
}

/** Asks something of every place that exists; `ask` queues the loading and says how to read it once it is there. */
function inPlaces<T>(
  places: readonly Place[],
  ask: (range: Excel.Range, sheet: Excel.Worksheet) => () => T,
): Promise<(T | undefined)[]> {
  return inExcel("read the sheets", async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load({ name: true });
    const names = await loadNames(context);
    const sheets = new Set(worksheets.items.map((sheet) => sheet.name));
    const answers = places.map((place) => {
      const area = resolvePlace(place, names);
      if (!area || !sheets.has(area.sheet)) return undefined;
      const sheet = worksheets.getItem(area.sheet);
      return ask(sheet.getRange(local(area)), sheet);
    });
    await context.sync();
    return answers.map((answer) => answer?.());
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
