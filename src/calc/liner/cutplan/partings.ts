import { PLAN_RANGE } from "./check";
import type { Piece, Roll } from "./request";
import { fits } from "./seams";

/** A way to put a piece together from parts; of one part: the piece as it is. */
export interface Parting {
  readonly parts: readonly Piece[];
  /** m */
  readonly seamLength: number;
}

/** Ways to part one piece that are looked at; the first are those of the fewest parts. */
const MOST_PARTINGS = 60;
/** How far beyond the fewest strips a piece is parted. */
const MORE_STRIPS = 1;
/** A parting of more parts than a plan takes is none. */
const MOST_PARTS = PLAN_RANGE.mostPieces;
/** Shares of a side no narrower than this, m; narrower ones are no strips. */
const NARROWEST = 0.05;

/**
 * Ways to cut a piece: whole, if a roll holds it, and in parts that lap each other, for every roll that does not hold
 * it. The parts are strips side by side of widths the rolls have, a rest making up what is missing: all of one width,
 * full widths of one roll or of several, or what is left of a roll's width beside other pieces. Where no roll is long
 * enough for the strips, these are put together from lengths in the same way.
 *
 * @param others pieces that strips may lie beside
 * @param lap m
 */
export function partingsOf(
  piece: Piece,
  rolls: readonly Roll[],
  turn: boolean,
  lap: number,
  others: readonly Piece[],
): Parting[] {
  const whole = rolls.some((roll) => fits(piece, roll, turn));
  const found: Parting[] = whole ? [{ parts: [piece], seamLength: 0 }] : [];
  if (rolls.every((roll) => fits(piece, roll, turn))) return found;
  const longest = [...new Set(rolls.map((roll) => roll.longest))];
  const widths = [...new Set(rolls.map((roll) => roll.width))].sort((a, b) => b - a);
  const ways: Parting[] = [];
  for (const turned of turn ? [false, true] : [false]) {
    const along = turned ? piece.width : piece.length;
    const across = turned ? piece.length : piece.width;
    const lengths = sharings(along, longest, lap, []);
    const beside = others.flatMap(({ length, width }) => (turn ? [length, width] : [width]));
    for (const strips of sharings(across, widths, lap, beside)) {
      for (const pieces of lengths) {
        const count = strips.length * pieces.length;
        if (count === 1 || count > MOST_PARTS) continue;
        const sizes = strips.flatMap((width) => pieces.map((length) => ({ length, width })));
        ways.push({
          seamLength: (pieces.length - 1) * across + (strips.length - 1) * along,
          parts: sizes.map(({ length, width }, index): Piece => ({
            name: `${piece.name} (${index + 1} of ${sizes.length})`,
            length: turned ? width : length,
            width: turned ? length : width,
          })),
        });
      }
    }
  }
  const cuttable = ways.filter(({ parts }) => parts.every((part) => rolls.some((roll) => fits(part, roll, turn))));
  cuttable.sort((a, b) => a.parts.length - b.parts.length || a.seamLength - b.seamLength);
  return [...found, ...cuttable.slice(0, MOST_PARTINGS)];
}

/** No parting of a piece has fewer parts: the widest roll's strips, each as long as the longest roll. */
export function fewestParts(piece: Piece, rolls: readonly Roll[], turn: boolean, lap: number): number {
  const widest = Math.max(...rolls.map(({ width }) => width));
  const longest = Math.max(...rolls.map((roll) => roll.longest));
  const shares = (side: number, room: number): number =>
    side <= room * (1 + 1e-12) ? 1 : lap >= room ? Infinity : Math.ceil((side - lap) / (room - lap) - 1e-9);
  const laid = (along: number, across: number): number => shares(along, longest) * shares(across, widest);
  return Math.min(laid(piece.length, piece.width), turn ? laid(piece.width, piece.length) : Infinity);
}

/** Ways to share a side out among strips no wider than the widest room, laps included; one share where one will do. */
function sharings(side: number, rooms: readonly number[], lap: number, beside: readonly number[]): number[][] {
  const widest = Math.max(...rooms);
  if (side <= widest * (1 + 1e-12) && rooms.length === 1) return [[side]];
  const found = new Map<string, number[]>();
  const keep = (shares: number[]): void => {
    shares.sort((a, b) => b - a);
    found.set(shares.map((share) => Math.round(share * 1e6)).join(" "), shares);
  };
  if (side <= widest * (1 + 1e-12)) keep([side]);
  for (const room of rooms) {
    if (side <= room * (1 + 1e-12) || lap >= room) continue;
    const count = Math.ceil((side - lap) / (room - lap) - 1e-9);
    if (count > MOST_PARTS) continue;
    keep(Array.from({ length: count }, () => (side + (count - 1) * lap) / count));
  }
  if (lap >= widest) return [...found.values()];
  const fewest = Math.max(2, Math.ceil((side - lap) / (widest - lap) - 1e-9));
  if (fewest > MOST_PARTS) return [...found.values()];
  // What a strip may be wide: a roll's width, or what of it is left beside one or two other pieces.
  const steps = new Set(rooms.filter((room) => room < side * (1 - 1e-12)));
  const sums = new Set([...beside, ...beside.flatMap((a, i) => beside.slice(i + 1).map((b) => a + b))]);
  for (const room of rooms) {
    for (const sum of sums) if (room - sum > Math.max(lap, NARROWEST) && room - sum < side) steps.add(room - sum);
  }
  const choices = [...steps].sort((a, b) => b - a);
  const fill = (shares: number[], left: number, from: number): void => {
    if (found.size > 4 * MOST_PARTINGS) return;
    // The rest, where it is a strip of its own.
    if (left <= widest * (1 + 1e-12) && left > Math.max(lap, 0) && shares.length > 0) keep([...shares, left]);
    if (shares.length + 2 > fewest + MORE_STRIPS) return;
    for (let i = from; i < choices.length; i++) {
      const next = choices[i] as number;
      if (left - next + lap > Math.max(lap, NARROWEST)) fill([...shares, next], left - next + lap, i);
    }
  };
  fill([], side, 0);
  return [...found.values()];
}
