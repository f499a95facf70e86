import type { Area, CellModel, CellValue, NameModel, Origin, SheetModel, Style } from "../model";
import { Ref, cellAddress, columnLetters } from "./address";
import { formatOf, unitOf, type Kind } from "./formats";
import type { Both, Job } from "./job";
import type { ReasonRun } from "./reasonRun";
import { DEFAULT_HEIGHT, FONT_SIZE, STYLE, type StyleName } from "./style";
import { columnRoom, heightOfLines, linesOf } from "./textRoom";

/** What a cell is given: a style by name with changes, and a value or formula. */
export interface CellSpec {
  readonly value?: CellValue;
  readonly formula?: string;
  readonly style?: StyleName;
  /** Changes to the named style. */
  readonly look?: Style;
  readonly kind?: Kind;
  readonly origin?: Origin;
  /** So many rows and columns that the formula fills. */
  readonly spill?: CellModel["spill"];
  readonly link?: string;
  readonly name?: string;
  /** Columns to merge, this one included. */
  readonly across?: number;
}

/** A sheet being laid out from top to bottom: cells, names and the row the next helper writes to. */
export class Page {
  readonly sheet: SheetModel;
  readonly names: NameModel[] = [];
  /** The row the next helper writes to, counted from 1. */
  row = 1;
  /** What is done on this sheet, in one sentence. */
  purpose = "";
  /** Whether the heading says in which money all amounts are, so that none of them says it again. */
  saysCurrency = false;
  /** Rows the price may rest on, where that is not all of them. */
  pricedRows?: number;
  /** Number cells and ranges that must be filled before the job can be estimated. */
  readonly required: { readonly label: string; readonly ref: Ref }[] = [];
  /** The reasons laid out last that rows below them may go on. */
  reasons?: ReasonRun;

  constructor(
    readonly name: string,
    readonly job: Job,
  ) {
    this.sheet = {
      name,
      rows: new Map(),
      widths: [34, 13, 9, 13, 13, 13, 13, 13],
      heights: new Map(),
      merges: [],
      validations: [],
      conditionals: [],
      charts: [],
      freeze: { rows: 0, columns: 0 },
      print: { landscape: false, pagesHigh: 0, breaks: [] },
    };
  }

  /** Widths of columns right of what is printed. */
  readonly besidePaper = new Map<number, number>();

  /** Set while something is to stand beside what is laid out. */
  protected blockEnd: number | undefined;

  /** The heading of what is being laid out. */
  protected sectionTitle = "";

  /** The last column notes and headings reach to. */
  get lastColumn(): number {
    return this.blockEnd ?? this.sheet.widths.length;
  }

  /** Writes one cell; `row` and `column` are counted from 1. Gives a reference that reads as formula text. */
  put(row: number, column: number, spec: CellSpec): Ref {
    const style: Style = {
      ...STYLE[spec.style ?? "plain"],
      ...(spec.kind ? { format: formatOf(spec.kind, this.job.system) } : {}),
      ...spec.look,
    };
    const cell: CellModel = { style };
    if (spec.value !== undefined) cell.value = spec.value;
    if (spec.formula !== undefined) cell.formula = spec.formula.startsWith("=") ? spec.formula : `=${spec.formula}`;
    if (spec.link !== undefined) cell.link = spec.link;
    if (spec.kind !== undefined) cell.kind = spec.kind;
    if (spec.origin !== undefined) cell.origin = spec.origin;
    if (spec.spill !== undefined) cell.spill = spec.spill;
    this.setCell(row, column, cell);
    const across = spec.across ?? 1;
    if (across > 1) {
      // Every merged cell carries the style, so that lines and fills reach the end.
      for (let at = column + 1; at < column + across; at++) this.setCell(row, at, { style });
      this.sheet.merges.push({ top: row, left: column, bottom: row, right: column + across - 1 });
    }
    return spec.name ? this.define(spec.name, row, column, row, column) : new Ref(this.name, row, column, row, column);
  }

