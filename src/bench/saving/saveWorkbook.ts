import { cellName, parseArea } from "../../host/address";
import type { CellValue, Grid } from "../../host/port";
import { unescapeXml } from "../../host/xmlText";
import { isDynamic, toFile } from "../../workbook/formulaText";
import { withForm } from "./forms";
import { dynamicMetadata } from "./metadata";
import { attribute, Package } from "./package";
import { addPictures, type Picture } from "./pictures";
import { patchSheetXml, type CellPatch } from "./sheetXml";
import { explicitShared } from "./sharedFormulas";

/** A cell a person changed. */
export interface SavedEdit {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: CellValue;
  /** The form of numbers or days that the content brought into a plain cell. */
  readonly form?: string;
}

/** A formula's result: one cell, or the rows it spills over. */
export interface SavedResult {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly values: Grid;
}

export interface SavedWork {
  readonly edits: readonly SavedEdit[];
  readonly results: readonly SavedResult[];
  readonly pictures: readonly Picture[];
}

const WORKBOOK = "xl/workbook.xml";
const SHARED_TEXTS = "xl/sharedStrings.xml";

/**
 * The opened file with the edits and the results written into it. Only cells that changed are rewritten;
 * styles, charts, validation, print set-up and everything else keep their bytes.
 */
export function saveWorkbook(original: Uint8Array, work: SavedWork): Uint8Array {
  const file = new Package(original);
  const parts = sheetParts(file);
  const formulas = new Map(work.results.map((result) => [`${result.sheet}!${result.row},${result.column}`, result]));
  const texts = sharedTexts(file.text(SHARED_TEXTS));
  let formulasChanged = false;

  for (const [sheet, part] of parts) {
    const xml = file.text(part);
    const patches = new Map<number, Map<number, CellPatch>>();
    const put = (row: number, column: number, patch: CellPatch): void => {
      const cells = patches.get(row) ?? new Map<number, CellPatch>();
      patches.set(row, cells.set(column, patch));
    };
    const edits = work.edits.filter((edit) => edit.sheet === sheet);
    const edited = new Set(edits.map(({ row, column }) => `${row},${column}`));
    const known = (row: number, column: number): boolean =>
      formulas.has(`${sheet}!${row},${column}`) || edited.has(`${row},${column}`);
    clearOldSpills(xml, sheet, known, put);
    for (const result of work.results) if (result.sheet === sheet) putResult(result, put);
    for (const { row, column, formula } of explicitShared(xml, edits, formulas, sheet)) {
      put(row, column, {
        value: formulas.get(`${sheet}!${row},${column}`)?.values[0]?.[0] ?? "",
        formula: toFile(formula.slice(1)),
      });
    }
    for (const { row, column, content, form } of edits) {
      const isFormula = typeof content === "string" && content.startsWith("=");
      formulasChanged = true;
      const patch = isFormula
        ? editedFormula(file, content, formulas.get(`${sheet}!${row},${column}`))
        : { value: content, formula: null };
      put(row, column, form === undefined ? patch : { ...patch, look: (old) => withForm(file, old, form) });
    }
    if (patches.size > 0) file.setText(part, patchSheetXml(xml, patches, texts));
  }
  // The calculation order is optional and wrong once a formula came or went; the next program builds it again.
  if (formulasChanged) file.removeWithMentions("xl/calcChain.xml", WORKBOOK);
  addPictures(file, parts, work.pictures);
  return file.bytes();
}

/** Sheet names and the parts that hold them. */
export function sheetParts(file: Package): Map<string, string> {
  const relations = file.relations(WORKBOOK);
  const parts = new Map<string, string>();
  for (const [element] of file.text(WORKBOOK).matchAll(/<(?:\w+:)?sheet\b[^>]*>/g)) {
    const name = attribute(element, "name");
    const target = relations.get(/\b\w+:id="([^"]*)"/.exec(element)?.[1] ?? "")?.target;
    if (name !== undefined && target !== undefined) parts.set(unescapeXml(name), target);
  }
  return parts;
}

/** The texts that cells share, by their number; what stands above a text as its reading is no part of it. */
function sharedTexts(xml: string): string[] {
  return [...xml.matchAll(/<(?:\w+:)?si>([\s\S]*?)<\/(?:\w+:)?si>/g)].map(([, item = ""]) => {
    const runs = item.replace(/<(\w+:)?rPh\b[\s\S]*?<\/\1rPh>/g, "").matchAll(/<(?:\w+:)?t(?:\s[^>]*)?>([^<]*)</g);
    return [...runs].map(([, text = ""]) => unescapeXml(text)).join("");
  });
}

type Put = (row: number, column: number, patch: CellPatch) => void;

/** Empties the stored cells of every spill that was worked out again; its result fills the ones it still covers. */
function clearOldSpills(xml: string, sheet: string, known: (row: number, column: number) => boolean, put: Put): void {
  for (const [element] of xml.matchAll(/<(?:\w+:)?f\b[^>]*\bt="array"[^>]*>/g)) {
    const area = parseArea(attribute(element, "ref") ?? "", sheet);
    if (!area || !known(area.top, area.left)) continue;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row !== area.top || column !== area.left) put(row, column, { value: "" });
      }
    }
  }
}

function putResult({ row, column, formula, values }: SavedResult, put: Put): void {
  values.forEach((cells, down) =>
    cells.forEach((value, across) => {
      if (down > 0 || across > 0) put(row + down, column + across, { value });
    }),
  );
  const spill = isDynamic(formula) ? { spill: { ref: spillOf(row, column, values) } } : {};
  put(row, column, { value: values[0]?.[0] ?? "", ...spill });
}

function editedFormula(file: Package, content: string, result: SavedResult | undefined): CellPatch {
  const values = result?.values ?? [[""]];
  const patch: CellPatch = { value: values[0]?.[0] ?? "", formula: toFile(content.slice(1)) };
  if (!isDynamic(content) || !result) return patch;
  const metadata = dynamicMetadata(file, WORKBOOK);
  return metadata === undefined
    ? patch
    : { ...patch, spill: { ref: spillOf(result.row, result.column, values), metadata } };
}

function spillOf(row: number, column: number, values: Grid): string {
  const bottom = row + values.length - 1;
  const right = column + (values[0]?.length ?? 1) - 1;
  const first = cellName(row, column);
  return bottom === row && right === column ? first : `${first}:${cellName(bottom, right)}`;
}
