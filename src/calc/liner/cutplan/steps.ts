/**
 * The search counts in whole nanometres: every inch fraction down to 1/64 is a whole number of them, sums are exact,
 * and two 5 ft pieces fit a 10 ft roll without a tolerance.
 */
const PER_METRE = 1e9;

/** What binary fractions may be off by, in steps. */
const OFF = 1e-3;

/** A piece's side as whole steps. What is less than a step is dropped, so that pieces that fill a roll still do. */
export function toSteps(metres: number): number {
  return Math.floor(metres * PER_METRE + OFF);
}

/** A roll's side as whole steps, a begun step counted in; endless stays endless. */
export function toRoom(metres: number): number {
  return Math.ceil(metres * PER_METRE - OFF);
}

/** Steps as metres. */
export function toMetres(steps: number): number {
  return steps / PER_METRE;
}
