import { readXlsx } from "hucre/xlsx";
import { parseArea, type Area } from "../../src/xlsx/address";
import { answerCell } from "../../src/workbook/yoursName";

/** Where a person types a named value: rows move when a sheet is laid out anew, names do not. */
export function areaTyped(name: string, names: ReadonlyMap<string, string>): Area {
  const area = parseArea(answerCell(name, names) ?? "");
  if (!area) throw new Error(`the workbook has no ${name}`);
  return area;
}

/** Where a person types each named value of a workbook that is not calculated. */
export async function placesIn(workbook: Uint8Array): Promise<(name: string) => Area> {
  const { namedRanges = [] } = await readXlsx(workbook);
  const names = new Map(namedRanges.map(({ name, range }) => [name, range]));
  return (name) => areaTyped(name, names);
}
