/** Letters of a word that tell what it is about: "electrician" and "electrical" share them, as do "permit" and "permits". */
const STEM = 5;

/** Words of the trade that stand in every sentence and tell no work from another. */
const TELL_NOTHING = new Set(
  (
    "about above after along around basin before below being between black brown build built clear close depth digging " +
    "everything extra feature first fitting garden green ground installed inches large liner named needed other outside over " +
    "place point price pump small stone stream their there these under unless water where which white within without works"
  )
    .split(" ")
    .map((word) => word.slice(0, STEM)),
);

/** An exclusion that draws its own line leaves what lies before it in the price. */
const DRAWS_ITS_LINE = /\b(?:beyond|other than)\b/i;

/** A line that is priced and a sentence that excludes it. */
export interface ScopeClash {
  readonly excluded: string;
  readonly priced: string;
}

/**
 * Finds work that a quote both prices and excludes.
 *
 * A priced line and an exclusion are about the same work when they share the first 5 letters of a word of 5 or more, words that
 * every sentence of the trade holds left aside. An exclusion with "beyond" or "other than" in it says itself what it leaves in.
 *
 * @param excluded sentences that say what is not in the price
 * @param priced what the priced lines are called; blank ones are passed over
 * @returns every clash, exclusions in their order
 * @example scopeClashes(["Permits."], ["Building permit"])[0]?.priced => "Building permit"; both have "permi"
 *
 * Source: common practice, no source
 */
export function scopeClashes(excluded: readonly string[], priced: readonly string[]): ScopeClash[] {
  return excluded
    .filter((sentence) => !DRAWS_ITS_LINE.test(sentence))
    .flatMap((sentence) => {
      const about = stems(sentence);
      return priced
        .filter((line) => [...stems(line)].some((stem) => about.has(stem)))
        .map((line) => ({ excluded: sentence, priced: line }));
    });
}

function stems(text: string): Set<string> {
  const words = text.toLowerCase().match(/\p{L}+/gu) ?? [];
  const stems = words.filter((word) => word.length >= STEM).map((word) => word.slice(0, STEM));
  return new Set(stems.filter((stem) => !TELL_NOTHING.has(stem)));
}
