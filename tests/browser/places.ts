import { readXlsx } from "hucre/xlsx";
import { parseArea, type Area } from "../../src/xlsx/address";

/** Where a person types each named value of a workbook: rows move when a sheet is laid out anew, names do not. */
export async function placesIn(workbook: Uint8Array): Promise<(name: string) => Area> {
  const { namedRanges = [] } = await readXlsx(workbook);
  const names = new Map(namedRanges.map(({ name, range }) => [name, range]));
  return (name) => {
    const area = parseArea(names.get(`${name}Yours`) ?? names.get(name) ?? "");
    if (!area) throw new Error(`the workbook has no ${name}`);
    return area;
  };
}
