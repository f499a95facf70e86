import { invalid, plain } from "./problem";

/** How close the root must be, as a share of itself. */
const RELATIVE_TOLERANCE = 1e-12;
const MOST_STEPS = 200;
/** The narrowest bracket, as a share of the first one. */
const SMALLEST_SHARE = 1e-30;

/**
 * The one root finder of the calculations: the x from `low` to `high` where `f` is zero.
 *
 * The root stays enclosed at every step: inverse quadratic interpolation where it is safe, halving elsewhere.
 * Ends when the bracket is narrower than `relative` × |x| (an absolute tolerance would be wrong for a slope of
 * 0.0009 and wasteful for a flow of 900), and after 200 steps at the latest, so it cannot loop for ever.
 *
 * @param what names the unknown in sentences: "the water level"
 * @returns the end of the last bracket whose residual is smaller
 * @throws Problem when f has the same sign at both ends, is not a number somewhere, or the steps run out
 * @example solveBracketed((x) => x * x - 2, 0, 2, "side") => 1.414214; √2
 *
 * Source: T. R. Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear
 * function without using derivatives", Advances in Engineering Software 28 (1997) 145-149.
 */
export function solveBracketed(
  f: (x: number) => number,
  low: number,
  high: number,
  what: string,
  relative = RELATIVE_TOLERANCE,
): number {
  if (!Number.isFinite(low) || !Number.isFinite(high) || low >= high) {
    throw invalid(`${what} cannot be looked for between ${plain(low)} and ${plain(high)}; the first must be smaller`);
  }
  // A root at 0 has no relative tolerance; this is where halving towards it ends.
  const floor = SMALLEST_SHARE * (high - low);

  let a = low;
  let b = high;
  let fa = evaluate(f, a, what);
  let fb = evaluate(f, b, what);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0)
    throw invalid(`${what} has no answer between ${plain(low)} and ${plain(high)} for these values`);

  // Each step looks at x = a + share × (b - a); b and fb always lie on the other side of zero.
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step++) {
    const x = a + share * (b - a);
    const fx = evaluate(f, x, what);
    let c: number;
    let fc: number;
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;

    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    if (fa === 0) return a;
    const narrow = (relative * Math.abs(best) + floor) / Math.abs(b - a);
    if (narrow >= 1) return best;

    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    share =
      phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5;
    // Never so close to an end that the bracket stops shrinking.
    share = Math.min(1 - narrow / 2, Math.max(narrow / 2, share));
  }
  throw invalid(`${what} was not found within ${MOST_STEPS} steps for these values`);
}

function evaluate(f: (x: number) => number, x: number, what: string): number {
  const value = f(x);
  if (Number.isNaN(value)) throw invalid(`${what} cannot be worked out: its equation has no value at ${plain(x)}`);
  return value;
}
