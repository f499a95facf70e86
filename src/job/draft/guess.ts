/** What a rule says of a fact that nobody has typed. */
export interface Guess<T> {
  /** Likely value. */
  readonly value: T;
  /** One site in ten lies below `low`, one in ten above `high`; left out where the value is a choice and not a doubt. */
  readonly low?: T;
  readonly high?: T;
  /** Why, in one sentence that a contractor reads. */
  readonly reason: string;
  /** Where the rule comes from; common practice where left out. */
  readonly source?: string;
  /** The value at a place of the normal curve, where it is no number that can be drawn between low and high. */
  readonly at?: (place: number) => T;
}

export const COMMON_PRACTICE = "rule of thumb";

/** How many standard deviations from the middle of the normal curve its lowest and highest tenth begin. */
export const TENTH = 1.2815515655446004;

/** From here on a word gives way to the next one: a quarter of the curve lies beyond. */
const QUARTER = 0.6744897501960817;

/**
 * The value at a place of the normal curve, so that `low` stands at its lowest tenth and `high` at its highest. Positive
 * numbers run in proportion, so that none falls below zero; words change at the outer quarters.
 */
export function valueAt<T>(guess: Guess<T>, place: number): T {
  if (place === 0) return guess.value;
  if (guess.at) return guess.at(place);
  const { value } = guess;
  const side = place < 0 ? guess.low : guess.high;
  if (side === undefined) return value;
  if (typeof value !== "number" || typeof side !== "number") return Math.abs(place) > QUARTER ? side : value;
  const steps = Math.abs(place) / TENTH;
  const numberAt = value > 0 && side > 0 ? value * (side / value) ** steps : value + (side - value) * steps;
  return numberAt as T;
}

/** Whether a guess is in doubt at all. */
export function isDoubtful({ value, low, high, at }: Guess<unknown>): boolean {
  return at !== undefined || (low !== undefined && low !== value) || (high !== undefined && high !== value);
}
