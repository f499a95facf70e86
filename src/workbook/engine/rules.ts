import { treeOf } from "./formula";
import { TYPE } from "./moved";
import type { Engine } from "./engine";
import { shown, type Held } from "./values";
import type { Block } from "./block";
import type { CellValue } from "../model";

/** A formula of a sheet's rule: it is written for the first cell of its first block, and moves with each cell. */
export interface RuleText {
  readonly id: string;
  readonly sheet: string;
  /** As a person types it, without "=". */
  readonly text: string;
  readonly blocks: readonly Block[];
}

/** What a rule's formula comes to for some cells, counted from the first cell of its first block. */
export interface RuleResult {
  readonly id: string;
  readonly cells: readonly { readonly down: number; readonly across: number }[];
  readonly rows: CellValue[][];
}

interface Watched {
  readonly key: string;
  readonly users: Map<string, { down: number; across: number }[]>;
  rows: CellValue[][] | undefined;
}

/**
 * The formulas of rules: which cells are marked, what may be typed, what a list offers. A formula that reads the same cells
 * for many cells of a rule, or of several rules, runs once for all of them.
 */
export class Rules {
  private readonly watched = new Map<string, Watched>();
  private readonly byRule = new Map<string, Set<Watched>>();
  private readonly changed = new Set<Watched>();
  private readonly asked = new Set<string>();

  constructor(private readonly engine: Engine) {}

  watch({ id, sheet, text, blocks }: RuleText): void {
    this.unwatch(id);
    const [first] = blocks;
    if (!first) return;
    const { rows: movesDown, columns: movesAcross } = movesWith(text);
    const mine = new Set<Watched>();
    this.byRule.set(id, mine);
    for (const { top, left, bottom, right } of blocks) {
      for (let row = top; row <= bottom; row++) {
        for (let column = left; column <= right; column++) {
          const at = { down: row - first.top, across: column - first.left };
          const by = [movesDown ? at.down : 0, movesAcross ? at.across : 0] as const;
          const key = `${sheet}!${movesDown ? first.top : ""}:${movesAcross ? first.left : ""}:${by.join(":")}:${text}`;
          const one = this.known(key) ?? this.begin(key, { sheet, row: first.top, column: first.left, text, by });
          mine.add(one);
          const cells = one.users.get(id);
          if (cells) cells.push(at);
          else one.users.set(id, [at]);
        }
      }
    }
    this.asked.add(id);
  }

  unwatch(id: string): void {
    for (const one of this.byRule.get(id) ?? []) {
      one.users.delete(id);
      if (one.users.size > 0) continue;
      this.engine.unwatch(one.key);
      this.watched.delete(one.key);
      this.changed.delete(one);
    }
    this.byRule.delete(id);
    this.asked.delete(id);
  }

  /** Tells what a rule comes to once more. */
  ask(id: string): void {
    if (this.byRule.has(id)) this.asked.add(id);
  }

  /** What came to another value since the last time, or was asked for. */
  takeResults(): RuleResult[] {
    const results: RuleResult[] = [];
    const tell = (id: string, { users, rows }: Watched): void => {
      const cells = users.get(id);
      if (cells && rows) results.push({ id, cells, rows });
    };
    for (const one of this.changed) for (const id of one.users.keys()) if (!this.asked.has(id)) tell(id, one);
    for (const id of this.asked) for (const one of this.byRule.get(id) ?? []) tell(id, one);
    this.changed.clear();
    this.asked.clear();
    return results;
  }

  private known(key: string): Watched | undefined {
    return this.watched.get(key);
  }

  private begin(key: string, formula: Omit<Parameters<Engine["watch"]>[1], "told">): Watched {
    const one: Watched = { key, users: new Map(), rows: undefined };
    this.watched.set(key, one);
    const told = (rows: Held[][]): void => {
      const now = rows.map((row) => row.map(shown));
      if (one.rows && JSON.stringify(one.rows) === JSON.stringify(now)) return;
      one.rows = now;
      this.changed.add(one);
    };
    this.engine.watch(key, { ...formula, told });
    return one;
  }
}

/** Whether a formula reads other cells when it is copied down, and across. */
function movesWith(text: string): { rows: boolean; columns: boolean } {
  const moves = { rows: false, columns: false };
  const look = (part: unknown): void => {
    if (Array.isArray(part)) return part.forEach(look);
    if (typeof part !== "object" || part === null) return;
    const { type, rowAbsolute, colAbsolute } = part as { type?: number; rowAbsolute?: boolean; colAbsolute?: boolean };
    if (type === TYPE.cell) {
      moves.rows ||= rowAbsolute === false;
      moves.columns ||= colAbsolute === false;
    }
    Object.values(part).forEach(look);
  };
  look(treeOf(text));
  return moves;
}
