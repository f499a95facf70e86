import { unzipSync, zipSync, type Zippable } from "fflate";
import { isErrorCode } from "../engine/values";
import type { SheetModel } from "../model";
import { storeChartValues } from "../../xlsx/chartCaches";
import { Package } from "../../xlsx/package";
import { attributeOf, childOf, inPlaceOf, startTag, within, type Piece, type XmlElement } from "../../xlsx/xml";
import { openColumns } from "./openRows";

/** Every entry of the package carries this time, so that the same workbook gives the same bytes anywhere. */
const ENTRY_TIME = "1980-01-01T00:00:00";

/** What Excel itself wrote in 2026; with it, and with no order to calculate on loading, the stored values stand. */
const CALCULATION = '<calcPr calcId="191029"/>';

const CHART = /^xl\/charts\/chart\d+\.xml$/;

/** What is done to the writing library's package before it ships. */
export interface Finish {
  /** Leave out the formulas of array cells and keep their values, for readers without our functions. */
  readonly valuesOnly: boolean;
  /** The sheets in the order of their tabs; those that end with a growing table get columns with a look. */
  readonly sheets: readonly Pick<SheetModel, "openFrom" | "heights">[];
}

/**
 * Corrects what the writing library leaves otherwise than Excel writes it: the calculation flags, the type of error cells,
 * the order within fonts, straight lines in charts, the application's name; and packs the parts in a fixed order and time.
 */
export function finishPackage(bytes: Uint8Array, { valuesOnly, sheets }: Finish): Uint8Array {
  const parts = unzipSync(bytes);
  const file = new Package(parts);
  const change = (part: string, pieces: (root: XmlElement, xml: string) => Piece[]): void => {
    const root = file.xml(part);
    if (root) file.change(part, pieces(root, file.text(part)));
  };
  change(file.workbook, (root) => [...within(root, "calcPr")].map((element) => inPlaceOf(element, CALCULATION)));
  change("docProps/app.xml", (root) =>
    root.children.flatMap((element) => {
      if (element.name === "Application") return [inPlaceOf(element, "<Application>Rillwright</Application>")];
      return element.name === "AppVersion" ? [inPlaceOf(element, "")] : [];
    }),
  );
  for (const part of file.names()) if (CHART.test(part)) change(part, straightLines);
  const styles = file.partOf("styles");
  if (styles) change(styles, sizeBeforeColour);
  [...file.sheets().values()].forEach((part, index) => {
    const model = sheets[index];
    change(part, (root) => [
      ...correctedCells(root, valuesOnly),
      quiet(root),
      ...(model ? openColumns(root, model) : []),
    ]);
  });
  storeChartValues(file);
  return zip(parts);
}

/** Readers draw a series that does not say otherwise as a curve, which would round the steps of a stream. */
function straightLines(chart: XmlElement): Piece[] {
  return [...within(chart, "ser")].flatMap((series) => {
    const values = childOf(series, "yVal");
    if (!values || childOf(series, "smooth")) return [];
    return [{ from: values.end, to: values.end, text: `<${values.prefix}smooth val="0"/>` }];
  });
}

/** The schema wants a font's size before its colour. */
function sizeBeforeColour(styles: XmlElement, xml: string): Piece[] {
  return [...within(styles, "font")].flatMap(({ children }) =>
    children.flatMap((colour, index) => {
      const size = children[index + 1];
      if (colour.name !== "color" || size?.name !== "sz") return [];
      const swapped = xml.slice(size.start, size.end) + xml.slice(colour.start, colour.end);
      return [{ from: colour.start, to: size.end, text: swapped }];
    }),
  );
}

/** Cells that hold an error say so; those of arrays keep their values alone where only values are wanted. */
function correctedCells(sheet: XmlElement, valuesOnly: boolean): Piece[] {
  const rows = childOf(sheet, "sheetData")?.children ?? [];
  return rows.flatMap(({ children }) =>
    children.flatMap((cell) => {
      const [formula, value] = [childOf(cell, "f"), childOf(cell, "v")];
      const bare = valuesOnly && attributeOf(formula, "t") === "array";
      const type = formula && value && isErrorCode(value.text) ? { t: "e" } : {};
      const changed = { ...type, ...(bare ? { cm: undefined } : {}) };
      return [
        ...(Object.keys(changed).length > 0 ? [startTag(cell, changed)] : []),
        ...(bare && formula ? [inPlaceOf(formula, "")] : []),
        // An empty text is written out, as Excel does.
        ...(!bare && value && value.closing === value.end ? [inPlaceOf(value, "<v></v>")] : []),
      ];
    }),
  );
}

/** What follows a sheet's list of ignored errors (ECMA-376 part 1, 18.3.1.99, worksheet). */
const BEHIND_IGNORED = new Set(
  "smartTags drawing legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst".split(
    " ",
  ),
);

/**
 * Keeps Excel's green triangles for errors: our formulas in cells to type over are meant to be there, and so are those that
 * differ from their neighbors'.
 */
function quiet(sheet: XmlElement): Piece {
  const at = sheet.children.find(({ name }) => BEHIND_IGNORED.has(name))?.start ?? sheet.closing;
  const { prefix } = sheet;
  const everywhere = `<${prefix}ignoredError sqref="A1:XFD1048576" formula="1" formulaRange="1" unlockedFormula="1"/>`;
  return { from: at, to: at, text: `<${prefix}ignoredErrors>${everywhere}</${prefix}ignoredErrors>` };
}

/** The parts in a fixed order: those a reader looks for first, then by name. */
function zip(parts: Readonly<Record<string, Uint8Array>>): Uint8Array {
  const first = ["[Content_Types].xml", "_rels/.rels", "xl/workbook.xml"];
  const rank = (name: string): number => (first.includes(name) ? first.indexOf(name) : first.length);
  const names = Object.keys(parts)
    .filter((name) => !name.endsWith("/"))
    .sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  const entries: Zippable = {};
  for (const name of names) {
    const part = parts[name];
    if (part) entries[name] = [part, { level: 9, mtime: ENTRY_TIME, os: 0 }];
  }
  return zipSync(entries);
}
