import type { CellValue } from "../model";
import { eachCell, LAST_COLUMN, type Block } from "./block";
import { Book, type Source } from "./book";
import { compile, nameOf, type Formula, type FormulaText, type Read } from "./formula";
import { ensureRegistryInitialized, setDate1904 } from "./library";
import { Order } from "./order";
import { ownBlock, Placing } from "./placing";
import { Runner } from "./runner";
import { placeKey, type SheetCells } from "./sheetCells";
import { shown, type Held } from "./values";

ensureRegistryInitialized();

/** What a person puts into a cell: a value, a formula without "=", or nothing. */
export type Put = Held | { readonly formula: string } | undefined;

/** A cell that shows something else than before, and why it is in error. */
export interface Change {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  readonly reason?: string;
  /** The block that the formula in the cell fills, where it is more than the cell. */
  readonly fills?: Block;
}

/** Runs of one formula after one edit, after which it is taken to follow from itself. */
const MOST_RUNS = 60;

/**
 * Calculates a workbook and keeps it calculated: each formula is parsed once, the order of calculation is kept, and after an
 * edit a formula runs only if something it reads came to another value.
 */
export class Engine {
  private readonly book: Book;
  private readonly runner: Runner;
  private readonly order = new Order();
  private readonly placing: Placing;
  /** Formulas that stand in no cell: those of rules. */
  private readonly rules = new Map<string, Formula>();
  private readonly restless = new Set<Formula>();
  private readonly changed = new Map<SheetCells, Set<number>>();
  /** The file's own formulas by their cells, for when one is put back. */
  private readonly written = new Map<string, Formula>();
  private readonly date1904: boolean;

  constructor(source: Source) {
    this.date1904 = source.date1904;
    this.book = new Book(source);
    this.runner = new Runner(this.book.snapshot);
    this.placing = new Placing(
      (sheet, row, column, by) => this.touched(sheet, row, column, by),
      (formula, reason) => this.runner.explain(formula, reason),
    );
    for (const sheet of source.sheets) this.fill(sheet);
  }

  /** The circles of formulas that read each other, by their cells. */
  get circles(): readonly (readonly string[])[] {
    return this.order.circles.map((circle) => circle.map(nameOf));
  }

  value(sheet: string, row: number, column: number): CellValue {
    return shown(this.book.sheet(sheet).at(row, column)?.value);
  }

  /** What was put into a cell. */
  content(name: string, row: number, column: number): Put {
    const sheet = this.book.sheet(name);
    const formula = sheet.formulas.get(placeKey(row, column));
    const cell = sheet.at(row, column);
    return formula ? { formula: formula.text } : cell?.from ? undefined : cell?.value;
  }

  /** The last row of a sheet that ever held something. */
  lastRow(sheet: string): number {
    return this.book.sheet(sheet).lastRow;
  }

  /** Why cells are in error, by "Sheet!B7". */
  get reasons(): ReadonlyMap<string, string> {
    return this.runner.reasons;
  }

  /** Every formula that stands in a cell, sheet by sheet and row by row. */
  formulas(): readonly Formula[] {
    return this.book.formulas();
  }

  set(name: string, row: number, column: number, content: Put): void {
    const sheet = this.book.sheet(name);
    const before = sheet.formulas.get(placeKey(row, column));
    if (before) this.leave(sheet, before);
    const owner = sheet.at(row, column)?.from;
    if (owner) sheet.put(row, column, undefined);
    if (typeof content === "object" && "formula" in content) {
      const text = content.formula;
      const written = this.written.get(nameOf({ sheet: sheet.name, row, column }));
      const spilling = written?.text === text ? written.spilling : "free";
      this.order.want(this.enter(sheet, { sheet: sheet.name, row, column, text, spilling }, undefined));
    } else sheet.put(row, column, content);
    // What a spill has lost it wants back, or says that it cannot have it.
    if (owner) this.order.want(owner);
    this.touched(sheet, row, column);
  }

  /** Watches a formula that stands in no cell. An id that is watched already is watched anew. */
  watch(id: string, given: FormulaText): void {
    this.unwatch(id);
    const { snapshot } = this.book.sheet(given.sheet);
    const rule = compile({ ...given, spilling: "free" }, this.book.snapshot, snapshot.id);
    this.rules.set(id, rule);
    this.listen(rule);
    this.order.want(rule);
  }

  unwatch(id: string): void {
    const rule = this.rules.get(id);
    if (!rule) return;
    this.rules.delete(id);
    this.stopListening(rule);
  }

  /** Runs every formula. */
  runAll(): Change[] {
    for (const formula of this.all()) this.order.want(formula);
    return this.run();
  }

