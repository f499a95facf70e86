/** Draws that every range is made of: the ends of an 80 % range come out within a percent of its width. */
export const DRAWS = 12_000;

const made = new Map<string, Float64Array>();

/**
 * Numbers of the normal curve that belong to a name, the same in every run: one from each of as many equal slices, in an
 * order that the name decides.
 */
export function normalsFor(name: string, count = DRAWS): Float64Array {
  const key = `${count} ${name}`;
  const known = made.get(key);
  if (known) return known;
  const numbers = Float64Array.from({ length: count }, (_, slice) => inverseNormal((slice + 0.5) / count));
  const random = generator(key);
  for (let last = count - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    const kept = numbers[last] ?? 0;
    numbers[last] = numbers[other] ?? 0;
    numbers[other] = kept;
  }
  made.set(key, numbers);
  return numbers;
}

/** Numbers from 0 to 1 that look random: Mulberry32 (T. Ettinger, public domain), its seed hashed from a name by FNV-1a. */
export function generator(name: string): () => number {
  let state = 0x811c9dc5;
  for (const letter of name) state = Math.imul(state ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * The place on the normal curve below which a share of it lies. Rational approximation, relative error below 1.2e-9
 * (P. J. Acklam, An algorithm for computing the inverse normal cumulative distribution function, 2003; from memory).
 */
export function inverseNormal(share: number): number {
  const tail = 0.02425;
  if (share < tail) return tailPlace(Math.sqrt(-2 * Math.log(share)));
  if (share > 1 - tail) return -tailPlace(Math.sqrt(-2 * Math.log(1 - share)));
  const q = share - 0.5;
  const r = q * q;
  const top =
    ((((-39.69683028665376 * r + 220.9460984245205) * r - 275.9285104469687) * r + 138.357751867269) * r -
      30.66479806614716) *
      r +
    2.506628277459239;
  const below =
    ((((-54.47609879822406 * r + 161.5858368580409) * r - 155.6989798598866) * r + 66.80131188771972) * r -
      13.28068155288572) *
      r +
    1;
  return (top * q) / below;
}

function tailPlace(q: number): number {
  const top =
    ((((-0.007784894002430293 * q - 0.3223964580411365) * q - 2.400758277161838) * q - 2.549732539343734) * q +
      4.374664141464968) *
      q +
    2.938163982698783;
  const below =
    (((0.007784695709041462 * q + 0.3224671290700398) * q + 2.445134137142996) * q + 3.754408661907416) * q + 1;
  return top / below;
}
