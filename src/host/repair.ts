/** A formula of ours that lost its binding, as a host can enter it again; undefined when it is sound. */
export function repairedFormula(formula: string, shown: unknown): string | undefined {
  const unbound = /_xldudf_RILL_/i.test(formula) || (/(?<![\w.])RILL\./i.test(formula) && shown === "#NAME?");
  if (!unbound) return undefined;
  return formula.replace(/_xldudf_RILL_/gi, "RILL.").replace(/@(?=RILL\.)/gi, "");
}