  /** Runs what edits made necessary, and what follows from it; tells what came to another value. */
  run(): Change[] {
    setDate1904(this.date1904);
    for (const formula of this.restless) this.order.want(formula);
    const ran: Formula[] = [];
    const all = (): Formula[] => this.all();
    const readBy = (formula: Formula): Formula[] => this.readBy(formula);
    for (let formula = this.order.take(all, readBy); formula; formula = this.order.take(all, readBy)) {
      this.book.shortenAreas(this.order.formulas);
      if (formula.runs++ === 0) ran.push(formula);
      this.runOne(formula);
    }
    for (const formula of ran) formula.runs = 0;
    return this.takeChanges();
  }

  private fill({ name, cells, filled }: Source["sheets"][number]): void {
    const sheet = this.book.sheet(name);
    for (const { row, column, value, formula, by, spilling } of cells) {
      if (formula === undefined) sheet.put(row, column, value);
      else {
        const entered = this.enter(sheet, { sheet: sheet.name, row, column, text: formula, by, spilling }, value);
        this.written.set(nameOf(entered), entered);
      }
    }
    for (const block of filled) {
      const formula = sheet.formulas.get(placeKey(block.top, block.left));
      if (!formula) continue;
      // Until it runs, nobody can tell what it gives; that it fills these cells puts its readers behind it.
      eachCell(block, (row, column) => {
        if (sheet.formulas.has(placeKey(row, column))) return;
        sheet.put(row, column, sheet.at(row, column)?.value ?? 0, formula);
      });
      formula.filled = block;
    }
  }

  private all(): Formula[] {
    return [...this.book.formulas(), ...this.rules.values()];
  }

  private readBy({ reads }: Formula): Formula[] {
    const read: Formula[] = [];
    for (const { sheet, block } of reads) this.book.find(sheet)?.formulasIn(block, (one) => read.push(one));
    return read;
  }

  private runOne(formula: Formula): void {
    const found = this.runner.noteReads(formula);
    const endless = formula.circle !== undefined || formula.runs > MOST_RUNS;
    const rows = endless ? this.runner.inCircle(formula) : this.runner.run(formula);
    if (found) this.follow(formula, found());
    if (formula.told) formula.told(rows);
    else this.placing.place(this.book.sheet(formula.sheet), formula, rows);
  }

  /** Notes that a cell shows something else, and who has to run for it. */
  private touched(sheet: SheetCells, row: number, column: number, by?: Formula): void {
    const cells = this.changed.get(sheet);
    if (cells) cells.add(placeKey(row, column));
    else this.changed.set(sheet, new Set([placeKey(row, column)]));
    sheet.readersOf(row, column, (reader) => {
      if (by) this.order.follow(reader, by);
      this.order.want(reader);
    });
    for (const formula of this.placing.waitingFor(sheet, row, column)) if (formula !== by) this.order.want(formula);
  }

  private enter(sheet: SheetCells, given: FormulaText, stored: Held | undefined): Formula {
    const formula = compile(given, this.book.snapshot, sheet.snapshot.id);
    sheet.formulas.set(placeKey(formula.row, formula.column), formula);
    sheet.put(formula.row, formula.column, stored ?? 0, formula);
    this.listen(formula);
    return formula;
  }

  private listen(formula: Formula): void {
    for (const { sheet, block } of formula.reads) this.book.find(sheet)?.read(formula, block);
    if (formula.restless) this.restless.add(formula);
    this.order.changed();
    this.book.formulasChanged();
  }

  private leave(sheet: SheetCells, formula: Formula): void {
    sheet.formulas.delete(placeKey(formula.row, formula.column));
    eachCell(formula.filled ?? ownBlock(formula), (row, column) => {
      if (sheet.at(row, column)?.from !== formula) return;
      sheet.put(row, column, undefined);
      this.touched(sheet, row, column);
    });
    this.runner.forget(formula);
    this.placing.forget(formula);
    this.stopListening(formula);
  }

  private stopListening(formula: Formula): void {
    for (const { sheet, block } of formula.reads) this.book.find(sheet)?.forget(formula, block);
    this.restless.delete(formula);
    this.order.changed();
  }

  /** Follows cells that are known only since the formula ran. */
  private follow(formula: Formula, reads: readonly Read[]): void {
    for (const { sheet, block } of reads) {
      const cells = this.book.find(sheet);
      cells?.read(formula, block);
      formula.reads.push({ sheet, block });
      cells?.formulasIn(block, (read) => {
        this.order.follow(formula, read);
        if (read.wanted) this.order.want(formula);
      });
    }
  }

  private takeChanges(): Change[] {
    const changes: Change[] = [];
    for (const [sheet, keys] of this.changed) {
      for (const key of keys) {
        const row = Math.floor(key / LAST_COLUMN);
        const column = key % LAST_COLUMN;
        const formula = sheet.formulas.get(key);
        const reason = formula && this.reasons.get(nameOf(formula));
        changes.push({
          sheet: sheet.name,
          row,
          column,
          value: shown(sheet.at(row, column)?.value),
          ...(reason === undefined ? {} : { reason }),
          ...(formula?.filled ? { fills: formula.filled } : {}),
        });
      }
    }
    this.changed.clear();
    return changes;
  }
}
