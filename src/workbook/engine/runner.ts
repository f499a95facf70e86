import { catalogue } from "../../functions/catalogue";
import { nameOf, type Formula, type Read } from "./formula";
import { worksheetFunctions } from "./functions";
import { EvalSession, evaluateFormula, evaluateFormulaRaw } from "./library";
import type { CompiledFormula, EvalContext, WorkbookSnapshot } from "./library";
import { rowsOf, type Held } from "./values";

/** Runs single formulas in the calculating library, and keeps the sentences behind errors. */
export class Runner {
  /** Why cells are in error, by "Sheet!B7". */
  readonly reasons = new Map<string, string>();
  private readonly session = new EvalSession();
  private readonly context: EvalContext;
  /** Formulas that a sum of sums must leave out; the library asks for them. */
  private readonly subtotals = new Map<string, CompiledFormula>();
  private current = "";

  constructor(snapshot: WorkbookSnapshot) {
    this.context = {
      snapshot,
      compiledFormulas: this.subtotals,
      currentSheet: "",
      userFunctions: worksheetFunctions(catalogue, (reason) => this.reasons.set(this.current, reason)),
    };
    // The library makes a key for every cell it reads, to look spills up that are kept in cells here.
    this.session.makeKey = () => ONE_KEY;
  }

  /** What a formula comes to now. */
  run(formula: Formula): Held[][] {
    const { compiled, spilling } = formula;
    // The formula of a rule stands in no cell, and is no reason for what its first cell shows.
    this.current = formula.told ? "" : nameOf(formula);
    this.reasons.delete(this.current);
    if (!compiled) return [[{ error: "#NAME?" }]];
    this.session.resultCache.delete(ONE_KEY);
    this.session.nameCache.clear();
    let rows: Held[][];
    try {
      rows = rowsOf((spilling ? evaluateFormulaRaw : evaluateFormula)(compiled, this.context, this.session));
    } catch {
      // Too deep for the machine, say.
      rows = [[{ error: "#CALC!" }]];
    }
    if (compiled.isSubtotalOutput) this.keepSubtotal(formula, compiled);
    return spilling ? rows : [[rows[0]?.[0] ?? 0]];
  }

  /** A formula that follows from itself has no result. */
  inCircle(formula: Formula): Held[][] {
    const others = formula.circle?.filter((one) => one !== formula).map(nameOf) ?? [];
    this.explain(
      formula,
      others.length === 0
        ? "This formula reads its own cell, so it has no result; let it read another."
        : `This formula reads itself by way of ${listed(others)}, so none of them has a result; let one of them read another cell.`,
    );
    return [[{ error: "#REF!" }]];
  }

  explain(formula: Formula, reason: string): void {
    if (!formula.told) this.reasons.set(nameOf(formula), reason);
  }

  forget(formula: Formula): void {
    const { sheet, row, column } = formula;
    this.reasons.delete(nameOf(formula));
    this.subtotals.delete(`${sheet}!${row}:${column}`);
  }

  /** For a formula that finds its cells while it runs: gives, once it ran, those it was not known to read. */
  noteReads({ compiled, reads }: Formula): (() => Read[]) | undefined {
    if (!compiled?.hasDynamicRefs) return undefined;
    this.session.dynamicDeps.clear();
    return () => {
      const known = new Set(reads.map(({ sheet, block }) => `${sheet}!${block.top}:${block.left}`));
      const found = [...(this.session.dynamicDeps.get(ONE_KEY) ?? [])].filter((key) => !known.has(key));
      return found.map((key) => {
        const [, sheet = "", row, column] = /^(.*)!(\d+):(\d+)$/.exec(key) ?? [];
        return { sheet, block: { top: Number(row), left: Number(column), bottom: Number(row), right: Number(column) } };
      });
    };
  }

  private keepSubtotal({ sheet, row, column }: Formula, compiled: CompiledFormula): void {
    const result = this.session.resultCache.get(ONE_KEY);
    if (!result) return;
    this.subtotals.set(`${sheet}!${row}:${column}`, compiled);
    this.session.resultCache.set(`${sheet}!${row}:${column}`, result);
  }
}

const ONE_KEY = "";
const MOST_LISTED = 6;

function listed(cells: readonly string[]): string {
  const more = cells.length - MOST_LISTED;
  return cells.slice(0, MOST_LISTED).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
