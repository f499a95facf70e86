/** A pasted table whose first row names its columns, set against the headings of the table it is to go into. */
export interface ByHeadings {
  /** For each heading of the table here, counted from 0, the pasted column that goes under it; undefined where none does. */
  readonly from: readonly (number | undefined)[];
  /** Pasted headings that no column here has. */
  readonly leftOut: readonly string[];
}

/** Headings that must be known before a row is taken for one of headings. */
const FEWEST = 2;
const SAME: Readonly<Record<string, string>> = {
  qty: "quantity",
  uom: "unit",
  description: "what",
  pricelist: "price",
};

/**
 * Matches the first row of a pasted table with headings; undefined where it is no row of headings, or where the columns stand
 * in the same order anyway.
 */
export function matchHeadings(pasted: readonly string[], here: readonly string[]): ByHeadings | undefined {
  const [theirs, ours] = [pasted.map(plain), here.map(plain)];
  const taken = new Set<number>();
  const from = ours.map((heading) => {
    if (heading === "") return undefined;
    const exact = theirs.findIndex((one, index) => one === heading && !taken.has(index));
    const at =
      exact >= 0
        ? exact
        : theirs.findIndex((one, index) => one.length > 2 && heading.startsWith(one) && !taken.has(index));
    if (at < 0) return undefined;
    taken.add(at);
    return at;
  });
  const leftOut = pasted.filter((heading, index) => heading.trim() !== "" && !taken.has(index));
  return taken.size < FEWEST ? undefined : { from, leftOut };
}

/** A heading without its unit, its case and its signs. */
function plain(heading: string): string {
  const letters = heading
    .replace(/\([^)]*\)/g, "")
    .toLowerCase()
    .replace(/[^a-z]/g, "");
  return SAME[letters] ?? letters;
}
