import type { Roll } from "./request";

/**
 * Whether a roll holds a piece in one of the ways it may lie.
 *
 * @example fits({ length: 5, width: 3 }, { width: 2, price: 5, per: "length", longest: Infinity }, false) => false; 3
 *   is more than 2
 */
export function fits(piece: { length: number; width: number }, roll: Roll, turn: boolean): boolean {
  const holds = (along: number, across: number): boolean =>
    along <= roll.longest * (1 + 1e-12) && across <= roll.width * (1 + 1e-12);
  return holds(piece.length, piece.width) || (turn && holds(piece.width, piece.length));
}

/** Tape lost to ends, corners and joints that are done twice, as a share of the seam. Common practice, no source. */
const TAPE_LOSS = 0.1;

/**
 * Length of seam tape for a length of seam, m.
 *
 * @example tapeFor(10) => 11; a tenth more for laps and ends, common practice, no source
 */
export function tapeFor(seamLength: number): number {
  return seamLength * (1 + TAPE_LOSS);
}
