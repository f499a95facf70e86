import { cellName, columnNumber } from "../../host/address";
import type { CellValue } from "../../host/port";
import { columnStyles } from "../reading/columnStyles";
import { escapeText, unescapeXml } from "../../host/xmlText";

/** What a cell of the file becomes. */
export interface CellPatch {
  readonly value: CellValue;
  /** New formula in the file's spelling; null takes the formula away; left out keeps what is there. */
  readonly formula?: string | null;
  /** The area a dynamic formula spills over, with the number of its cell metadata; left out keeps what is there. */
  readonly spill?: { readonly ref: string; readonly metadata?: number };
  /** The number of the cell's new look, by that of its old one; left out keeps what is there. */
  look?(old: string | undefined): string;
}

/** Patches of one sheet, by row and column counted from 0. */
export type SheetPatches = ReadonlyMap<number, ReadonlyMap<number, CellPatch>>;

const ATTRIBUTES = String.raw`((?:[^>"']|"[^"]*"|'[^']*')*?)`;
const ERROR_CODE = /^#(N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;
/** Two engines may differ in the last digits; a difference this small is no change of the stored result. */
const SAME = 1e-12;

/** Rewrites the patched cells of a sheet's XML and leaves every other character as it is; `texts` are the shared ones. */
export function patchSheetXml(xml: string, patches: SheetPatches, texts: readonly string[] = []): string {
  const start = new RegExp(`<(\\w+:)?sheetData\\b${ATTRIBUTES}(/>|>)`).exec(xml);
  if (!start) throw new Error("the sheet has no data part");
  const prefix = start[1] ?? "";
  const looks = columnStyles(xml);
  const opened = start.index + start[0].length;
  if (start[3] === "/>") {
    const open = `<${prefix}sheetData${start[2] ?? ""}>`;
    return `${xml.slice(0, start.index)}${open}${patchRows("", prefix, patches, texts, looks)}</${prefix}sheetData>${xml.slice(opened)}`;
  }
  const closed = xml.indexOf(`</${prefix}sheetData`, opened);
  return xml.slice(0, opened) + patchRows(xml.slice(opened, closed), prefix, patches, texts, looks) + xml.slice(closed);
}

type Looks = ReadonlyMap<number, string>;

function patchRows(
  rows: string,
  prefix: string,
  patches: SheetPatches,
  texts: readonly string[],
  looks: Looks,
): string {
  const pending = [...patches.keys()].sort((a, b) => a - b);
  const pattern = new RegExp(`<${prefix}row\\b${ATTRIBUTES}(?:/>|>([\\s\\S]*?)</${prefix}row>)`, "g");
  const newRow = (row: number): string => {
    const cells = patchCells("", row, prefix, patches.get(row) ?? new Map(), texts, looks).text;
    return cells === "" ? "" : `<${prefix}row r="${row + 1}">${cells}</${prefix}row>`;
  };
  let text = "";
  let copied = 0;
  let previous = -1;
  for (const match of rows.matchAll(pattern)) {
    const attributes = match[1] ?? "";
    const row = Number(/\br="(\d+)"/.exec(attributes)?.[1] ?? previous + 2) - 1;
    previous = row;
    text += rows.slice(copied, match.index);
    copied = match.index + match[0].length;
    while (pending[0] !== undefined && pending[0] < row) text += newRow(pending.shift() ?? 0);
    if (pending[0] !== row) {
      text += match[0];
      continue;
    }
    pending.shift();
    const cells = patchCells(match[2] ?? "", row, prefix, patches.get(row) ?? new Map(), texts, looks);
    // A row's span is only a hint, and a wrong one is worse than none.
    const kept = cells.grown ? attributes.replace(/\s*\bspans="[^"]*"/, "") : attributes;
    text += `<${prefix}row${kept}>${cells.text}</${prefix}row>`;
  }
  text += rows.slice(copied);
  for (const row of pending) text += newRow(row);
  return text;
}

