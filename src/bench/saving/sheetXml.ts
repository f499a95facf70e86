import { cellName, columnNumber } from "../../xlsx/address";
import { attributeOf, childOf, escapeText, walkXml, writtenAttributes, type XmlElement } from "../../xlsx/xml";
import type { CellValue } from "../../host/port";
import { columnStyles } from "../../xlsx/columnStyles";

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

const ERROR_CODE = /^#(N\/A|NAME\?|REF!|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!)$/;
/** Two engines may differ in the last digits; a difference this small is no change of the stored result. */
const SAME = 1e-12;

/** Rewrites the patched cells of a sheet's XML and leaves every other character as it is; `texts` are the shared ones. */
export function patchSheetXml(xml: string, patches: SheetPatches, texts: readonly string[] = []): string {
  return new SheetPatcher(xml, patches, texts).patched();
}

/** Goes through the sheet once, copying what stays and writing what changes. */
class SheetPatcher {
  private readonly pendingRows: number[];
  private looks: ReadonlyMap<number, string> = new Map();
  private prefix = "";
  private row = -1;
  private text = "";
  private copied = 0;
  private found = false;

  constructor(
    private readonly xml: string,
    private readonly patches: SheetPatches,
    private readonly texts: readonly string[],
  ) {
    this.pendingRows = [...patches.keys()].sort((a, b) => a - b);
  }

  patched(): string {
    walkXml(this.xml, {
      opened: (element) => {
        if (element.name === "sheetData") {
          this.prefix = element.prefix;
          this.looks = columnStyles(element.parent);
        } else if (element.name === "row") this.row = rowOf(element, this.row);
      },
      closed: (element) => {
        if (element.name === "c") return this.patches.has(this.row) ? undefined : "forget";
        if (element.name === "row") {
          this.patchRow(element);
          return "forget";
        }
        if (element.name === "sheetData") this.endRows(element);
        return undefined;
      },
    });
    if (!this.found) throw new Error("the sheet has no data part");
    return this.text + this.xml.slice(this.copied);
  }

  /** Writes what stands before a place, and then something in the place of what reaches to `behind`. */
  private put(at: number, behind: number, text: string): void {
    this.text += this.xml.slice(this.copied, at) + text;
    this.copied = behind;
  }

  private patchRow(element: XmlElement): void {
    this.put(element.start, element.start, this.rowsBefore(this.row));
    if (this.pendingRows[0] !== this.row) return;
    this.pendingRows.shift();
    const patches = this.patches.get(this.row) ?? new Map<number, CellPatch>();
    const news = new Map([...patches].map(([column, patch]) => [column, this.newCell(column, patch)] as const));
    const known = columnsOf(element);
    const grows = [...news].some(([column, cell]) => cell !== "" && !known.has(column));
    // A row's span is only a hint, and a wrong one is worse than none.
    const open = (): string =>
      `<${this.prefix}row${writtenAttributes(element.attributes, grows ? { spans: undefined } : {})}>`;
    if (element.closing === element.end) {
      this.put(element.start, element.end, `${open()}${[...sorted(news)].join("")}</${this.prefix}row>`);
      return;
    }
    if (grows) this.put(element.start, element.opened, open());
    const pending = [...patches.keys()].filter((column) => !known.has(column)).sort((a, b) => a - b);
    for (const [column, cell] of known) {
      while (pending[0] !== undefined && pending[0] < column)
        this.put(cell.start, cell.start, news.get(pending.shift() ?? 0) ?? "");
      const patch = patches.get(column);
      if (patch && !holds(cell, patch, this.texts)) this.put(cell.start, cell.end, this.writeCell(cell, patch));
    }
    this.put(element.closing, element.closing, pending.map((column) => news.get(column) ?? "").join(""));
  }

  private endRows(element: XmlElement): void {
    this.found = true;
    const rest = this.rowsBefore(Infinity);
    if (element.closing < element.end) return this.put(element.closing, element.closing, rest);
    const open = `<${this.prefix}sheetData${writtenAttributes(element.attributes)}>`;
    this.put(element.start, element.end, `${open}${rest}</${this.prefix}sheetData>`);
  }

  /** The rows that the file lacks before one that it has. */
  private rowsBefore(row: number): string {
    let rows = "";
    while (this.pendingRows[0] !== undefined && this.pendingRows[0] < row) {
      this.row = this.pendingRows.shift() ?? 0;
      const patches = this.patches.get(this.row) ?? new Map<number, CellPatch>();
      const cells = sorted(
        new Map([...patches].map(([column, patch]) => [column, this.newCell(column, patch)] as const)),
      ).join("");
      if (cells !== "") rows += `<${this.prefix}row r="${this.row + 1}">${cells}</${this.prefix}row>`;
    }
    if (row !== Infinity) this.row = row;
    return rows;
  }

  /** A cell that the file lacks; "" where there is nothing to hold. */
  private newCell(column: number, patch: CellPatch): string {
    const look = this.looks.get(column);
    const attributes = { r: cellName(this.row, column), ...(look === undefined ? {} : { s: look }) };
    return this.writeCell(undefined, patch, attributes);
  }

