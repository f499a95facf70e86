import { areaName, parseArea, type Area } from "../xlsx/address";
import type { Grid, NamedCells, Place } from "./port";

/** The area a place stands for, through the workbook's names; undefined where it stands for none. */
export function resolvePlace(place: Place, names: readonly NamedCells[]): Area | undefined {
  // No name holds a "!", and thousands of addresses need not be looked for among the names.
  if (place.includes("!")) return parseArea(place);
  const named = names.find((entry) => entry.name.toLowerCase() === place.toLowerCase());
  return named && parseArea(named.address);
}

/** A defined name as the file or the host writes it, with what it stands for. */
export function namedCells(name: string, formula: string): NamedCells {
  const area = parseArea(formula);
  return { name, address: area ? areaName(area) : "", broken: formula.includes("#REF!") };
}

/** Whether a grid fits an area cell by cell. */
export function fits(grid: Grid, area: Area): boolean {
  const width = area.right - area.left + 1;
  return grid.length === area.bottom - area.top + 1 && grid.every((row) => row.length === width);
}
