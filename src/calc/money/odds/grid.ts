/** Chances of sums on evenly spaced values: the chance of (from + i) × step is masses[i]. */
export interface Grid {
  readonly from: number;
  readonly masses: Float64Array;
}

/** Ends whose chances are smaller carry nothing a cent would show. */
const NEGLIGIBLE = 1e-13;

/** Chances of single values, laid on the grid so that mean and variance stay what they are. */
export function layOnGrid(values: Float64Array, weights: Float64Array, step: number): Grid {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const from = Math.round(least / step) - 1;
  const masses = new Float64Array(Math.round(most / step) - from + 2);
  for (let index = 0; index < values.length; index++) {
    const place = (values[index] ?? 0) / step;
    const nearest = Math.round(place);
    const off = place - nearest;
    const weight = weights[index] ?? 0;
    const at = nearest - from;
    masses[at - 1] = (masses[at - 1] ?? 0) + (weight * (off * off - off)) / 2;
    masses[at] = (masses[at] ?? 0) + weight * (1 - off * off);
    masses[at + 1] = (masses[at + 1] ?? 0) + (weight * (off * off + off)) / 2;
  }
  return { from, masses };
}

/** Chances of the sum of two independent amounts. */
export function convolve(a: Grid, b: Grid): Grid {
  const masses = new Float64Array(a.masses.length + b.masses.length - 1);
  const [long, short] = a.masses.length >= b.masses.length ? [a.masses, b.masses] : [b.masses, a.masses];
  for (let at = 0; at < short.length; at++) {
    const mass = short[at] ?? 0;
    if (mass === 0) continue;
    for (let index = 0; index < long.length; index++) {
      masses[at + index] = (masses[at + index] ?? 0) + mass * (long[index] ?? 0);
    }
  }
  let first = 0;
  let end = masses.length;
  while (first < end - 1 && Math.abs(masses[first] ?? 0) < NEGLIGIBLE) first++;
  while (end > first + 1 && Math.abs(masses[end - 1] ?? 0) < NEGLIGIBLE) end--;
  return { from: a.from + b.from + first, masses: masses.subarray(first, end) };
}

/** The chance of staying at or below a value, from chances added up; each stands for the step around its value. */
export function chanceBelow({ from, masses: sums }: Grid, step: number, value: number): number {
  const place = value / step - from + 0.5;
  if (place <= 0) return 0;
  if (place >= sums.length) return sums[sums.length - 1] ?? 1;
  const index = Math.floor(place);
  const before = index === 0 ? 0 : (sums[index - 1] ?? 0);
  return before + (place - index) * ((sums[index] ?? 0) - before);
}

/** Chances added up from the first. */
export function addedUp({ from, masses }: Grid): Grid {
  let sum = 0;
  return { from, masses: masses.map((mass) => (sum += mass)) };
}
