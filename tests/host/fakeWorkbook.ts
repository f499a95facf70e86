import { cellName, parseArea, type Area } from "../../src/xlsx/address";
import { templateContents } from "../../src/host/templateNames";

/** A cell of the fake: what it shows, its formula, and whether a protected sheet locks it. */
export interface FakeCell {
  value: string | number | boolean;
  formula?: string;
  locked?: boolean;
}

export interface FakeSheet {
  readonly name: string;
  readonly cells: Map<string, FakeCell>;
  protected: boolean;
  password?: boolean;
  /** What the protection leaves to the user. */
  allows: Readonly<Record<string, boolean>>;
  readonly pictures: { title: string; alt?: string; left?: number; top?: number }[];
}

/** An error as Excel reports it. */
export function excelError(code: string): Error {
  return Object.assign(new Error(code), { code });
}

/** The workbook behind the fake host. */
export class FakeWorkbook {
  readonly sheets: FakeSheet[] = [];
  readonly names = new Map<string, string>();
  /** Names that Excel keeps for itself. */
  readonly hiddenNames = new Set<string>();
  readonly settings = new Map<string, string>();
  readonly opened: string[] = [];
  selection: Area = { sheet: "", top: 0, left: 0, bottom: 0, right: 0 };
  calculations = 0;
  calculationMode = "Automatic";
  readonly calculationListeners = new Set<() => Promise<void>>();
  /** Until then a cell is being edited. */
  editing: Promise<void> | undefined;
  syncs = 0;
  /** How many names were handed over. */
  namesLoaded = 0;
  /** Names that an insertion leaves broken, as hosts do now and then. */
  breaksNames: readonly string[] = [];
  /** Whether names stay broken although they are entered again. */
  losesNames = false;
  /** Whether inserted formulas come without their functions, as where these were not ready yet. */
  bringsUnbound = false;
  /** The code with which every request fails, until it is taken away. */
  refuses: string | undefined;
  /** The workbook as a file, where it is kept, and how much of it is handed over at once. */
  file = new Uint8Array();
  url = "";
  pieceSize = 4_194_304;
  openFiles = 0;
  readonly changeListeners = new Set<() => Promise<void>>();
  readonly selectionListeners = new Set<() => Promise<void>>();

  addSheet(name: string, cells: Readonly<Record<string, FakeCell>> = {}, isProtected = false): FakeSheet {
    const sheet: FakeSheet = {
      name,
      cells: new Map(Object.entries(cells)),
      protected: isProtected,
      allows: {},
      pictures: [],
    };
    this.sheets.push(sheet);
    if (this.selection.sheet === "") this.selection = { ...this.selection, sheet: name };
    return sheet;
  }

  sheet(name: string): FakeSheet | undefined {
    return this.sheets.find((sheet) => sheet.name === name);
  }

  requireSheet(name: string): FakeSheet {
    const sheet = this.sheet(name);
    if (!sheet) throw excelError("ItemNotFound");
    return sheet;
  }

  cell(address: string): FakeCell | undefined {
    const area = parseArea(address);
    return area && this.sheet(area.sheet)?.cells.get(cellName(area.top, area.left));
  }

  select(address: string): void {
    this.selection = parseArea(address) ?? this.selection;
    for (const listener of this.selectionListeners) void listener();
  }

  /** What the host does with a file whose sheets are inserted. */
  insert(bytes: Uint8Array): void {
    const contents = templateContents(bytes);
    const unbound = { A1: { value: "#NAME?", formula: "=_xldudf_RILL_FTIN(2)" } };
    for (const sheet of contents.sheets) this.addSheet(sheet, this.bringsUnbound ? { ...unbound } : {});
    for (const [name, reference] of contents.names) {
      this.names.set(name, this.breaksNames.includes(name) ? "#REF!" : reference);
    }
  }

  write({ sheet, top, left }: Area, rows: readonly (readonly unknown[])[]): void {
    const { cells, protected: guarded } = this.requireSheet(sheet);
    rows.forEach((row, down) =>
      row.forEach((content, across) => {
        const key = cellName(top + down, left + across);
        const before = cells.get(key);
        if (guarded && before?.locked !== false) throw excelError("AccessDenied");
        const isFormula = typeof content === "string" && content.startsWith("=");
        const held: FakeCell = isFormula ? { formula: content, value: 0 } : { value: content as FakeCell["value"] };
        cells.set(key, { ...held, locked: before?.locked });
      }),
    );
    for (const listener of this.changeListeners) void listener();
  }

  /** Rows of an area, each cell through `of`. */
  rows<T>({ sheet, top, left, bottom, right }: Area, of: (cell: FakeCell | undefined) => T): T[][] {
    const { cells } = this.requireSheet(sheet);
    return Array.from({ length: bottom - top + 1 }, (_, down) =>
      Array.from({ length: right - left + 1 }, (_, across) => of(cells.get(cellName(top + down, left + across)))),
    );
  }
}

/** The smallest area that holds every cell of a sheet. */
export function usedArea(sheet: FakeSheet): Area | undefined {
  const areas = [...sheet.cells.keys()].flatMap((key) => parseArea(key, sheet.name) ?? []);
  if (areas.length === 0) return undefined;
  return {
    sheet: sheet.name,
    top: Math.min(...areas.map(({ top }) => top)),
    left: Math.min(...areas.map(({ left }) => left)),
    bottom: Math.max(...areas.map(({ bottom }) => bottom)),
    right: Math.max(...areas.map(({ right }) => right)),
  };
}
