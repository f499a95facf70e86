import { writeXlsx } from "hucre/xlsx";
import { finishPackage } from "./file/finishPackage";
import { writerSheet } from "./file/sheetParts";
import { FONT, FONT_SIZE } from "./layout/style";
import { areaAddress } from "./layout/address";
import type { WorkbookModel } from "./model";

/** Day the files say they were made on; a fixed one keeps their bytes the same. */
const MADE = new Date(Date.UTC(2026, 0, 1));

/** What a file is for. */
export interface FileOptions {
  /** "dynamic" ships; "values" keeps only the values of our functions, for previews by readers that lack them. */
  readonly form?: "dynamic" | "values";
  /** Leave out charts, which Excel on the web refuses when sheets are inserted. */
  readonly charts?: boolean;
  readonly paper?: "letter" | "a4";
}

/** The one module that writes a workbook: the model, with its results, as the bytes of an .xlsx file. */
export async function writeWorkbook(model: WorkbookModel, options: FileOptions = {}): Promise<Uint8Array> {
  const { form = "dynamic", charts = true, paper = model.system === "US" ? "letter" : "a4" } = options;
  const bytes = await writeXlsx({
    properties: { title: model.title, creator: "Rillwright", created: MADE, modified: MADE },
    defaultFont: { name: FONT, size: FONT_SIZE },
    namedRanges: [...model.names]
      .sort((a, b) => (a.name.toLowerCase() < b.name.toLowerCase() ? -1 : 1))
      .map(({ name, sheet, area }) => ({ name, range: `${sheet}!${areaAddress(area, true)}` })),
    sheets: model.sheets.map((sheet) => writerSheet(charts ? sheet : { ...sheet, charts: [] }, model.names, paper)),
  });
  return finishPackage(bytes, { valuesOnly: form === "values", sheets: model.sheets });
}
