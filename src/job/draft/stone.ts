import { BOULDER_SHAPES } from "../../calc/stone/boulder";
import { readDensityRange } from "../../calc/stone/density";
import { stableStone } from "../../calc/water/stableStone";
import { isKnown, known } from "../derived";
import { total } from "../rows";
import type { Flowing } from "./bed";
import type { Sketch } from "./sketch";
import { about, tape } from "./words";

const GRAVITY = 9.80665;
const INCH = 0.0254;
/** Laid flat, a stone is about two thirds as high as its mean size. Common practice, no source. */
const SIZE_PER_HEIGHT = 1.5;
/** Biggest stone that is asked for where machine and drop would take more. */
const BIGGEST = 16 * INCH;
/** Shares of the four sizes, the smallest first. Common practice, no source. */
const SHARES = [0.2, 0.35, 0.3, 0.15] as const;
/** Depth of a lip stone along the water, and its height from best to least. */
const LIP_DEPTH = 20 * INCH;
const LIP_HEIGHTS = [5, 4, 3, 2.5, 2] as const;

/** Stones by size: what the water cannot move and the crew or its machine can place. */
export function stoneRule(sketch: Sketch, lift: number, flowing: Flowing): void {
  faces(sketch);
  sizes(sketch, lift, flowing);
  lipStones(sketch, lift);
}

function faces(sketch: Sketch): void {
  const around = (key: "dropReach" | "bankReach" | "solidShare" | "bedGravelDepth", low: number, high: number) => {
    const value = sketch.usual[key];
    if (value === undefined) return;
    const reasons = {
      dropReach: "Stones of a drop reach back about this far, by how they are stacked.",
      bankReach: "Bank stones are smaller and reach back less.",
      solidShare: "The rest of a stone face is gaps.",
      bedGravelDepth: "Gravel hides the liner; more where it settles between stones.",
    };
    sketch.assume(key, () => ({ value, low: low * value, high: high * value, reason: reasons[key] }));
  };
  around("dropReach", 0.85, 1.25);
  around("bankReach", 0.8, 1.35);
  around("solidShare", 0.92, 1.1);
  around("bedGravelDepth", 0.8, 1.5);
  sketch.assume("coverDepth", () => ({
    value: sketch.job.rimBelowGrade ?? sketch.pick(3 * INCH, 0.075),
    reason: "Gravel fills from the rim up to finished grade.",
  }));
}

function sizes(sketch: Sketch, lift: number, { water, drain }: Flowing): void {
  const { job, system } = sketch;
  sketch.assume("boulderSizes", () => {
    const drops = water.drops.filter(isKnown);
    const density = readDensityRange("rock", job.rockFigure ?? job.rock ?? "fieldstone", system, "rock");
    const fallen = Math.max(0, ...drops) + (known(water.sheetMost) ?? 0);
    // At the foot of a drop all its height has become speed.
    const stable = Math.max(
      stableStone(Math.min(10, Math.sqrt(2 * GRAVITY * fallen)), density.usual, "high"),
      known(drain.bedStone) ?? 0,
    );
    const placed = Math.cbrt((lift * 0.999) / (BOULDER_SHAPES.box * density.high));
    const room = SIZE_PER_HEIGHT * Math.max(job.bankHeight ?? 0, ...drops);
    const big = Math.min(placed, room, Math.max(BIGGEST, 1.3 * stable));
    const small = Math.min(big, Math.max(stable, 0.45 * big));
    const step = (big - small) / (SHARES.length - 1);
    const sold = sketch.offers.boulders.filter((size) => size >= small - 1e-6 && size <= big + 1e-6);
    const even = step < 0.01 ? [big] : SHARES.map((_, index) => small + index * step);
    const biggestSold = Math.max(0, ...sketch.offers.boulders.filter((size) => size <= big + 1e-6));
    const taken = sold.length > 0 ? sold.slice(-SHARES.length) : biggestSold > 0 ? [biggestSold] : even;
    const who = placed < room && placed <= big ? "what can be lifted" : "what drops and banks have room for";
    const reason =
      stable > big
        ? `Water below a drop may move stone under ${tape(stable, system)}, and nothing bigger than ${tape(big, system)} can be placed: set the stones in mortar or foam.`
        : `From ${tape(small, system)}, which the water cannot move (${tape(stable, system)} below a drop), to ${tape(big, system)}, by ${who}.`;
    return {
      value: withShares(taken),
      reason,
      source: "Isbash (1936) below drops, FHWA HEC-15 on the bed; shares of the sizes: rule of thumb",
    };
  });
}

