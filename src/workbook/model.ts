import type { UnitSystem } from "../calc/quantity/unitSystem";

/** What a cell holds or shows; errors are texts such as "#VALUE!". */
export type CellValue = string | number | boolean;

export type Side = "left" | "right" | "top" | "bottom";
export type LineStyle = "hair" | "thin" | "medium" | "double";

/** How a cell looks. Colours are six hex digits: no theme, so that every host shows the same. */
export interface Style {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly color?: string;
  readonly fill?: string;
  readonly lines?: Readonly<Partial<Record<Side, LineStyle>>>;
  readonly lineColor?: string;
  readonly align?: "left" | "center" | "right";
  readonly vertical?: "top" | "center" | "bottom";
  readonly wrap?: boolean;
  readonly indent?: number;
  readonly format?: string;
  /** The user may type here; every other cell is protected. */
  readonly unlocked?: boolean;
}

/** One cell: a value, or a formula as a person types it, beginning with "=". */
export interface CellModel {
  value?: CellValue;
  formula?: string;
  /** Set where the formula fills an area: the most rows and columns it may take. */
  spill?: { readonly rows: number; readonly columns: number };
  /** The result of the formula; its spilled rows where it spills. Written by recalculation. */
  result?: CellValue | CellValue[][];
  style: Style;
  /** A defined name or "Sheet!A1" that a click leads to. */
  link?: string;
  /** What its number is, where its unit is that of its kind: the lint of formulas reads it. */
  kind?: string;
  /** What the formula's result is called, and where the formula comes from. */
  origin?: Origin;
}

/** Where a formula comes from; help lists it. */
export interface Origin {
  /** What its result is called; left out where the words in front of the cell say it. */
  readonly label?: string;
  /** What it rests on; left out where it only adds up, reads, or calls one function of ours, which states its own. */
  readonly source?: string;
  /** Set where its words are a verdict on numbers. */
  readonly judges?: true;
}

export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** What may be typed into an area, and what the user is told. */
export interface Validation {
  readonly area: Area;
  readonly kind: "decimal" | "whole" | "list" | "date" | "text";
  readonly min?: number;
  readonly max?: number;
  /** Choices, or a formula such as "=PumpNames" that lists them. */
  readonly choices?: readonly string[] | string;
  readonly title: string;
  readonly message: string;
  /**
   * What is typed otherwise is taken all the same, since the sheet says that it is wrong: with a warning, or in silence where
   * a text may be what a tape says.
   */
  readonly lenient?: "warns" | "silent";
}

/** A look that depends on a formula, written for the area's first cell. */
export interface Conditional {
  readonly area: Area;
  readonly formula: string;
  readonly style: Pick<Style, "bold" | "italic" | "color" | "fill" | "lines" | "lineColor" | "format">;
}

export interface ChartSeries {
  readonly title: string;
  /** Areas on any sheet, as "Sheet!$A$1:$A$9". */
  readonly x: string;
  readonly y: string;
  readonly color: string;
  readonly dashed?: boolean;
  readonly markers?: boolean;
  readonly line?: boolean;
}

export interface ChartModel {
  readonly title: string;
  readonly description: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly ChartSeries[];
  readonly area: Area;
}

export interface PrintSetup {
  readonly landscape: boolean;
  /** Rows repeated on every page, as [first, last]. */
  readonly titleRows?: readonly [number, number];
  /** Pages in height that the sheet is fitted to; 0 for as many as it takes. */
  readonly pagesHigh: number;
  /** Rows after which a new page begins. */
  readonly breaks: readonly number[];
  /** The last row that is printed, where tables that only formulas read stand below it. */
  readonly lastRow?: number;
  /** The last column that is printed, where those right of it are for the screen. */
  readonly lastColumn?: number;
  /** Set where the page has a letterhead of its own. */
  readonly plain?: boolean;
}

export interface SheetModel {
  readonly name: string;
  /** Cells by row and column, both counted from 1. */
  readonly rows: Map<number, Map<number, CellModel>>;
  /** Widths in characters, from column 1. */
  readonly widths: number[];
  readonly heights: Map<number, number>;
  readonly merges: Area[];
  readonly validations: Validation[];
  readonly conditionals: Conditional[];
  readonly charts: ChartModel[];
  readonly freeze: { rows: number; columns: number };
  /** A list, its headings included, that a person may filter. */
  filter?: Area;
  /** Whether a person may put pictures on it. */
  pictures?: boolean;
  /** Neither shown among the tabs nor printed. */
  readonly hidden?: boolean;
  print: PrintSetup;
  /**
   * A row of a table that ends the sheet and may grow. From it on, rows that hold nothing have no cells in the
   * file: the columns carry the look of this row's cells, so that blank rows neither print nor fill the file.
   */
  openFrom?: number;
}

/** A defined name and the area it stands for. */
export interface NameModel {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
}

/** The workbook as plain data: what writing, recalculating, linting and tests all work from. */
export interface WorkbookModel {
  readonly title: string;
  readonly system: UnitSystem;
  readonly filled: "demo" | "blank";
  readonly sheets: readonly SheetModel[];
  readonly names: readonly NameModel[];
}

export function cellAt(sheet: SheetModel, row: number, column: number): CellModel | undefined {
  return sheet.rows.get(row)?.get(column);
}
