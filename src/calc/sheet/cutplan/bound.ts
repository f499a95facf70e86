import type { Blank } from "./exact";
import type { Offer } from "./purchase";

/**
 * Money that no plan can undercut, whatever the cuts. For a share s from 0 to 1/2 of a roll's width, a piece that lies
 * wider than 1 − s of it has nothing wider than s beside it, so it takes the whole width; a piece narrower than s may
 * then count as nothing; the others count as they are. Whatever the s, the pieces abreast never count for more than
 * the roll's width, so their counted area is paid for in full. The best s is taken, and never less than the dearest
 * piece bought alone.
 *
 * @returns money, under the offers' rates
 *
 * Source: dual feasible function u₀ of S. P. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing
 * problems", Mathematical Programming 91 (2001) 11-31 (from memory).
 */
export function lowerBound(pieces: readonly Blank[], offers: readonly Offer[], turn: boolean): number {
  // As s grows, more pieces take the whole width until one drops out: the best s is a piece's own share, or a half.
  const shares = new Set([0, 0.5]);
  const lies = pieces.map((piece) => layings(piece, turn));
  for (const { width } of offers) {
    for (const [, across] of lies.flat()) if (2 * across <= width) shares.add(across / width);
  }
  let bound = 0;
  for (const share of shares) {
    let sum = 0;
    for (const ways of lies) {
      let least = Infinity;
      for (const offer of offers) {
        for (const [along, across] of ways) {
          if (across > offer.width || along > offer.longest) continue;
          least = Math.min(least, offer.areaRate * along * counted(across, offer.width, share));
        }
      }
      sum += least;
    }
    bound = Math.max(bound, sum);
  }
  return Math.max(bound, ...lies.map((ways) => alone(ways, offers)));
}

/** Length along the roll and width across it, of every way a piece may lie. */
function layings({ length, width }: Blank, turn: boolean): [number, number][] {
  return turn
    ? [
        [length, width],
        [width, length],
      ]
    : [[length, width]];
}

// The tiny terms keep a piece that is exactly as wide as the share on the side that counts less.
function counted(across: number, width: number, share: number): number {
  if (across > (1 - share) * width + 0.5) return width;
  return across < share * width - 0.5 ? 0 : across;
}

function alone(ways: readonly (readonly [number, number])[], offers: readonly Offer[]): number {
  let least = Infinity;
  for (const { width, longest, whole, rate } of offers) {
    for (const [along, across] of ways) {
      if (across <= width && along <= longest) least = Math.min(least, whole ? rate : rate * along);
    }
  }
  return least;
}