function patchCells(
  cells: string,
  row: number,
  prefix: string,
  patches: ReadonlyMap<number, CellPatch>,
  texts: readonly string[],
  looks: Looks,
): { text: string; grown: boolean } {
  const pending = [...patches.keys()].sort((a, b) => a - b);
  const pattern = new RegExp(`<${prefix}c\\b${ATTRIBUTES}(?:/>|>([\\s\\S]*?)</${prefix}c>)`, "g");
  let text = "";
  let copied = 0;
  let previous = -1;
  let grown = false;
  const insert = (column: number): void => {
    const patch = patches.get(column);
    const look = looks.get(column);
    const attributes = ` r="${cellName(row, column)}"${look === undefined ? "" : ` s="${look}"`}`;
    const cell = patch && writeCell(attributes, "", prefix, patch, false);
    if (!cell) return;
    text += cell;
    grown = true;
  };
  for (const match of cells.matchAll(pattern)) {
    const attributes = match[1] ?? "";
    const letters = /\br="([A-Za-z]+)\d+"/.exec(attributes)?.[1];
    const column = letters === undefined ? previous + 1 : columnNumber(letters);
    previous = column;
    text += cells.slice(copied, match.index);
    copied = match.index + match[0].length;
    while (pending[0] !== undefined && pending[0] < column) insert(pending.shift() ?? 0);
    const patch = pending[0] === column ? patches.get(column) : undefined;
    if (patch) pending.shift();
    text +=
      patch && !holds(attributes, match[2] ?? "", prefix, patch, texts)
        ? writeCell(attributes, match[2] ?? "", prefix, patch, true)
        : match[0];
  }
  text += cells.slice(copied);
  for (const column of pending) insert(column);
  return { text, grown };
}

/** Whether a cell already stores what the patch would write. */
function holds(attributes: string, inner: string, prefix: string, patch: CellPatch, texts: readonly string[]): boolean {
  if (patch.formula !== undefined) return false;
  const stored = new RegExp(`<${prefix}v>([^<]*)</${prefix}v>`).exec(inner)?.[1];
  const ref = /\bref="([^"]*)"/.exec(new RegExp(`<${prefix}f\\b([^>]*)>`).exec(inner)?.[1] ?? "")?.[1];
  if (patch.spill && ref !== patch.spill.ref) return false;
  const type = /\bt="([^"]*)"/.exec(attributes)?.[1] ?? "n";
  const { value } = patch;
  if (value === "" && stored === undefined) return !inner.includes(`<${prefix}is>`);
  if (stored === undefined) return false;
  if (typeof value === "boolean") return type === "b" && stored === (value ? "1" : "0");
  if (typeof value === "number") return type === "n" && Math.abs(Number(stored) - value) <= SAME * Math.abs(value);
  if (type === "s") return texts[Number(stored)] === value;
  return (type === "str" || type === "e") && unescapeXml(stored) === value;
}

/** The cell's XML under the patch; "" when nothing is left that a file must hold. */
function writeCell(attributes: string, inner: string, prefix: string, patch: CellPatch, existed: boolean): string {
  const old = new RegExp(`<${prefix}f\\b${ATTRIBUTES}(?:/>|>[\\s\\S]*?</${prefix}f>)`).exec(inner);
  const dynamic = patch.spill?.metadata;
  let formula = "";
  if (typeof patch.formula === "string") {
    const marks = patch.spill ? ` t="array" ref="${patch.spill.ref}"` : "";
    formula = `<${prefix}f${marks}>${escapeText(patch.formula)}</${prefix}f>`;
  } else if (patch.formula === undefined && old) {
    formula = patch.spill ? old[0].replace(/\bref="[^"]*"/, `ref="${patch.spill.ref}"`) : old[0];
  }
  let kept = attributes.replace(/\s*\bt="[^"]*"/, "");
  if (patch.formula !== undefined) kept = kept.replace(/\s*\bcm="[^"]*"/, "");
  if (patch.look) {
    const look = patch.look(/\ss="(\d+)"/.exec(kept)?.[1]);
    kept = `${kept.replace(/\ss="\d+"/, "")} s="${look}"`;
  }
  if (patch.formula && dynamic !== undefined) kept += ` cm="${dynamic}"`;
  const [type, value] = writeValue(patch.value, formula !== "", prefix);
  if (formula === "" && value === "") return existed ? `<${prefix}c${kept}/>` : "";
  return `<${prefix}c${kept}${type}>${formula}${value}</${prefix}c>`;
}

function writeValue(value: CellValue, isResult: boolean, prefix: string): [type: string, element: string] {
  const v = (text: string): string => `<${prefix}v>${text}</${prefix}v>`;
  if (typeof value === "number") return ["", v(String(value))];
  if (typeof value === "boolean") return [' t="b"', v(value ? "1" : "0")];
  if (ERROR_CODE.test(value)) return [' t="e"', v(value)];
  if (isResult) return [' t="str"', v(escapeText(value))];
  if (value === "") return ["", ""];
  return [
    ' t="inlineStr"',
    `<${prefix}is><${prefix}t xml:space="preserve">${escapeText(value)}</${prefix}t></${prefix}is>`,
  ];
}
