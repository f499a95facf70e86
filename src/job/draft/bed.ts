import { deriveDrain, type Drain } from "../drain";
import { known } from "../derived";
import { total } from "../rows";
import { deriveWater, type Water } from "../water";
import { TENTH } from "./guess";
import type { Sketch } from "./sketch";
import { about, tape } from "./words";

/** Share of the run that is pool below the drops; the rest is bed. */
const POOL_SHARE = 0.3;
/** The pool behind the lip, along the water. */
const TOP_POOL = { US: 18 * 0.0254, SI: 0.45 } as const;
/** Depth over rough stones, as a multiple of an even flow's, and dry bank above it. */
const OVER_STONES = 1.9;
const FREEBOARD = 0.05;

/** The water over lips and bed, and what runs back of it. */
export interface Flowing {
  readonly water: Water;
  readonly drain: Drain;
}

/** Pools, the bed between them, and banks that keep the water in; the water in them, which no later rule changes. */
export function bedRule(sketch: Sketch): Flowing {
  const { system, job } = sketch;
  const [run, width] = [job.run ?? 0, job.bedWidth ?? 0];
  const lip = total(job.lips.map(({ width: across = 0 }) => across));
  sketch.assume("pools", () => {
    const rows = (factor: number) => [
      { area: (lip + 0.3) * TOP_POOL[system] * factor, lipWidth: lip },
      { area: POOL_SHARE * run * width * factor, lipWidth: lip },
    ];
    const [low, high] = [0.65, 1.5];
    return {
      value: rows(1),
      low: rows(low),
      high: rows(high),
      at: (place) => rows((place < 0 ? low : high) ** (Math.abs(place) / TENTH)),
      reason: `A pool behind the lip, and one below each drop over a third of the tread: ${about("area", total(rows(1).map(({ area }) => area)), system)} of pool.`,
    };
  });
  sketch.assume("beds", () => ({
    value: [{ length: (1 - POOL_SHARE) * run, width, slope: 0.02, kind: "cobbles and boulders" }],
    reason: "Between the pools the bed falls 1 in 50 over cobbles, which keeps it from shooting.",
  }));
  const water = deriveWater(job);
  const drain = deriveDrain(job, water);
  const depth = known(drain.bedDepthMost) ?? 0;
  const needed = OVER_STONES * depth + FREEBOARD;
  sketch.assume("bankHeight", () => {
    const usual = sketch.pick({ low: 0.1524, value: 0.2286, high: 0.3048 }, { low: 0.15, value: 0.22, high: 0.3 });
    const least = (height: number): number => Math.max(needed, height);
    return {
      low: least(usual.low),
      value: least(usual.value),
      high: least(usual.high),
      reason:
        needed > usual.value
          ? `Over stones the stream runs up to ${tape(OVER_STONES * depth, system)} deep; two inches more keep it in.`
          : `Banks of ${tape(usual.value, system)} stand well over ${tape(OVER_STONES * depth, system)} of water.`,
    };
  });
  return { water, drain };
}