  /** The unit beside a number or over a column; a formula where the job says it. */
  unitOf(kind: Kind, text?: Both<string>): string {
    const unit = text !== undefined ? this.job.pick(text) : unitOf(kind, this.job.system);
    return this.saysCurrency && unit === unitOf("money", this.job.system) ? "" : unit;
  }

  setCell(row: number, column: number, cell: CellModel): void {
    let cells = this.sheet.rows.get(row);
    if (!cells) this.sheet.rows.set(row, (cells = new Map()));
    if (cells.get(column)?.value !== undefined || cells.get(column)?.formula !== undefined) {
      throw new Error(`${this.name}!${cellAddress(row, column)} is laid out twice`);
    }
    cells.set(column, cell);
  }

  /** What the place of a name is called on the sheet: the label of its row, the head of its column, or its section. */
  private calledAt(top: number, left: number, bottom: number, right: number): string {
    const text = (row: number, column: number): string => {
      const { value } = this.sheet.rows.get(row)?.get(column) ?? {};
      return typeof value === "string" ? value : "";
    };
    const own = top === bottom ? (left > 1 ? text(top, 1) : "") : left === right ? text(top - 1, left) : "";
    return own || this.sectionTitle || this.name;
  }

  /** Gives an area a defined name. */
  define(name: string, top: number, left: number, bottom: number, right: number): Ref {
    if (this.job.names.has(name)) throw new Error(`${this.name}: the name ${name} is given twice`);
    this.job.names.add(name);
    this.job.called.set(name, `${this.name}: ${this.calledAt(top, left, bottom, right)}`);
    this.names.push({ name, sheet: this.name, area: { top, left, bottom, right } });
    const place = new Ref(this.name, top, left, bottom, right, name);
    this.job.places.set(name, place);
    return place;
  }

  /** A table that ends the sheet begins its rows here; tables side by side begin at the same row. */
  openFrom(row: number): void {
    if ((this.sheet.openFrom ?? row) !== row)
      throw new Error(`${this.name}: two tables that may grow begin at different rows`);
    this.sheet.openFrom = row;
  }

  /** Characters that fit on one line of some columns at the usual size. */
  charactersAcross(column: number, across: number): number {
    const last = column - 1 + Math.max(1, across);
    if (last > this.sheet.widths.length) {
      const declared = this.sheet.widths.length;
      throw new Error(
        `${this.name}: column ${columnLetters(last)} has no width; widths() declares ${declared} columns`,
      );
    }
    return this.sheet.widths.slice(column - 1, column - 1 + across).reduce((sum, width) => sum + width, 0);
  }

  /** Makes a row as high as a text needs that wraps within columns of so many characters. */
  fitHeight(row: number, text: string, characters: number, size = FONT_SIZE, bold = false): void {
    const height = heightOfLines(linesOf(text, columnRoom(characters), size, bold), size);
    if (height > (this.sheet.heights.get(row) ?? DEFAULT_HEIGHT)) this.sheet.heights.set(row, height);
  }

  /** Makes a row as high as so many lines need. */
  roomFor(row: number, lines: number): void {
    const height = lines > 1 ? heightOfLines(lines) : DEFAULT_HEIGHT;
    if (height > (this.sheet.heights.get(row) ?? DEFAULT_HEIGHT)) this.sheet.heights.set(row, height);
  }

  /** A text that wraps across several columns in one row. */
  textAcross(row: number, column: number, across: number, text: string, style: StyleName, look: Style = {}): Ref {
    const { size, bold } = STYLE[style] as Style;
    this.fitHeight(row, text, this.charactersAcross(column, across) - (look.indent ?? 0), size, bold);
    return this.put(row, column, { value: text, style, look, across });
  }

  styleArea(area: Area, style: StyleName, look: Style = {}): void {
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) this.put(row, column, { style, look });
    }
  }
}
