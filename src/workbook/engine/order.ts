import { inOrder } from "./components";
import type { Formula } from "./formula";

/** The formulas in the order of calculation, and which of them are to run. */
export class Order {
  /** Formulas that read each other, circle by circle. */
  circles: readonly (readonly Formula[])[] = [];
  formulas: readonly Formula[] = [];
  private next = 0;
  private holds = false;

  /** Formulas or what they read are others than before. */
  changed(): void {
    this.holds = false;
  }

  want(formula: Formula): void {
    formula.wanted = true;
    if (formula.rank < this.next) this.next = formula.rank;
  }

  /** Has `reader` run after `read`, which it was not known to read before. */
  follow(reader: Formula, read: Formula): void {
    if (reader.rank <= read.rank && !(reader.circle && read.circle)) this.holds = false;
  }

  /** The next formula that is to run; `all` and what they read are asked for when the order holds no more. */
  take(all: () => readonly Formula[], readBy: (formula: Formula) => readonly Formula[]): Formula | undefined {
    if (!this.holds) this.sort(all(), readBy);
    while (this.next < this.formulas.length && !this.formulas[this.next]?.wanted) this.next++;
    const formula = this.formulas[this.next];
    if (formula) formula.wanted = false;
    return formula;
  }

  private sort(all: readonly Formula[], readBy: (formula: Formula) => readonly Formula[]): void {
    const { order, circles } = inOrder(all, readBy);
    const before = new Set(this.circles.flat());
    order.forEach((formula, rank) => {
      formula.rank = rank;
      formula.circle = undefined;
    });
    for (const circle of circles) {
      for (const formula of circle) {
        formula.circle = circle;
        if (!before.delete(formula)) formula.wanted = true;
      }
    }
    // Whoever has left a circle can be calculated again.
    for (const formula of before) formula.wanted = true;
    this.circles = circles;
    this.formulas = order;
    this.next = 0;
    this.holds = true;
  }
}
