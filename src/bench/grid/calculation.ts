import { ICommandService, type ICellData, type IRange, type Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  FormulaDataModel,
  IActiveDirtyManagerService,
  OtherFormulaMarkDirty,
  RemoveOtherFormulaMutation,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationResultMutation,
  SetOtherFormulaMutation,
} from "@univerjs/engine-formula";
import type { Change } from "../../workbook/engine/engine";
import type { RuleResult, RuleText } from "../../workbook/engine/rules";
import type { Answer, Asked, Typed } from "../calculation/messages";
import type { Workbook } from "hucre";
import { storedSpills, type Matrix } from "../reading/cellSets";
import { placeKey } from "../../workbook/engine/sheetCells";
import { asResult, isFormula } from "../work/content";
import { UNIT, type GridModel } from "./model";
import type { Reasons } from "./reasons";
import { typedCells } from "./typedCells";

interface RuleSet {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly formulaMap: Readonly<Record<string, { readonly f: string; readonly ranges: readonly IRange[] }>>;
}

/** What is calculated beside the page, as the page hears of it. */
export interface Calculated {
  /** Results of what was asked for last are in the cells. */
  finished(): void;
  /** The circles of formulas that read each other, whenever they are others than before. */
  circles(circles: Answer["circles"]): void;
  /** Results are missing, for a reason nobody foresaw. */
  failed(problem: string): void;
}

/**
 * Hands what is typed to the worker that calculates, and its results to the grid, which calculates nothing itself: results
 * reach it by the commands that its own calculating worker would use.
 */
export class Calculation {
  private readonly post: (asked: Asked) => void;
  private asked = 0;
  private answered = 0;
  private openedAt = 0;
  private waiting: (() => void)[] = [];
  /** By sheet and cell, the last question that it was part of: an older answer does not overwrite what was typed since. */
  private readonly typedAt = new Map<string, Map<number, number>>();
  private readonly ruleSheets = new Map<string, string>();
  private rulesToAsk: { watch: Map<string, RuleText>; unwatch: Set<string>; ask: Set<string> } | undefined;
  private circlesTold = "[]";
  unworkableCount = 0;

  constructor(
    private readonly univer: Univer,
    private readonly api: FUniver,
    private readonly model: GridModel,
    private readonly reasons: Reasons,
    private readonly heard: Calculated,
    link: (hear: (answer: Answer) => void) => (asked: Asked) => void,
  ) {
    this.post = link((answer) => this.hear(answer));
  }

  /** Begins with a workbook: its file, and what was typed into it since. The results that differ come when they are known. */
  open(file: Uint8Array, typed: readonly Typed[]): void {
    this.typedAt.clear();
    this.ruleSheets.clear();
    this.rulesToAsk = undefined;
    this.reasons.forget();
    this.unworkableCount = 0;
    this.ask({ open: file, typed });
    this.openedAt = this.asked;
  }

  /** Shows what formulas fill, as the file has it, until it is calculated. */
  showStored({ sheets, dateSystem }: Workbook): void {
    const formulas = this.univer.__getInjector().get(FormulaDataModel);
    const { ranges, cells } = storedSpills(sheets, dateSystem === "1904");
    // Put into the objects that are there: the grid still hands them on when a workbook before was put away.
    Object.assign(formulas.getArrayFormulaRange(), { [UNIT]: ranges });
    Object.assign(formulas.getArrayFormulaCellData(), { [UNIT]: cells });
  }

  /** Watches for what is typed; possible only once the grid has had a workbook. */
  listen(): void {
    // Otherwise the grid would look through the whole workbook after each edit for what it might calculate.
    this.univer.__getInjector().get(IActiveDirtyManagerService).get = () => undefined;
    this.api.addEvent(this.api.Event.CommandExecuted, ({ id, params, options }) => {
      const typed = typedCells({ id, params }, options);
      if (typed) return this.typed(this.model.sheetName(typed.subUnitId), typed.list);
      if (id === SetOtherFormulaMutation.id) this.watch(params as RuleSet);
      else if (id === RemoveOtherFormulaMutation.id)
        this.unwatch((params as { formulaIdList: string[] }).formulaIdList);
      else if (id === OtherFormulaMarkDirty.id) this.askAgain(params as Record<string, Record<string, object>>);
    });
  }

  /** Calculates everything afresh. */
  again(): Promise<void> {
    this.ask({ all: true });
    return this.settled();
  }

  /** Resolves when the results of everything typed so far are there. */
  settled(): Promise<void> {
    return this.answered === this.asked ? Promise.resolve() : new Promise((resolve) => this.waiting.push(resolve));
  }

  private typed(sheet: string, cells: readonly { readonly row: number; readonly column: number }[]): void {
    const typed = cells.map(({ row, column }) => ({
      sheet,
      row,
      column,
      content: this.model.content(sheet, row, column),
    }));
    this.ask({ typed });
    const at = this.typedAt.get(sheet) ?? new Map<number, number>();
    this.typedAt.set(sheet, at);
    for (const { row, column } of cells) at.set(placeKey(row, column), this.asked);
    this.forgetResults(sheet, typed);
  }

  /** What a person typed is no result of a formula: the answer says nothing of it unless a formula fills the cell. */
  private forgetResults(sheet: string, typed: readonly Typed[]): void {
    const id = this.model.sheetId(sheet);
    const formulas = this.univer.__getInjector().get(FormulaDataModel);
    const spilled = (formulas.getArrayFormulaCellData() as Record<string, Record<string, Matrix<ICellData>>>)[UNIT];
    for (const { row, column, content } of typed) {
      if (isFormula(content)) continue;
      this.reasons.clear(id, row, column);
      delete spilled?.[id]?.[row]?.[column];
    }
  }

