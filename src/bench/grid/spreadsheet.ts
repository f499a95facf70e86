import type { Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { Template, WorkbookFile } from "../../host/port";
import type { Locks } from "../reading/locks";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import type { GridModel } from "./model";
import type { Selection } from "./selection";
import type { Typing } from "./typing";

/** What the page does for the grid. */
export interface GridPage {
  /** Opens a template with the care that unsaved work asks for. */
  open(template: Template): Promise<void>;
  /** The workbook as it stands, with what is being typed. */
  file(): Promise<WorkbookFile>;
  refused(sentence: string): void;
  /** Asks a question; gives the number of the answer, below 0 where there was none. */
  choose(question: string, answers: readonly string[]): Promise<number>;
  /** Says something that stays in sight until it is read. */
  told(sentence: string): void;
  /** The circles of formulas that read each other, whenever they are others than before. */
  circles(circles: readonly (readonly string[])[]): void;
}

/** The embedded spreadsheet as its helpers see it: keys, the clipboard, what was typed before it stood. */
export interface Spreadsheet {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly model: GridModel;
  readonly selection: Selection;
  readonly typing: Typing;
  readonly page: GridPage;
  readonly locks: Locks;
  /** The file under the edits. */
  readonly opened: OpenedWorkbook | undefined;
  /** Whether the editor of cells is there, which comes some frames after the cells. */
  readonly takesKeys: boolean;
}
