import { areaName, cellName, type Area } from "../../xlsx/address";
import { fits, namedCells, resolvePlace } from "../places";
import { HostRefusal, type Change, type Grid, type NamedCells, type Place, type Progress } from "../port";
import { inExcel } from "./run";

/** An area's address without its sheet, as Excel's sheets take it. */
function local(area: Area): string {
  return `${cellName(area.top, area.left)}:${cellName(area.bottom, area.right)}`;
}

/** Loads those of the workbook's names that places go by; what they stand for can be read after the next sync. */
function namesOf(context: Excel.RequestContext, places: readonly Place[]): () => NamedCells[] {
  const wanted = new Set(places.filter((place) => !place.includes("!")));
  const items = [...wanted].map((name) => {
    const item = context.workbook.names.getItemOrNullObject(name);
    item.load({ name: true, formula: true, visible: true });
    return item;
  });
  return () =>
    items
      .filter((item) => !item.isNullObject && item.visible)
      .map((item) => namedCells(item.name, String(item.formula)));
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

/** The formulas of cells, in two round trips; a cell without one has its value there, which is no formula. */
export function formulasOf(places: readonly Place[]): Promise<(string[][] | undefined)[]> {
  return inPlaces(places, (range) => {
    range.load({ formulas: true });
    const formula = (held: unknown): string => (typeof held === "string" && held.startsWith("=") ? held : "");
    return () => range.formulas.map((row: unknown[]) => row.map(formula));
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
    // A job has hundreds of names, and the pane looks at the workbook after every edit.
    const namesThere = namesOf(context, places);
    await context.sync();
    const names = namesThere();
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

/** Ranges and cells of one request; Excel on the web takes no more than 5 MB at once. */
const RANGES_AT_ONCE = 400;
const CELLS_AT_ONCE = 20_000;

/** Changes in pieces that Excel takes at once. */
function* pieces<T extends { readonly values: Grid }>(changes: readonly T[]): Generator<T[]> {
  let piece: T[] = [];
  let cells = 0;
  for (const change of changes) {
    const size = change.values.length * (change.values[0]?.length ?? 0);
    if (piece.length > 0 && (piece.length === RANGES_AT_ONCE || cells + size > CELLS_AT_ONCE)) {
      yield piece;
      [piece, cells] = [[], 0];
    }
    piece.push(change);
    cells += size;
  }
  if (piece.length > 0) yield piece;
}

/** Writes all changes, or none where a cell is locked on a protected sheet; many of them in several requests. */
export function writeChanges(changes: readonly Change[], progress?: Progress): Promise<void> {
  return inExcel("write to the sheets", async (context) => {
    const places = changes.map(({ place }) => place);
    const namesThere = namesOf(context, places);
    if (places.some((place) => !place.includes("!"))) await context.sync();
    const names = namesThere();
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
    let written = 0;
    for (const piece of pieces(targets)) {
      for (const { range, values } of piece) range.formulas = values.map((row) => [...row]);
      // One request for all of it is what Excel refuses when it is too much.
      // eslint-disable-next-line office-addins/no-context-sync-in-loop
      await context.sync();
      written += piece.length;
      progress?.(written, targets.length);
    }
  });
}