  private ask(asked: Asked): void {
    this.asked++;
    this.post(asked);
  }

  private hear({ changes, rules, circles, unworkable, problem }: Answer): void {
    this.answered++;
    // Of a workbook that was put away.
    if (this.answered < this.openedAt) return;
    if (problem !== undefined) this.heard.failed(problem);
    this.unworkableCount = unworkable;
    const current = changes.filter(
      ({ sheet, row, column }) => (this.typedAt.get(sheet)?.get(placeKey(row - 1, column - 1)) ?? 0) <= this.answered,
    );
    if (this.answered === this.asked) this.typedAt.clear();
    this.show(current, rules);
    if (JSON.stringify(circles) !== this.circlesTold) {
      this.circlesTold = JSON.stringify(circles);
      this.heard.circles(circles);
    }
    if (this.answered < this.asked) return;
    for (const resolve of this.waiting.splice(0)) resolve();
    this.heard.finished();
  }

  private show(changes: readonly Change[], rules: readonly RuleResult[]): void {
    if (changes.length === 0 && rules.length === 0) return;
    const formulas = this.univer.__getInjector().get(FormulaDataModel);
    const ranges = ((formulas.getArrayFormulaRange() as Record<string, Record<string, Matrix<IRange>>>)[UNIT] ??= {});
    const spilled = ((formulas.getArrayFormulaCellData() as Record<string, Record<string, Matrix<ICellData>>>)[UNIT] ??=
      {});
    const results: Record<string, Matrix<ICellData>> = {};
    for (const change of changes) {
      if (!this.model.hasSheet(change.sheet)) continue;
      const id = this.model.sheetId(change.sheet);
      const [row, column] = [change.row - 1, change.column - 1];
      if (change.reason === undefined) this.reasons.clear(id, row, column);
      else this.reasons.set(id, row, column, change.reason);
      if (this.model.formula(change.sheet, row, column) === "") {
        // A cell that a formula elsewhere fills, or no longer fills.
        if (change.fills === undefined && change.value === "") delete spilled[id]?.[row]?.[column];
        else ((spilled[id] ??= {})[row] ??= {})[column] = asResult(change.value);
        ((results[id] ??= {})[row] ??= {})[column] = {};
        continue;
      }
      ((results[id] ??= {})[row] ??= {})[column] = asResult(change.value);
      if (change.fills) {
        const { top, left, bottom, right } = change.fills;
        ((ranges[id] ??= {})[row] ??= {})[column] = {
          startRow: top - 1,
          startColumn: left - 1,
          endRow: bottom - 1,
          endColumn: right - 1,
        };
        ((spilled[id] ??= {})[row] ??= {})[column] = asResult(change.value);
      } else {
        delete ranges[id]?.[row]?.[column];
        delete spilled[id]?.[row]?.[column];
      }
    }
    const commands = this.univer.__getInjector().get(ICommandService);
    const local = { onlyLocal: true, fromFormula: true };
    const arrayFormulaRange = formulas.getArrayFormulaRange();
    const arrayFormulaCellData = formulas.getArrayFormulaCellData();
    commands.syncExecuteCommand(SetArrayFormulaDataMutation.id, { arrayFormulaRange, arrayFormulaCellData }, local);
    const all = { unitData: { [UNIT]: results }, unitOtherData: this.ruleData(rules) };
    commands.syncExecuteCommand(SetFormulaCalculationResultMutation.id, all, local);
  }

  private ruleData(
    rules: readonly RuleResult[],
  ): Record<string, Record<string, Record<string, Matrix<ICellData[][]>>>> {
    const sheets: Record<string, Record<string, Matrix<ICellData[][]>>> = {};
    for (const { id, cells, rows } of rules) {
      const sheet = this.ruleSheets.get(id);
      if (sheet === undefined) continue;
      const data = rows.map((row) => row.map(asResult));
      const matrix = ((sheets[sheet] ??= {})[id] ??= {});
      for (const { down, across } of cells) (matrix[down] ??= {})[across] = data;
    }
    return { [UNIT]: sheets };
  }

  private watch({ subUnitId, formulaMap }: RuleSet): void {
    const sheet = this.model.sheetName(subUnitId);
    for (const [id, { f, ranges }] of Object.entries(formulaMap)) {
      this.ruleSheets.set(id, subUnitId);
      const blocks = ranges.map(({ startRow, startColumn, endRow, endColumn }) => ({
        top: startRow + 1,
        left: startColumn + 1,
        bottom: endRow + 1,
        right: endColumn + 1,
      }));
      this.rulesAsked().watch.set(id, { id, sheet, text: f.replace(/^=/, ""), blocks });
    }
  }

  private unwatch(ids: readonly string[]): void {
    for (const id of ids) {
      this.ruleSheets.delete(id);
      if (!this.rulesAsked().watch.delete(id)) this.rulesAsked().unwatch.add(id);
    }
  }

  private askAgain(dirty: Readonly<Record<string, Readonly<Record<string, object>>>>): void {
    for (const id of Object.values(dirty).flatMap((sheets) => Object.values(sheets).flatMap(Object.keys))) {
      if (!this.rulesAsked().watch.has(id)) this.rulesAsked().ask.add(id);
    }
  }

  /** Rules come by the hundred when a workbook is opened; they are handed over together. */
  private rulesAsked(): NonNullable<Calculation["rulesToAsk"]> {
    if (!this.rulesToAsk) {
      const asked = (this.rulesToAsk = { watch: new Map(), unwatch: new Set(), ask: new Set() });
      setTimeout(() => {
        if (this.rulesToAsk !== asked) return;
        this.rulesToAsk = undefined;
        this.ask({ watch: [...asked.watch.values()], unwatch: [...asked.unwatch], ask: [...asked.ask] });
      });
    }
    return this.rulesToAsk;
  }
}
