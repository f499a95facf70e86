/** What one cell can hold; "" and null both mean blank, and reading always gives "". */
export type CellValue = number | string | boolean;

/** Rows of cells, all of one length. */
export type Grid = readonly (readonly CellValue[])[];

/** Where cells are: a defined name ("StaticLift") or an address with its sheet ("Pump!C7:D9"). */
export type Place = string;

/** A defined name and the cells it stands for. */
export interface NamedCells {
  readonly name: string;
  /** "Pump!C7", or "" where the name stands for no cells (a constant, or broken). */
  readonly address: string;
  readonly broken: boolean;
}

/** The selection. */
export interface Selected {
  readonly sheet: string;
  /** "Pump!C7" or "Pump!C7:D9". */
  readonly address: string;
  /** What the first cell shows and holds. */
  readonly value: CellValue;
  readonly formula: string;
  /** Why the first cell shows an error, where the host knows. */
  readonly reason?: string;
}

/** Cells to write. A text that begins with "=" is a formula; "" empties the cell. */
export interface Change {
  readonly place: Place;
  readonly values: Grid;
}

/** A job to begin from. */
export interface Template {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** The workbook as it stands. */
export interface WorkbookFile {
  /** Its name, "Job.xlsx" where it has none yet. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** How a host can take a template, best first. */
export type TemplateWay = "open" | "insert" | "download";

/** What became of a template. */
export interface TemplateReport {
  /** One sentence for the user. */
  readonly said: string;
  /** Names that had to be rebuilt, or that stay broken. */
  readonly repaired: readonly string[];
  readonly broken: readonly string[];
}

/** Formulas that lost their binding to the functions, and what became of them. */
export interface Repairs {
  readonly found: number;
  readonly repaired: number;
  /** Cells of sheets with a password. */
  readonly left: readonly string[];
  /** Whether the user stopped it before every sheet was looked through. */
  readonly stopped: boolean;
}

/** The colours of the host around the pane. */
export interface Theme {
  readonly dark: boolean;
}

/** Told how much of something is done. */
export type Progress = (done: number, total: number) => void;

/** A long task's way to say how far it is and to be stopped. */
export interface Task {
  readonly signal: AbortSignal;
  readonly progress: Progress;
  /** Lets the pane draw, and throws when the user stopped the task meanwhile. */
  pause(): Promise<void>;
}

/** Why a host refused, in a sentence the user can act on. */
export class HostRefusal extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "HostRefusal";
  }
}

/**
 * The one way the pane reaches the workbook. Both sides (Excel, and the bench) and the fake of the tests keep it.
 * Every method that fails throws `HostRefusal` with a sentence for the user.
 */
export interface Host {
  readonly kind: "excel" | "bench";
  /** How this host takes a template, best first. */
  readonly templateWays: readonly TemplateWay[];
  /** Whether several cells written by one `write` undo in one step. */
  readonly undoesInOneStep: boolean;

  names(): Promise<readonly NamedCells[]>;
  /** Values of several places in one round trip; undefined where a place does not exist. */
  read(places: readonly Place[]): Promise<readonly (Grid | undefined)[]>;
  /** What the cells show, as text in their own format; undefined where a place does not exist. */
  show(places: readonly Place[]): Promise<readonly (readonly (readonly string[])[] | undefined)[]>;
  /** The formula of each cell with its "=", "" where it holds none; undefined where a place does not exist. */
  formulas(places: readonly Place[]): Promise<readonly (readonly (readonly string[])[] | undefined)[]>;
  /** Whether each place may be written: it exists, and none of its cells is locked. */
  canWrite(places: readonly Place[]): Promise<readonly boolean[]>;
  /** Writes unlocked cells only: refuses the whole call, changing nothing, when one of them is locked. */
  write(changes: readonly Change[], progress?: Progress): Promise<void>;
  select(place: Place): Promise<void>;
  selected(): Promise<Selected>;
  /** Writes a formula into the selected cell; gives its address. */
  insertFormula(formula: string): Promise<string>;
  takeTemplate(template: Template, way: TemplateWay, task: Task): Promise<TemplateReport>;
  /** Places a PNG on the sheet in view, at the selected cell; says where. */
  placePicture(png: Uint8Array, title: string): Promise<string>;
  /** Enters formulas again that lost their binding to the functions. */
  repairFormulas(task: Task): Promise<Repairs>;
  recalculate(): Promise<void>;
  /** The workbook as a file, with what its formulas come to now. */
  file(progress?: Progress): Promise<WorkbookFile>;
  /** Whether results follow each edit; a person may have set Excel to calculate only when told. */
  calculatesByItself(): Promise<boolean>;
  /** Small settings kept with the workbook (Excel) or with the browser (bench). */
  setting(key: string): Promise<string | undefined>;
  keepSetting(key: string, value: string): Promise<void>;
  theme(): Theme;
  /** Called after values changed (typed or calculated); gives a function that stops it. */
  onChange(listener: () => void): () => void;
  onSelect(listener: () => void): () => void;
}
