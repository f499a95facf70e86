import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Sketch } from "./sketch";
import { tape } from "./words";

/** Fall of a stream for each length of run, where only one of the two is known. */
const FALL_PER_RUN = { low: 0.12, value: 2.5 / 12, high: 0.36 } as const;

/** How high and how long: from each other, or as most backyard features are. */
export function siteRule(sketch: Sketch): void {
  const { system, typed } = sketch;
  const { low, value, high } = FALL_PER_RUN;
  const run = typed.run;
  sketch.assume("fallTyped", () =>
    run === undefined
      ? {
          ...sketch.pick({ value: 0.762, low: 0.4572, high: 1.2192 }, { value: 0.75, low: 0.45, high: 1.2 }),
          reason: "Most backyard streams fall knee to waist high; shoot it with a level.",
        }
      : {
          value: within(run * value, 0.15, 6),
          low: within(run * low, 0.1, 6),
          high: within(run * high, 0.2, 9),
          reason: `Streams mostly fall 1 in 3 to 1 in 8; over ${tape(run, system)} that is this much.`,
        },
  );
  const fall = sketch.job.fallTyped ?? 0;
  sketch.assume("run", () =>
    typed.fallTyped === undefined
      ? {
          ...sketch.pick({ value: 3.6576, low: 2.4384, high: 6.096 }, { value: 3.6, low: 2.4, high: 6 }),
          reason: "Most backyard streams are 8 to 20 ft (2.4 to 6 m) long; tape it on the level.",
        }
      : {
          value: within(fall / value, 0.6, 60),
          low: within(fall / high, 0.5, 60),
          high: within(fall / low, 0.9, 90),
          reason: `Streams mostly fall 1 in 3 to 1 in 8; for a fall of ${tape(fall, system)} that is this long.`,
        },
  );
  sketch.assume("fallFrom", () => ({ value: "finished grade", reason: "A fall is mostly shot from finished grade." }));
  const benchmark = sketch.assume("benchmarkLevel", () => ({
    value: usualBenchmark(system),
    reason: "A round number for the benchmark, kept for the whole job.",
  }));
  sketch.assume("gradeLevel", () => ({
    value: benchmark,
    reason: "Finished grade at the basin is taken level with the benchmark until it is shot.",
  }));
}

/** The level of a benchmark that nobody gave one, m. */
export function usualBenchmark(system: UnitSystem): number {
  return system === "US" ? 30.48 : 50;
}

export function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
