import type { IFormulaDependencyTree } from "@univerjs/engine-formula";
import type { Formula } from "./graph";

/**
 * The formulas still to run, as the engine takes them off the end of a list. It grows while they run: readers of a
 * formula join it only if the formula came to something else than before.
 */
export class Remaining {
  private readonly wanted: Uint8Array;
  private next = 0;
  private ran: Formula | undefined;

  constructor(
    private readonly order: readonly Formula[],
    first: (formula: Formula) => boolean,
    private readonly cameToAnother: (tree: IFormulaDependencyTree) => boolean,
  ) {
    this.wanted = Uint8Array.from(order, (formula) => (first(formula) ? 1 : 0));
  }

  /** 0 when nothing is left; how many are left is not known before they ran. */
  get length(): number {
    this.advance();
    return this.next < this.order.length ? 1 : 0;
  }

  pop(): IFormulaDependencyTree | undefined {
    this.advance();
    this.ran = this.order[this.next];
    this.next++;
    return this.ran?.tree;
  }

  private advance(): void {
    if (this.ran && this.ran.readers.length > 0 && this.cameToAnother(this.ran.tree)) {
      for (const reader of this.ran.readers) this.wanted[reader] = 1;
    }
    this.ran = undefined;
    while (this.next < this.order.length && this.wanted[this.next] === 0) this.next++;
  }
}
