import type { Piece, Roll } from "./request";

/** How a piece that fits no roll is put together from parts. */
export interface Seamed {
  readonly parts: readonly Piece[];
  /** m */
  readonly seamLength: number;
}

/** How the parts of a piece share its size. */
export type Sharing = "equal" | "full widths";

/** Whether a roll holds a piece in one of the ways it may lie. */
export function fits(piece: { length: number; width: number }, roll: Roll, turn: boolean): boolean {
  const holds = (along: number, across: number): boolean =>
    along <= roll.longest * (1 + 1e-12) && across <= roll.width * (1 + 1e-12);
  return holds(piece.length, piece.width) || (turn && holds(piece.width, piece.length));
}

/**
 * Parts a piece that fits no roll, with the least length of seam: strips side by side across the roll, and where the
 * longest length falls short, lengths end to end. Neighbours lap each other.
 *
 * @param lap m
 * @param sharing strips of equal width, or full roll widths and a rest
 * @returns undefined when a lap leaves nothing of every roll's width
 */
export function partPiece(
  piece: Piece,
  rolls: readonly Roll[],
  turn: boolean,
  lap: number,
  sharing: Sharing,
): Seamed | undefined {
  let best: Seamed | undefined;
  for (const roll of rolls) {
    for (const turned of turn ? [false, true] : [false]) {
      const along = turned ? piece.width : piece.length;
      const across = turned ? piece.length : piece.width;
      const lengths = shares(along, roll.longest, lap, sharing);
      const widths = shares(across, roll.width, lap, sharing);
      if (!lengths || !widths) continue;
      const seamLength = (lengths.length - 1) * across + (widths.length - 1) * along;
      if (best && best.seamLength <= seamLength * (1 + 1e-9)) continue;
      const sizes = widths.flatMap((width) => lengths.map((length) => ({ length, width })));
      const parts = sizes.map(({ length, width }, index): Piece => ({
        name: `${piece.name} (${index + 1} of ${sizes.length})`,
        length: turned ? width : length,
        width: turned ? length : width,
      }));
      best = { parts, seamLength };
    }
  }
  return best;
}

/** Splits a side into the fewest shares no longer than `most`, with laps between them. */
function shares(side: number, most: number, lap: number, sharing: Sharing): number[] | undefined {
  if (side <= most * (1 + 1e-12)) return [side];
  if (lap >= most) return undefined;
  const count = Math.ceil((side - lap) / (most - lap) - 1e-9);
  const total = side + (count - 1) * lap;
  if (sharing === "equal") return Array.from({ length: count }, () => total / count);
  return Array.from({ length: count }, (_, index) => (index < count - 1 ? most : total - (count - 1) * most));
}

/** Tape lost to ends, corners and joints that are done twice, as a share of the seam. Common practice, no source. */
const TAPE_LOSS = 0.1;

/** Length of seam tape for a length of seam, m. */
export function tapeFor(seamLength: number): number {
  return seamLength * (1 + TAPE_LOSS);
}
