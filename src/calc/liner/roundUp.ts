/** Rounding noise of sums in binary, as a share of a step; far below anything a tape can read. */
const NOISE = 1e-9;

/**
 * How many whole steps cover a value; a value that is a whole number of steps on paper gains none.
 *
 * @example stepsFor(2.3, 0.5) => 5; 2.3 / 0.5 = 4.6
 */
export function stepsFor(value: number, step: number): number {
  return Math.ceil(value / step - NOISE);
}

/**
 * A length rounded up to a multiple of `step`; a step of 0 leaves it as it is.
 *
 * @example roundUpTo(2.3, 0.5) => 2.5; five steps
 */
export function roundUpTo(value: number, step: number): number {
  return step === 0 ? value : stepsFor(value, step) * step;
}
