import { cutPlan } from "../../src/calc/liner/cutplan/plan";
import { repeatableRandom } from "../../src/calc/liner/cutplan/random";
import type { PlanRequest } from "../../src/calc/liner/cutplan/request";
import { stripRequest, UNIT, type StripInstance } from "../published/stripPacking";

// What the library names as its entry cannot be loaded by Node; the module beside it can, but has no types of its own.
const module = "maxrects-packer/dist/maxrects-packer.mjs";
const { MaxRectsPacker } = (await import(module)) as typeof import("maxrects-packer");

/** Eight different pieces on three rolls; every call gets other ones. */
export function eightPieces(turn: number): PlanRequest {
  const random = repeatableRandom(turn);
  return {
    pieces: Array.from({ length: 8 }, (_, i) => ({
      name: `P${i}`,
      length: 0.5 + 5 * random(),
      width: 0.4 + 2.4 * random(),
    })),
    rolls: [
      { width: 3, price: 28, per: "length", longest: 30 },
      { width: 4.5, price: 9.6, per: "area", longest: 30 },
      { width: 6, price: 1500, per: "roll", longest: 25 },
    ],
    turn: true,
  };
}

/** Length of an instance with edge-to-edge cuts: the plan as it ships. */
export function edgeToEdge(instance: StripInstance): number {
  return cutPlan(stripRequest(instance)).bought.reduce((sum, b) => sum + b.length, 0) / UNIT;
}

/** Length with pieces placed anywhere: the library, over shuffled orders, within some seconds of processor time. */
export function placedAnywhere({ stripWidth, optimalLength, pieces }: StripInstance, seconds: number): number {
  const random = repeatableRandom(1);
  const start = process.cpuUsage();
  const spent = (): number => process.cpuUsage(start).user / 1e6;
  const order = [...pieces].sort(([a = 0, b = 0], [c = 0, d = 0]) => c * d - a * b);
  let best = 2 * optimalLength;
  while (best > optimalLength && spent() < seconds) {
    while (best > optimalLength && fitsInto(order, stripWidth, best - 1)) best--;
    for (let i = order.length - 1; i > 0; i--) {
      const j = Math.floor(random() * (i + 1));
      [order[i], order[j]] = [order[j] ?? [], order[i] ?? []];
    }
  }
  return best;
}

function fitsInto(order: StripInstance["pieces"], width: number, length: number): boolean {
  const packer = new MaxRectsPacker(width, length, 0, { smart: false, pot: false, square: false, allowRotation: true });
  for (const [a = 0, b = 0] of order) packer.add(a, b, null);
  return packer.bins.length === 1 && packer.bins[0]?.rects.every((rect) => !rect.oversized) === true;
}
