/** Why a calculation cannot answer: a wrong value, or something looked up that does not exist. */
export type ProblemKind = "value" | "missing";

/**
 * The one error the calculations throw.
 * Its message is read by a user in a cell: it names the argument, what was wrong and what would be right.
 */
export class Problem extends Error {
  constructor(
    readonly kind: ProblemKind,
    message: string,
  ) {
    super(message);
    this.name = "Problem";
  }
}

/**
 * A value that cannot be right; shows as #VALUE! with its sentence.
 *
 * @example invalid("give a wider lip").message => "give a wider lip"; by definition
 */
export function invalid(sentence: string): Problem {
  return new Problem("value", sentence);
}

/**
 * Something that was looked up or asked for and does not exist; shows as #N/A with its sentence.
 *
 * @example missing("no pipe of 7 in").kind => "missing"; by definition
 */
export function missing(sentence: string): Problem {
  return new Problem("missing", sentence);
}

/**
 * What `work` gives; a problem in it is told as that of `part`, as in "run 2: flow must fit the bed".
 *
 * @example ofPart("pipes row 2", () => 3 + 4) => 7; by definition
 */
export function ofPart<T>(part: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw error instanceof Problem ? new Problem(error.kind, `${part}: ${error.message}`) : error;
  }
}

/**
 * Throws unless `value` is a finite number; guards every public calculation against silent NaN.
 *
 * @example requireFinite("width", 2.5) => 2.5; by definition
 */
export function requireFinite(name: string, value: number): number {
  if (!Number.isFinite(value)) throw invalid(`${name} must be a finite number`);
  return value;
}

/** The share of a limit by which the binary digits of a converted unit may overstep it: 131 °F is 55.000000000000007 °C. */
const CONVERSION_NOISE = 1e-12;

/**
 * Throws unless `value` (in SI) lies from `low` to `high`, both allowed.
 *
 * @example requireRange("width", 2.5, 1, 3, "m") => 2.5; by definition
 */
export function requireRange(name: string, value: number, low: number, high: number, unit = ""): number {
  requireFinite(name, value);
  if (value < low - CONVERSION_NOISE * Math.abs(low) || value > high + CONVERSION_NOISE * Math.abs(high)) {
    const suffix = unit ? ` ${unit}` : "";
    throw invalid(`${name} must be ${low} to ${high}${suffix}; got ${plain(value)}${suffix}`);
  }
  return value;
}

/**
 * A number as a person would write it in a sentence: at most six significant digits, no trailing noise.
 *
 * @example plain(0.1 + 0.2) => "0.3"; six digits
 */
export function plain(value: number): string {
  if (!Number.isFinite(value)) return String(value);
  const rounded = Number(value.toPrecision(6));
  return Math.abs(rounded) >= 1e9 || (rounded !== 0 && Math.abs(rounded) < 1e-4)
    ? rounded.toExponential()
    : String(rounded);
}
