import { expect } from "vitest";
import type { Placement, Plan, PlanRequest } from "../../../../src/calc/liner/cutplan/request";

/*
 * Looks a plan over without any of the code that made it: positions and sizes alone.
 */

/** A tenth of a micrometre: positions come back from whole nanometres. */
const TOLERANCE = 1e-7;

interface Box {
  readonly along: number;
  readonly across: number;
  readonly length: number;
  readonly width: number;
}

const apart = (a: Box, b: Box): boolean =>
  a.along + a.length <= b.along + TOLERANCE ||
  b.along + b.length <= a.along + TOLERANCE ||
  a.across + a.width <= b.across + TOLERANCE ||
  b.across + b.width <= a.across + TOLERANCE;

const inside = (a: Box, b: Box): boolean =>
  a.along >= b.along - TOLERANCE &&
  a.across >= b.across - TOLERANCE &&
  a.along + a.length <= b.along + b.length + TOLERANCE &&
  a.across + a.width <= b.across + b.width + TOLERANCE;

/** Whether edge-to-edge cuts can free every piece: some straight cut misses all of them, and so on on both sides. */
export function isGuillotine(pieces: readonly Box[]): boolean {
  if (pieces.length <= 1) return true;
  for (const way of ["along", "across"] as const) {
    const size = way === "along" ? "length" : "width";
    for (const piece of pieces) {
      const cut = piece[way] + piece[size];
      const below = pieces.filter((p) => p[way] + p[size] <= cut + TOLERANCE);
      const above = pieces.filter((p) => p[way] >= cut - TOLERANCE);
      if (above.length > 0 && below.length + above.length === pieces.length) {
        return isGuillotine(below) && isGuillotine(above);
      }
    }
  }
  return false;
}

/** Holds a plan against what was asked for. */
export function inspect(plan: Plan, { pieces, rolls, turn }: PlanRequest): void {
  const { placements, bought } = plan;
  // Every piece is there once, in a size it was asked for, and turned only where that is allowed.
  expect(placements.length).toBe(pieces.length);
  const open = [...pieces];
  for (const { name, length, width, turned } of placements) {
    const [own, other] = turned ? [width, length] : [length, width];
    const index = open.findIndex(
      (p) => p.name === name && Math.abs(p.length - own) < TOLERANCE && Math.abs(p.width - other) < TOLERANCE,
    );
    expect(index, `${name} ${length} by ${width}`).toBeGreaterThanOrEqual(0);
    open.splice(index, 1);
    expect(turned && !turn).toBe(false);
  }
  expect(open).toEqual([]);

  // Every piece lies on one bought length, no two overlap, and edge-to-edge cuts free them all.
  let found = 0;
  for (const { roll, start, length, used } of bought) {
    const width = rolls[roll]?.width ?? 0;
    expect(length).toBeLessThanOrEqual((rolls[roll]?.longest ?? Infinity) + TOLERANCE);
    expect(used).toBeLessThanOrEqual(length + TOLERANCE);
    const sheet = { along: start, across: 0, length, width };
    const on = placements.filter((p) => p.roll === roll && inside(p, sheet));
    found += on.length;
    on.forEach((a, i) => on.slice(i + 1).forEach((b) => expect(apart(a, b), `${a.name} and ${b.name}`).toBe(true)));
    expect(isGuillotine(on)).toBe(true);
  }
  expect(found).toBe(placements.length);

  // What is bought is paid for, and is never less than what is cut from it.
  const areaOf = (boxes: readonly { length: number; width: number }[]): number =>
    boxes.reduce((sum, { length, width }) => sum + length * width, 0);
  const boughtArea = areaOf(bought.map(({ roll, length }) => ({ length, width: rolls[roll]?.width ?? 0 })));
  expect(plan.area).toBeCloseTo(boughtArea, 6);
  expect(plan.waste).toBeCloseTo(boughtArea - areaOf(placements), 6);
  expect(areaOf(placements)).toBeLessThanOrEqual(boughtArea + 1e-6);
  let cost = 0;
  rolls.forEach(({ price, per, width, longest }, roll) => {
    const lengths = bought.filter((b) => b.roll === roll);
    const length = lengths.reduce((sum, b) => sum + b.length, 0);
    if (per === "roll")
      for (const b of lengths) expect(price === 0 || Math.abs(b.length - longest) < TOLERANCE).toBe(true);
    cost += price * (per === "roll" ? lengths.length : per === "area" ? length * width : length);
  });
  expect(Math.abs(plan.rollCost - cost)).toBeLessThanOrEqual(0.005 * rolls.length + 1e-6);
  expect(plan.lowerBound).toBeLessThanOrEqual(plan.cost);
  if (plan.proven) expect(plan.lowerBound).toBe(plan.cost);
}

/** A placement for trying the inspector itself. */
export function placed(along: number, across: number, length: number, width: number): Placement {
  return { name: "x", roll: 0, along, across, length, width, turned: false };
}
