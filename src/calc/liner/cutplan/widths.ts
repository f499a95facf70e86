import type { Lane, Lot } from "./shares";

/**
 * A first sum of shares, at once. For a part s from 0 to 1/2 of a lane's room, a piece that takes more than 1 - s of it
 * has nothing beside it that takes more than s, so it counts for the whole room; a piece that takes less than s may then
 * count for nothing; the others count as they are. The best s is taken.
 *
 * Source: dual feasible function of S. P. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing
 * problems", Mathematical Programming 91 (2001) 11-31 (from memory).
 */
export function sharesByWidth(lots: readonly Lot[], lanes: readonly Lane[]): number {
  // As s grows, more pieces count for the whole room until one drops out: the best s is a piece's own part, or a half.
  const parts = new Set([0, 0.5]);
  for (const { room } of lanes) {
    for (const { ways } of lots) for (const [, across] of ways) if (2 * across <= room) parts.add(across / room);
  }
  let best = 0;
  for (const part of parts) {
    let sum = 0;
    for (const { count, ways } of lots) {
      let least = Infinity;
      for (const { room, longest, rate } of lanes) {
        for (const [along, across] of ways) {
          if (across > room || along > longest) continue;
          least = Math.min(least, (rate / room) * along * counted(across, room, part));
        }
      }
      sum += count * least;
    }
    best = Math.max(best, sum);
  }
  return best;
}

// The tiny terms keep a piece that takes just its part on the side that counts less.
function counted(across: number, room: number, part: number): number {
  if (across > (1 - part) * room + 0.5) return room;
  return across < part * room - 0.5 ? 0 : across;
}