/** The usual shares, over as many sizes as there are. */
function withShares(taken: readonly number[]): { size: number; share: number }[] {
  const shares = SHARES.slice(0, taken.length);
  const sum = total(shares);
  return taken.map((size, index) => ({ size, share: (shares[index] ?? 0) / sum }));
}

/** Stones of the book that cover the lip: of those that can be placed the cheapest, where none can the lightest. */
function soldStones({ job, system, offers }: Sketch, lip: number, lift: number) {
  const density = readDensityRange("rock", job.rockFigure ?? job.rock ?? "fieldstone", system, "rock").high;
  const plans = offers.lipStones.map((stone) => ({
    stone,
    count: Math.max(1, Math.ceil(lip / stone.length - 1e-9)),
    heavy: stone.length * stone.width * stone.height * density,
  }));
  const placed = plans.filter(({ heavy }) => heavy <= lift);
  const best = placed.sort((a, b) => a.count * a.stone.price - b.count * b.stone.price)[0];
  return best ?? plans.sort((a, b) => a.heavy - b.heavy)[0];
}

function lipStones(sketch: Sketch, lift: number): void {
  const { job, system } = sketch;
  const lip = total(job.lips.map(({ width = 0 }) => width)) + 6 * INCH;
  const density = readDensityRange("rock", job.rockFigure ?? job.rock ?? "fieldstone", system, "rock").high;
  const deep = job.lipStoneWidth ?? LIP_DEPTH;
  const fits = (count: number, depth: number, height: number): boolean =>
    (lip / count) * depth * height * density <= lift;
  let best = { count: 20, depth: Math.min(deep, 0.3), height: 2 * INCH };
  search: for (const depth of sketch.isTyped("lipStoneWidth") ? [deep] : [deep, 14 * INCH, 10 * INCH]) {
    for (const inches of LIP_HEIGHTS) {
      for (const count of sketch.isTyped("lipStonesPerDrop") ? [job.lipStonesPerDrop ?? 1] : [1, 2, 3, 4, 5, 6]) {
        if (count > 0 && lip / count >= 10 * INCH && lip / count <= 60 * INCH && fits(count, depth, inches * INCH)) {
          best = { count, depth, height: inches * INCH };
          break search;
        }
      }
    }
  }
  const sold = soldStones(sketch, lip, lift);
  const isOwn = (["lipStonesPerDrop", "lipStoneLength", "lipStoneWidth", "lipStoneHeight"] as const).some((key) =>
    sketch.isTyped(key),
  );
  if (sold && !isOwn && sold.count <= 20) {
    const { stone, count, heavy } = sold;
    const slabs = `${count === 1 ? "One slab" : `${count} slabs`} of the book over ${tape(lip, system)}`;
    const why =
      heavy <= lift
        ? `${slabs}, of those that can be placed the cheapest.`
        : `${slabs}, the lightest in it: at up to ${about("weight", heavy, system)} each they take several people, straps and a plan.`;
    sketch.assume("lipStonesPerDrop", () => ({ value: count, reason: why }));
    sketch.assume("lipStoneLength", () => ({ value: stone.length, reason: why }));
    sketch.assume("lipStoneWidth", () => ({ value: stone.width, reason: why }));
    sketch.assume("lipStoneHeight", () => ({ value: stone.height, reason: why }));
    return;
  }
  const reason = `${best.count === 1 ? "One slab" : `${best.count} slabs`} over ${tape(lip, system)}, as heavy as can be placed, level along the edge.`;
  sketch.assume("lipStonesPerDrop", () => ({ value: best.count, reason }));
  sketch.assume("lipStoneLength", () => ({ value: lip / best.count, reason }));
  sketch.assume("lipStoneWidth", () => ({ value: best.depth, reason }));
  sketch.assume("lipStoneHeight", () => ({ value: best.height, reason }));
}
