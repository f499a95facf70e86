import { known } from "../derived";
import type { Flowing } from "./bed";
import type { Sketch } from "./sketch";
import { tape } from "./words";

/** Share of the fall that the ground has by itself; the berm makes the rest. */
const NATURAL = { low: 0.2, value: 0.5, high: 0.8 } as const;

/** Trench, and the berm that lifts the top lip. */
export function groundRule(sketch: Sketch, { water }: Flowing): void {
  const { job, system } = sketch;
  const run = job.run ?? 0;
  sketch.assume("trenchLength", () => {
    const value = run + sketch.pick(1.524, 1.5);
    return {
      value,
      low: value * 0.9,
      high: value * 1.35,
      reason: `Beside the stream, ${tape(run, system)}, and round both ends.`,
    };
  });
  const width = job.bedWidth ?? 0;
  sketch.assume("bermLength", () => {
    const value = width + sketch.pick(0.9144, 0.9);
    return {
      value,
      low: value * 0.8,
      high: value * 1.4,
      reason: "As wide as the bed with a stone's breadth on either side.",
    };
  });
  sketch.assume("bermWidth", () => ({
    ...sketch.pick({ low: 0.6096, value: 0.9144, high: 1.2192 }, { low: 0.6, value: 0.9, high: 1.2 }),
    reason: "Wide enough to stand on while setting the top stones.",
  }));
  sketch.assume("bermGround", () => {
    const fall = known(water.fall) ?? 0;
    const grade = job.gradeLevel ?? 0;
    const { low, value, high } = NATURAL;
    return {
      value: grade + value * fall,
      low: grade + low * fall,
      high: grade + high * fall,
      reason: "Half of the fall is taken to be in the ground already; shoot the ground where the top lip will be.",
    };
  });
  for (const key of ["beddingDepth", "pitMargin", "trenchWidth", "trenchDepth", "shelfDepth", "shelfMargin"] as const) {
    const value = sketch.usual[key];
    if (value !== undefined) sketch.assume(key, () => ({ value, reason: "As it is commonly dug." }));
  }
}