  /** The cell's XML under the patch; "" when nothing is left that a file must hold. */
  private writeCell(cell: XmlElement | undefined, patch: CellPatch, made: Record<string, string> = {}): string {
    const { prefix } = this;
    const formula = this.writeFormula(childOf(cell, "f"), patch);
    const [type, value] = writeValue(patch.value, formula !== "", prefix);
    if (!cell && formula === "" && value === "") return "";
    const old = made.s ?? attributeOf(cell, "s");
    const dynamic = patch.formula ? patch.spill?.metadata : undefined;
    const attributes = writtenAttributes(cell?.attributes ?? [], {
      ...made,
      ...(patch.look ? { s: patch.look(old) } : {}),
      ...(patch.formula === undefined ? {} : { cm: dynamic === undefined ? undefined : String(dynamic) }),
      t: type,
    });
    if (formula === "" && value === "") return `<${prefix}c${attributes}/>`;
    return `<${prefix}c${attributes}>${formula}${value}</${prefix}c>`;
  }

  private writeFormula(old: XmlElement | undefined, { formula, spill }: CellPatch): string {
    const { prefix, xml } = this;
    if (typeof formula === "string") {
      const marks = spill ? ` t="array" ref="${spill.ref}"` : "";
      return `<${prefix}f${marks}>${escapeText(formula)}</${prefix}f>`;
    }
    if (formula === null || !old) return "";
    if (!spill) return xml.slice(old.start, old.end);
    const open = `<${prefix}f${writtenAttributes(old.attributes, { ref: spill.ref })}`;
    return old.closing === old.end ? `${open}/>` : `${open}>${xml.slice(old.opened, old.end)}`;
  }
}

/** The row that an element stands for, counted from 0; one without a number follows the one before. */
export function rowOf(element: XmlElement, previous: number): number {
  const number = Number(attributeOf(element, "r"));
  return Number.isInteger(number) && number > 0 ? number - 1 : previous + 1;
}

/** The column of a cell; one without an address follows the one before. */
export function columnOf(cell: XmlElement, previous: number): number {
  const letters = /^[A-Za-z]+/.exec(attributeOf(cell, "r") ?? "")?.[0];
  return letters === undefined ? previous + 1 : columnNumber(letters);
}

function columnsOf(row: XmlElement): Map<number, XmlElement> {
  const cells = new Map<number, XmlElement>();
  let column = -1;
  for (const cell of row.children) {
    if (cell.name !== "c") continue;
    column = columnOf(cell, column);
    cells.set(column, cell);
  }
  return cells;
}

function sorted(cells: ReadonlyMap<number, string>): string[] {
  return [...cells].sort(([a], [b]) => a - b).map(([, cell]) => cell);
}

/** Whether a cell already stores what the patch would write. */
function holds(cell: XmlElement, patch: CellPatch, texts: readonly string[]): boolean {
  if (patch.formula !== undefined) return false;
  if (patch.spill && attributeOf(childOf(cell, "f"), "ref") !== patch.spill.ref) return false;
  const stored = childOf(cell, "v")?.text;
  const type = attributeOf(cell, "t") ?? "n";
  const { value } = patch;
  if (value === "" && stored === undefined) return childOf(cell, "is") === undefined;
  if (stored === undefined) return false;
  if (typeof value === "boolean") return type === "b" && stored === (value ? "1" : "0");
  if (typeof value === "number") return type === "n" && Math.abs(Number(stored) - value) <= SAME * Math.abs(value);
  if (type === "s") return texts[Number(stored)] === value;
  return (type === "str" || type === "e") && stored === value;
}

/** A text as a cell holds it: "_x0041_" would be read as the letter of that number (ECMA-376 part 1, 22.9.2.19). */
function cellText(text: string): string {
  return escapeText(text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_"));
}

/** The type and the element of a value; no type for numbers and for nothing. */
function writeValue(value: CellValue, isResult: boolean, prefix: string): [type: string | undefined, element: string] {
  const v = (text: string): string => `<${prefix}v>${text}</${prefix}v>`;
  if (typeof value === "number") return [undefined, v(String(value))];
  if (typeof value === "boolean") return ["b", v(value ? "1" : "0")];
  if (ERROR_CODE.test(value)) return ["e", v(value)];
  if (isResult) return ["str", v(cellText(value))];
  if (value === "") return [undefined, ""];
  return ["inlineStr", `<${prefix}is><${prefix}t xml:space="preserve">${cellText(value)}</${prefix}t></${prefix}is>`];
}

/** A formula of the file that stands for more than its own cell. */
export interface WideFormula {
  readonly row: number;
  readonly column: number;
  readonly type: string;
  /** The area it fills, or is filled down over; undefined where another cell says so. */
  readonly ref: string | undefined;
  /** The number that the cells of one filled-down formula share. */
  readonly group: string | undefined;
}

/** The array formulas and the filled-down ones of a sheet. */
export function wideFormulas(xml: string): WideFormula[] {
  const found: WideFormula[] = [];
  if (!/array|shared/.test(xml)) return found;
  let row = -1;
  let column = -1;
  walkXml(xml, {
    opened(element) {
      if (element.name === "row") {
        row = rowOf(element, row);
        column = -1;
      } else if (element.name === "c") column = columnOf(element, column);
    },
    closed(element) {
      const type = element.name === "f" ? attributeOf(element, "t") : undefined;
      if (type === "array" || type === "shared")
        found.push({ row, column, type, ref: attributeOf(element, "ref"), group: attributeOf(element, "si") });
      return element.name === "row" || element.name === "c" ? "forget" : undefined;
    },
  });
  return found;
}
