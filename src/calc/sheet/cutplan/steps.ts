/**
 * The search counts in whole nanometres: every inch fraction down to 1/64 is a whole number of them, sums are exact,
 * and two 5 ft pieces fit a 10 ft roll without a tolerance.
 */
const PER_METRE = 1e9;

/** Metres as whole steps; endless stays endless. */
export function toSteps(metres: number): number {
  return metres === Infinity ? Infinity : Math.round(metres * PER_METRE);
}

/** Steps as metres. */
export function toMetres(steps: number): number {
  return steps / PER_METRE;
}
