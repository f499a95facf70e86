import type { Area } from "../../xlsx/address";
import type { Grid, NamedCells, Selected, Template, WorkbookFile } from "../port";

/** Values for an area. */
export interface Write {
  readonly area: Area;
  readonly values: Grid;
}

/** What the bench's embedded spreadsheet does for the port; everything else of the port is worked out on top of it. */
export interface BenchGrid {
  names(): readonly NamedCells[];
  hasSheet(sheet: string): boolean;
  values(area: Area): Grid;
  /** What the cells show, as text. */
  shown(area: Area): string[][];
  /** The formula of each cell with its "=", or "". */
  formulas(area: Area): string[][];
  /** Whether any cell of the area is locked on a protected sheet. */
  locked(area: Area): boolean;
  /** Writes all of it as one step that undo takes back. */
  write(changes: readonly Write[]): Promise<void>;
  select(area: Area): void;
  selected(): Selected;
  /** Puts another workbook in place of the one that is open. */
  open(template: Template): Promise<void>;
  /** Puts a picture at the selected cell; gives the sheet it is on. */
  placePicture(png: Uint8Array, title: string): Promise<string>;
  recalculate(): Promise<void>;
  /** The workbook as it stands, as a file. */
  file(): Promise<WorkbookFile>;
  setting(key: string): string | undefined;
  keepSetting(key: string, value: string): void;
  dark(): boolean;
  onChange(listener: () => void): () => void;
  onSelect(listener: () => void): () => void;
}
