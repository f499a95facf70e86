/** A formula, with or without its "=". */
export function bare(formula: string): string {
  return formula.startsWith("=") ? formula.slice(1) : formula;
}

/** TRUE while one of the needed cells or ranges holds no number. */
export function anyBlank(needs: readonly string[]): string {
  const counts = needs.map((need) => `COUNT(${need})`).join(",");
  return needs.length === 1 ? `${counts}=0` : `MIN(${counts})=0`;
}

/** The formula, or nothing while what it needs is still blank. */
export function whenFilled(formula: string, needs: readonly string[] | undefined, otherwise = '""'): string {
  return needs === undefined || needs.length === 0
    ? `=${bare(formula)}`
    : `=IF(${anyBlank(needs)},${otherwise},${bare(formula)})`;
}
