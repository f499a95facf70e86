import { invalid } from "../problem";

/** Denominators a tape is divided in. */
export const TAPE_FRACTIONS = [1, 2, 4, 8, 16, 32, 64] as const;

/**
 * A length as feet, inches and the nearest fraction of an inch: `2'-6 1/2"`.
 * Rounds half away from zero and carries: 11.99 in to the nearest 1/16 is `1'-0"`, never `0'-12"`.
 *
 * @example formatFeetInches(0.7747) => "2'-6 1/2\""; 30.5 in
 */
export function formatFeetInches(metres: number, nearest = 16): string {
  if (!(TAPE_FRACTIONS as readonly number[]).includes(nearest)) {
    throw invalid(`nearest must be ${TAPE_FRACTIONS.join(", ")} (parts of an inch); got ${nearest}`);
  }
  const inches = Math.abs(metres) / 0.0254;
  // The tiny term keeps a length that is a half step on paper, but not in binary, from rounding down.
  const steps = Math.floor(inches * nearest + 0.5 + 1e-9);
  const feet = Math.floor(steps / (12 * nearest));
  const rest = steps - feet * 12 * nearest;
  const whole = Math.floor(rest / nearest);
  const part = rest - whole * nearest;
  const sign = metres < 0 && steps > 0 ? "-" : "";
  return `${sign}${feet}'-${whole}${part > 0 ? ` ${lowestTerms(part, nearest)}` : ""}"`;
}

function lowestTerms(part: number, whole: number): string {
  let top = part;
  let bottom = whole;
  while (top % 2 === 0 && bottom % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}
