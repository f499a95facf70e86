import { distance } from "fastest-levenshtein";

/** Order numbers and item codes are compared without regard to case and spacing. */
export function codeKey(code: string | undefined): string {
  if (code === undefined) return "";
  return (/\s/.test(code) ? code.trim().replace(/\s+/g, " ") : code).toLowerCase();
}

/** A code by its letters and digits alone: HB-104, HB 104 and hb104 are one; 1/2 and 12 are two. */
export function bareCode(code: string): string {
  return codeKey(code).replace(/(?<!\d)[./,]|[./,](?!\d)|[^\p{L}\p{N}./,]/gu, "");
}

/** Looking for slips of the pen stops being useful, and cheap, in longer lists. */
const MOST_CANDIDATES = 100;
/** Words shorter than this name nothing by themselves. */
const TELLING_WORD = 4;

/** The codes of an order, for finding the one that is meant by a code it does not have. */
export class KnownCodes {
  private readonly byBareCode = new Map<string, string>();
  private readonly byWords = new Map<string, string>();

  constructor(codes: readonly string[]) {
    for (const code of codes) {
      if (bareCode(code) !== "") this.byBareCode.set(bareCode(code), this.byBareCode.get(bareCode(code)) ?? code);
      if (wordsKey(code) !== "") this.byWords.set(wordsKey(code), this.byWords.get(wordsKey(code)) ?? code);
    }
  }

  /**
   * The code that differs least: by spaces, marks or case, by the order of its words, by a slip or two, or because one
   * name says more than the other ("gravel", "river gravel"), where only one such name is known.
   */
  likely(wrong: string): string | undefined {
    const same = this.byBareCode.get(bareCode(wrong)) ?? this.byWords.get(wordsKey(wrong));
    if (same !== undefined) return same;
    if (this.byBareCode.size > MOST_CANDIDATES) return undefined;
    return this.nearest(bareCode(wrong)) ?? this.fuller(wrong);
  }

  private nearest(target: string): string | undefined {
    let best: string | undefined;
    let least = target.length < 6 ? 2 : target.length < 15 ? 3 : 4;
    for (const [bare, code] of this.byBareCode) {
      const slips = Math.abs(bare.length - target.length) < least ? distance(target, bare) : Infinity;
      // Of a short code, as many slips as letters are another code.
      if (slips >= least || slips >= target.length) continue;
      least = slips;
      best = code;
    }
    return best;
  }

  private fuller(wrong: string): string | undefined {
    const words = wordsOf(wrong);
    const found = [...this.byWords.values()].filter((code) => {
      const other = wordsOf(code);
      const [few, many] = words.length < other.length ? [words, other] : [other, words];
      return few.every((word) => many.includes(word)) && few.some((word) => word.length >= TELLING_WORD);
    });
    return found.length === 1 ? found[0] : undefined;
  }
}

function wordsOf(code: string): string[] {
  return codeKey(code)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
}

function wordsKey(code: string): string {
  return wordsOf(code).sort().join(" ");
}
