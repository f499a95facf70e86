import type { Sheet } from "hucre";
import { Locks } from "../reading/locks";
import type { Edit } from "../work/work";
import { contentOf } from "../work/fileContent";
import type { OpenedWorkbook } from "../reading/openWorkbook";
import { cellArea } from "../../xlsx/address";
import { sheetPicture } from "./sheetPicture";

/** What a person typed before the grid stood, as it was typed; rows and columns counted from 0. */
export interface EarlyEntry {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** Where a person was looking when the grid came to stand. */
export interface LastLook {
  readonly entries: readonly EarlyEntry[];
  readonly sheet: string | undefined;
  readonly cell: { readonly row: number; readonly column: number } | undefined;
}

/**
 * The stored values of a workbook, to read and to type into at once: the grid takes seconds to stand. What is typed waits
 * for it.
 */
export class FirstLook {
  private readonly view = document.createElement("div");
  private readonly tabs = document.createElement("div");
  private readonly page = document.createElement("div");
  private readonly entries = new Map<string, EarlyEntry>();
  private readonly locks: Locks;
  private current: Sheet | undefined;
  private cell: LastLook["cell"];
  private field: HTMLInputElement | undefined;
  private waiting: (() => void) | undefined;

  constructor(
    private readonly container: HTMLElement,
    private readonly opened: OpenedWorkbook,
    private readonly edits: readonly Edit[],
  ) {
    this.locks = new Locks(opened.workbook);
    this.view.className = "first-look";
    this.view.setAttribute("aria-label", "Stored values; the spreadsheet is being made ready");
    this.page.className = "first-page";
    this.tabs.className = "first-tabs";
    this.view.append(this.page, this.tabs);
    for (const sheet of opened.workbook.sheets.filter(({ hidden, veryHidden }) => !hidden && !veryHidden)) {
      const tab = document.createElement("button");
      tab.type = "button";
      tab.textContent = sheet.name;
      tab.addEventListener("click", () => this.turnTo(sheet));
      this.tabs.append(tab);
      if (!this.current) this.turnTo(sheet);
    }
    this.page.addEventListener("click", ({ target }) => {
      const cell = (target as HTMLElement).closest<HTMLElement>("td");
      if (cell) this.begin(cell);
    });
    container.append(this.view);
    document.body.dataset.firstLook = "true";
  }

  /** Resolves with what was typed, once nobody is typing any more. */
  async done(): Promise<LastLook> {
    // A cell that is open and as it was holds nothing to wait for.
    if (this.field && this.field.value !== this.field.defaultValue)
      await new Promise<void>((resolve) => (this.waiting = resolve));
    return { entries: [...this.entries.values()], sheet: this.current?.name, cell: this.cell };
  }

  /** Whether it shows this workbook. */
  shows(opened: OpenedWorkbook | undefined): boolean {
    return this.opened === opened;
  }

  /** Gives the place to the grid. */
  leave(): void {
    // A cell that is still open would be closed by the removal itself, in the middle of it.
    this.field = undefined;
    this.view.remove();
    delete document.body.dataset.firstLook;
  }

  private turnTo(sheet: Sheet): void {
    this.current = sheet;
    this.cell = undefined;
    const picture = sheetPicture(this.opened, sheet, this.container.clientWidth);
    this.page.replaceChildren(picture);
    this.page.scrollTo(0, 0);
    for (const tab of this.tabs.children) tab.setAttribute("aria-pressed", String(tab.textContent === sheet.name));
    for (const { sheet: name, row, column, content } of this.edits)
      if (name === sheet.name) this.show(row, column, String(content));
    for (const { sheet: name, row, column, text } of this.entries.values())
      if (name === sheet.name) this.show(row, column, text);
  }

  private show(row: number, column: number, text: string): void {
    const cell = this.cellAt(row, column);
    // A formula has no result yet.
    if (cell) cell.textContent = text.startsWith("=") ? "…" : text;
  }

  private cellAt(row: number, column: number): HTMLElement | null {
    return this.page.querySelector<HTMLElement>(`td[data-cell="${row},${column}"]`);
  }

  /** Opens a cell for typing, if it may be changed. */
  private begin(cell: HTMLElement): void {
    const [row = 0, column = 0] = (cell.dataset.cell ?? "").split(",").map(Number);
    const { name } = this.current ?? {};
    if (name === undefined || cell.querySelector("input")) return;
    this.cell = { row, column };
    if (this.locks.isLocked(cellArea(name, row, column))) return;
    const field = document.createElement("input");
    const key = `${name}!${row},${column}`;
    const before =
      this.entries.get(key)?.text ??
      String(contentOf(this.current, row, column, this.opened.workbook.dateSystem === "1904"));
    const shown = cell.textContent;
    field.defaultValue = field.value = before;
    field.setAttribute("aria-label", `${name}, row ${row + 1}`);
    cell.replaceChildren(field);
    this.field = field;
    field.select();
    field.focus();
    const end = (keep: boolean): void => {
      if (this.field !== field) return;
      this.field = undefined;
      cell.textContent = shown;
      if (keep && field.value !== before) {
        this.entries.set(key, { sheet: name, row, column, text: field.value });
        this.show(row, column, field.value);
      }
      this.waiting?.();
    };
    field.addEventListener("blur", ({ relatedTarget }) => {
      // The grid takes the keyboard while it comes to stand; whoever is typing keeps it.
      if (relatedTarget instanceof Element && relatedTarget.closest(".grid")) queueMicrotask(() => field.focus());
      else end(true);
    });
    field.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" && event.key !== "Escape" && event.key !== "Tab") return;
      event.preventDefault();
      end(event.key !== "Escape");
      const next =
        event.key === "Tab"
          ? this.cellAt(row, column + 1)
          : event.key === "Enter"
            ? this.cellAt(row + 1, column)
            : null;
      if (next) this.begin(next);
    });
  }
}
