import type { Edit } from "../work/work";
import type { Content } from "../work/content";

/**
 * Remembers which cells were touched since the file was opened. What they hold is asked for when it is needed,
 * so that undo and redo need no bookkeeping.
 */
export class Edits {
  private readonly touched = new Map<string, { sheet: string; row: number; column: number }>();

  constructor(
    private readonly now: (sheet: string, row: number, column: number) => Content,
    private readonly original: (sheet: string, row: number, column: number) => Content,
    private readonly form: (sheet: string, row: number, column: number) => string | undefined,
  ) {}

  touch(sheet: string, row: number, column: number): void {
    this.touched.set(`${sheet}!${row},${column}`, { sheet, row, column });
  }

  /** The touched cells that differ from the file. */
  list(): Edit[] {
    return [...this.differing()];
  }

  /** Whether any cell differs from the file. */
  get any(): boolean {
    return this.differing().next().done === false;
  }

  private *differing(): Generator<Edit> {
    for (const { sheet, row, column } of this.touched.values()) {
      const content = this.now(sheet, row, column);
      if (content === this.original(sheet, row, column)) continue;
      const form = content === "" ? undefined : this.form(sheet, row, column);
      yield { sheet, row, column, content, ...(form === undefined ? {} : { form }) };
    }
  }
}
