import type { ICommandInfo, IUnitRange, Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { IActiveDirtyManagerService } from "@univerjs/engine-formula";
import { UNIT, type GridModel, type Spill } from "./model";
import { knowSpills } from "./order/spills";

/** Each change of a spill's size can change the size of the next; more passes than this would be circular. */
const MOST_PASSES = 8;
/** The engine's own command to calculate what hangs on some ranges. */
const START = "formula.mutation.set-formula-calculation-start";
const CONTENT_MUTATION = "sheet.mutation.set-range-values";

/**
 * Runs the engine: at once after an edit, where it would wait a while for more of them by itself, and again where
 * a spill came to cover other cells, whose readers were calculated before that was known.
 */
export class Calculation {
  private dirty: IUnitRange[] = [];
  private spills = new Map<string, Spill>();
  private running: Promise<void> | undefined;

  constructor(
    private readonly univer: Univer,
    private readonly api: FUniver,
    private readonly model: GridModel,
    private readonly finished: () => void,
  ) {}

  /** Where formulas spill when a workbook is opened, from its file. */
  begin(spills: ReadonlyMap<string, Spill>): void {
    this.know(new Map(spills));
  }

  /** Takes edits over from the engine's own watch; possible only once it has had a workbook. */
  listen(): void {
    const watch = this.univer.__getInjector().get(IActiveDirtyManagerService);
    const edits = watch.get(CONTENT_MUTATION);
    watch.remove(CONTENT_MUTATION);
    this.api.addEvent(this.api.Event.CommandExecuted, ({ id, params, type, options }) => {
      if (id !== CONTENT_MUTATION || options?.onlyLocal) return;
      this.dirty.push(...(edits?.getDirtyData({ id, params, type } as ICommandInfo).dirtyRanges ?? []));
      void this.run();
    });
  }

  /** Calculates everything afresh. */
  again(): Promise<void> {
    this.api.getFormula().executeCalculation();
    return this.opened();
  }

  /** Resolves when the calculation that the engine began by itself is done, with what follows from it. */
  async opened(): Promise<void> {
    await this.api.getFormula().onCalculationResultApplied();
    await this.run();
  }

  /** Calculates some cells again, with what hangs on them. */
  refresh(cells: readonly IUnitRange[]): Promise<void> {
    this.dirty.push(...cells);
    return this.run();
  }

  /** Resolves when the results of everything written so far are there. */
  async settled(): Promise<void> {
    await this.run();
  }

  /** Calculates until nothing is left to do; whoever asks meanwhile waits for the same end. */
  private run(): Promise<void> {
    this.running ??= this.passes().finally(() => {
      this.running = undefined;
      this.finished();
    });
    return this.running;
  }

  private async passes(): Promise<void> {
    for (let pass = 0; pass < MOST_PASSES; pass++) {
      // Edits come in several commands, and the engine drops what is asked while it still reports the last result.
      await new Promise((resolve) => setTimeout(resolve));
      const dirtyRanges = [...this.dirty.splice(0), ...this.changedSpills()];
      if (dirtyRanges.length === 0) return;
      const applied = this.api.getFormula().onCalculationResultApplied();
      const rest = {
        dirtyNameMap: {},
        dirtyDefinedNameMap: {},
        dirtySuperTableMap: {},
        dirtyUnitFeatureMap: {},
        dirtyUnitOtherFormulaMap: {},
        clearDependencyTreeCache: {},
        forceCalculation: false,
      };
      await this.api.executeCommand(START, { dirtyRanges, ...rest }, { onlyLocal: true });
      await applied;
    }
  }

  /** Where spills cover other cells than at the last look: what they cover now and what they covered before. */
  private changedSpills(): IUnitRange[] {
    const now = this.model.spills();
    const changed: Spill[] = [];
    for (const [key, spill] of now) {
      const before = this.spills.get(key);
      if (before && sameArea(before, spill)) continue;
      changed.push(spill, ...(before ? [before] : []));
    }
    for (const [key, spill] of this.spills) if (!now.has(key)) changed.push(spill);
    if (changed.length > 0) this.know(now);
    return changed.map(({ sheetId, range }) => ({ unitId: UNIT, sheetId, range }));
  }

  private know(spills: Map<string, Spill>): void {
    this.spills = spills;
    knowSpills([...spills].map(([key, { range }]) => [key, range]));
  }
}

function sameArea({ range: a }: Spill, { range: b }: Spill): boolean {
  return a.endRow === b.endRow && a.endColumn === b.endColumn;
}
