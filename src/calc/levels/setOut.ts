import { invalid, requireRange } from "../problem";

/** Limits of levelling; m. */
export const LEVEL_RANGE = {
  level: { min: -500, max: 9000 },
  /** What a levelling rod shows. */
  reading: { min: 0, max: 7.7 },
  tolerance: { min: 0, max: 0.3 },
} as const;

/** A point to set out, and what the rod showed on it, where it has been read. */
export interface Target {
  readonly name: string;
  readonly level: number;
  readonly reading?: number | undefined;
  /** What it showed after the instrument was moved; stands in place of the reading before. */
  readonly after?: number | undefined;
}

export interface SetOutPoint extends Target {
  /** What the rod should show, from where the instrument stands last; negative where the point lies above the line of sight. */
  readonly rod: number;
  /** How far the point lies above (positive) or below a string pulled level from the benchmark. */
  readonly fromString: number;
  /** How much too high (positive) the ground was when it was read; undefined when it was not. */
  readonly high?: number;
  readonly todo: "" | "cut" | "fill" | "on grade";
}

/**
 * Level of the line of sight: HI = benchmark + backsight.
 *
 * @param benchmark m, -500 to 9000
 * @param backsight rod reading on the benchmark, m, above 0 to 7.7
 * @throws Problem outside these ranges
 * @example heightOfInstrument(30, 1.2) => 31.2; 30 + 1.2
 *
 * Source: differential levelling, any surveying text.
 */
export function heightOfInstrument(benchmark: number, backsight: number): number {
  requireRange("benchmark", benchmark, LEVEL_RANGE.level.min, LEVEL_RANGE.level.max, "m");
  requireRange("backsight", backsight, LEVEL_RANGE.reading.min, LEVEL_RANGE.reading.max, "m");
  return benchmark + backsight;
}

/**
 * Level of the ground under the rod: level = HI - reading.
 *
 * @param instrument HI, m
 * @param reading what the rod shows, m, 0 to 7.7: the ground cannot be read above the line of sight
 * @throws Problem outside this range
 * @example levelOf(31.2, 1.7) => 29.5; 31.2 - 1.7
 *
 * Source: as heightOfInstrument.
 */
export function levelOf(instrument: number, reading: number): number {
  requireRange("reading", reading, LEVEL_RANGE.reading.min, LEVEL_RANGE.reading.max, "m");
  return instrument - reading;
}

/**
 * What the rod should show on each point (HI - level), how far each lies from a level string at the benchmark, and
 * cut or fill where a reading was taken: high = (HI - reading) - level.
 *
 * @param benchmark level of the benchmark, m, -500 to 9000
 * @param backsight rod reading on it, m, 0 to 7.7
 * @param targets levels m, -500 to 9000; readings m, 0 to 7.7
 * @param tolerance m, 0 to 0.3: as near as this is on grade
 * @param moved rod reading on the benchmark after the instrument was moved, m, 0 to 7.7: readings taken before stay good
 * @throws Problem outside these ranges
 * @example setOut(30, 1.2, [{ name: "rim", level: 29.5 }], 0.01)[0].rod => 1.7; 30 + 1.2 - 29.5
 *
 * Source: as heightOfInstrument.
 */
export function setOut(
  benchmark: number,
  backsight: number,
  targets: readonly Target[],
  tolerance: number,
  moved?: number,
): SetOutPoint[] {
  const first = heightOfInstrument(benchmark, backsight);
  const last = moved === undefined ? first : heightOfInstrument(benchmark, moved);
  requireRange("tolerance", tolerance, LEVEL_RANGE.tolerance.min, LEVEL_RANGE.tolerance.max, "m");
  return targets.map((target) => {
    const { level, after } = target;
    requireRange("level", level, LEVEL_RANGE.level.min, LEVEL_RANGE.level.max, "m");
    if (after !== undefined && moved === undefined)
      throw invalid(`moved is needed, the new backsight on the benchmark: ${target.name} was read after the move`);
    const reading = after ?? target.reading;
    const point = { ...target, reading, rod: last - level, fromString: level - benchmark };
    if (reading === undefined) return { ...point, todo: "" };
    const high = levelOf(after === undefined ? first : last, reading) - level;
    // Just on the tolerance on paper must not fall outside it in binary.
    if (Math.abs(high) <= tolerance + 1e-9) return { ...point, high, todo: "on grade" };
    return { ...point, high, todo: high > 0 ? "cut" : "fill" };
  });
}
