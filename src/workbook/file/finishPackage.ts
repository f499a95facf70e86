import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";

import type { SheetModel } from "../model";
import { storeChartValues } from "../../xlsx/chartCaches";
import { Package } from "../../xlsx/package";
import { openColumns } from "./openRows";

/** Every entry of the package carries this time, so that the same workbook gives the same bytes anywhere. */
const ENTRY_TIME = "1980-01-01T00:00:00";

/** What Excel itself wrote in 2026; with it, and with no order to calculate on loading, the stored values stand. */
const CALCULATION = '<calcPr calcId="191029"/>';

const ERROR = /^#(?:N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;

/** What is done to the writing library's package before it ships. */
export interface Finish {
  /** Leave out the formulas of array cells and keep their values, for readers without our functions. */
  readonly valuesOnly: boolean;
  /** The sheets in the order of their tabs; those that end with a growing table get columns with a look. */
  readonly sheets: readonly Pick<SheetModel, "openFrom" | "heights">[];
}

/**
 * Mends what the writing library leaves otherwise than Excel writes it: the calculation flags, the type of error cells,
 * the order within fonts, straight lines in charts, the application's name; and packs the parts in a fixed order and time.
 */
export function finishPackage(bytes: Uint8Array, { valuesOnly, sheets }: Finish): Uint8Array {
  const parts = unzipSync(bytes);
  const change = (name: string, edit: (xml: string) => string): void => {
    const part = parts[name];
    if (part) parts[name] = strToU8(edit(strFromU8(part)));
  };
  change("xl/workbook.xml", (xml) => xml.replace(/<calcPr[^>]*\/>/, CALCULATION));
  change("docProps/app.xml", (xml) =>
    xml
      .replace(/<Application>[^<]*<\/Application>/, "<Application>Rillwright</Application>")
      .replace(/<AppVersion>[^<]*<\/AppVersion>/, ""),
  );
  // Readers draw a series that does not say otherwise as a curve, which would round the steps of a stream.
  for (const name of Object.keys(parts).filter((part) => /^xl\/charts\/chart\d+\.xml$/.test(part))) {
    change(name, (xml) => xml.replace(/<\/c:yVal>(?!<c:smooth)/g, '</c:yVal><c:smooth val="0"/>'));
  }
  // The schema wants the size before the colour.
  change("xl/styles.xml", (xml) => xml.replace(/(<color [^>]*\/>)(<sz [^>]*\/>)/g, "$2$1"));
  for (const name of Object.keys(parts).filter((part) => /^xl\/worksheets\/sheet\d+\.xml$/.test(part))) {
    change(name, (xml) =>
      xml.replace(/<c ([^>]*)>((?:(?!<\/c>)[\s\S])*?)<\/c>/g, (_, attributes: string, inner: string) =>
        cell(attributes, inner, valuesOnly),
      ),
    );
  }
  sheets.forEach((sheet, index) => change(`xl/worksheets/sheet${index + 1}.xml`, (xml) => openColumns(xml, sheet)));
  storeChartValues(new Package(parts));
  return zip(parts);
}

function cell(attributes: string, inner: string, valuesOnly: boolean): string {
  const value = /<v>([^<]*)<\/v>/.exec(inner)?.[1];
  const isFormula = /<f[ >]/.test(inner);
  let marks = attributes;
  if (isFormula && value !== undefined && ERROR.test(value)) marks = `${marks.replace(/\s*\bt="[a-z]+"/i, "")} t="e"`;
  if (valuesOnly && /<f [^>]*t="array"/.test(inner)) {
    return `<c ${marks.replace(/\s*\bcm="\d+"/, "")}>${inner.replace(/<f[^>]*>[^<]*<\/f>/, "")}</c>`;
  }
  return `<c ${marks}>${inner.replace("<v/>", "<v></v>")}</c>`;
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
