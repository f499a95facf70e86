import type { Formula } from "./formula";

interface Visit {
  readonly formula: Formula;
  readonly reads: readonly Formula[];
  next: number;
}

/**
 * Formulas in an order in which each comes after those it reads, and the circles among them: Tarjan's strongly connected
 * components, with a stack of its own, because a chain of formulas may be longer than the machine's.
 */
export function inOrder(
  formulas: Iterable<Formula>,
  readBy: (formula: Formula) => readonly Formula[],
): { readonly order: Formula[]; readonly circles: Formula[][] } {
  const order: Formula[] = [];
  const circles: Formula[][] = [];
  const index = new Map<Formula, number>();
  const low = new Map<Formula, number>();
  const open: Formula[] = [];
  const isOpen = new Set<Formula>();
  const visits: Visit[] = [];
  const enter = (formula: Formula): void => {
    index.set(formula, index.size);
    low.set(formula, index.size - 1);
    open.push(formula);
    isOpen.add(formula);
    visits.push({ formula, reads: readBy(formula), next: 0 });
  };
  const lower = (formula: Formula, to: number): void => void low.set(formula, Math.min(low.get(formula) ?? to, to));
  for (const root of formulas) {
    if (index.has(root)) continue;
    enter(root);
    for (let visit = visits.at(-1); visit; visit = visits.at(-1)) {
      const { formula, reads } = visit;
      const read = reads[visit.next++];
      if (read) {
        if (!index.has(read)) enter(read);
        else if (isOpen.has(read)) lower(formula, index.get(read) ?? 0);
        continue;
      }
      visits.pop();
      const above = visits.at(-1);
      if (above) lower(above.formula, low.get(formula) ?? 0);
      if (low.get(formula) !== index.get(formula)) continue;
      const together = open.splice(open.lastIndexOf(formula));
      for (const one of together) isOpen.delete(one);
      order.push(...together);
      if (together.length > 1 || reads.includes(formula)) circles.push(together);
    }
  }
  return { order, circles };
}
