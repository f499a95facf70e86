import { invalid, plain, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";

/** One step of a fall: the drop, and the tread the water runs over behind it; m. */
export interface Step {
  readonly drop: number;
  readonly tread: number;
}

/** Limits of a layout of steps; SI. */
export const STEPS_RANGE = {
  fall: { min: 0, max: 30 },
  run: { min: 0, max: 300 },
  count: { min: 1, max: 100 },
  unevenness: { min: 0, max: 1 },
  seed: { min: 1, max: 1_000_000 },
  grid: { min: 0.0001, max: 0.01 },
} as const;

/** The lowest drop that still reads as one, and the shortest tread, m. Common practice, no source. */
export const LOWEST_DROP = 0.025;
export const SHORTEST_TREAD = 0.05;

/** At full unevenness the biggest share is about five times the smallest. */
const SWING = 0.7;
/** How much of a tread's unevenness follows the drop before it: a high drop digs a long pool. */
const FOLLOWS_DROP = 0.6;

// Multiples of these numbers, less their whole part, never come close to each other: neighbours always differ.
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const PLASTIC = 0.7548776662466927;
const PLASTIC_SQUARED = 0.5698402909980532;

/**
 * Lays a fall out in drops and treads that look natural: no two neighbours alike, a longer tread behind a higher drop.
 * The same seed gives the same layout. Each share is its part of 1 + 0.7 × unevenness × x, where x from -1 to 1 comes
 * from an additive recurrence x = 2 frac(φ i + seed) - 1; levels are cut down to the grid, and the last step takes
 * what is left, so that drops add up to the fall and treads to the run.
 *
 * @param fall m, 0 to 30, at least 25 mm for each drop
 * @param run m, 0 to 300, at least 50 mm for each tread
 * @param count drops, a whole number, 1 to 100
 * @param unevenness 0 (all alike) to 1
 * @param seed whole number, 1 to 1,000,000
 * @param grid what levels are rounded to, m, 0.0001 to 0.01; the tape's step
 * @throws Problem outside these ranges, and when there are more drops than the fall or the run allows
 * @example layOutSteps(1.2, 6, 4, 0, 1, 0.001)[1].drop => 0.3; 1.2 / 4
 *
 * Source: additive recurrence: H. Weyl (1916); step and pool go together as in natural streams: Abrahams, Li and
 * Atkinson, "Step-pool streams: adjustment to maximum flow resistance", Water Resources Research 31 (1995) 2593.
 * The shares are ours: common practice, no source.
 */
export function layOutSteps(
  fall: number,
  run: number,
  count: number,
  unevenness: number,
  seed: number,
  grid: number,
): Step[] {
  const limits = STEPS_RANGE;
  requireRange("fall", fall, limits.fall.min, limits.fall.max, "m");
  requireRange("run", run, limits.run.min, limits.run.max, "m");
  requireRange("drops", count, limits.count.min, limits.count.max);
  requireRange("unevenness", unevenness, limits.unevenness.min, limits.unevenness.max);
  requireRange("seed", seed, limits.seed.min, limits.seed.max);
  requireRange("grid", grid, limits.grid.min, limits.grid.max, "m");
  if (!Number.isInteger(count)) throw invalid(`drops must be a whole number; got ${plain(count)}`);
  const lowest = wholeSteps(LOWEST_DROP, grid);
  const shortest = wholeSteps(SHORTEST_TREAD, grid);
  requireRoom("fall", fall, count, lowest, "drop of at least 25 mm (1 in)");
  requireRoom("run", run, count, shortest, "tread of at least 50 mm (2 in)");

  const swing = SWING * unevenness;
  const dropShares: number[] = [];
  const treadShares: number[] = [];
  for (let i = 1; i <= count; i++) {
    const x = spread(GOLDEN * i + PLASTIC * seed);
    const y = spread(PLASTIC * i + PLASTIC_SQUARED * seed);
    dropShares.push(1 + swing * x);
    treadShares.push(1 + swing * (FOLLOWS_DROP * x + (1 - FOLLOWS_DROP) * y));
  }
  const drops = divide(fall, dropShares, lowest, grid);
  const treads = divide(run, treadShares, shortest, grid);
  return drops.map((drop, i) => ({ drop, tread: treads[i] ?? 0 }));
}

/** The fractional part, spread from -1 to 1. */
function spread(value: number): number {
  return 2 * (value - Math.floor(value)) - 1;
}

function requireRoom(name: string, whole: number, count: number, least: number, part: string): void {
  const most = Math.floor(whole / least + 1e-9);
  if (count <= most) return;
  if (most === 0) throw invalid(`${name} must leave room for one ${part}; got ${sayBoth("length", whole)}`);
  throw invalid(
    `drops must be at most ${most}: a ${name} of ${sayBoth("length", whole)} gives each no ${part}; got ${count}`,
  );
}

/** The next length of whole grid steps: then no rounding can take a part below it. */
function wholeSteps(least: number, grid: number): number {
  return Math.ceil(least / grid - 1e-9) * grid;
}

/** Cuts `whole` in parts by their shares, each at least `least`; all but the last are whole grid steps. */
function divide(whole: number, shares: readonly number[], least: number, grid: number): number[] {
  const sum = shares.reduce((all, share) => all + share, 0);
  const spare = whole - least * shares.length;
  let wanted = 0;
  let steps = 0;
  return shares.map((share, i) => {
    wanted += least + (spare * share) / sum;
    const before = steps;
    if (i === shares.length - 1) return whole - before * grid;
    steps = Math.floor(wanted / grid + 1e-9);
    return (steps - before) * grid;
  });
}
