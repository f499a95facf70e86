import type { Pipe } from "../pipe/bore";
import { boreArea } from "../pipe/friction";
import { invalid, ofPart, requireRange } from "../problem";
import { bedDoubt, normalFlow } from "../water/bed";
import { lipDepth, lipDoubt, type Lip } from "../water/lip";

/** A pool that overflows a lip. */
export interface Pool {
  /** m² */
  readonly area: number;
  /** m */
  readonly lipWidth: number;
  /** The shape of its lip; a flat stone where left out. */
  readonly lip?: Lip;
}

/** A reach of the stream. */
export interface Reach {
  /** m, along the bed */
  readonly length: number;
  /** m */
  readonly width: number;
  /** Fall per length, m/m. */
  readonly slope: number;
  /** Manning's n. */
  readonly roughness: number;
}

/** One pipe of the route. */
export interface PipeRun {
  readonly pipe: Pipe;
  /** m */
  readonly length: number;
}

/** Where water stands that the basin gave away. */
export interface Feature {
  readonly pools: readonly Pool[];
  readonly reaches: readonly Reach[];
  readonly pipes: readonly PipeRun[];
  /** Whether a check valve keeps the pipe full. */
  readonly checkValve: boolean;
}

/** What one part gives back when the pump stops. */
export interface DrainPart {
  readonly kind: "pool" | "bed" | "pipe";
  /** Its place among its kind, from 0. */
  readonly index: number;
  /** m³ */
  readonly volume: number;
  /** Above rest level in a pool, of the stream in a bed, m. */
  readonly depth: number | undefined;
  /** Of the stream in a bed, m/s. */
  readonly speed: number | undefined;
  /** "" where nothing is to be said. */
  readonly remark: string;
}

/** What the calculation accepts: m², m. */
export const FEATURE_RANGE = { area: { min: 0.01, max: 100_000 }, length: { min: 0, max: 5000 } } as const;

/**
 * Water that runs back into the basin when the pump stops, part by part:
 * pools give lip depth × area, beds normal-depth cross-section × length, pipes bore area × length unless a
 * check valve holds them.
 *
 * @param flow m³/s, above 0
 * @param feature pools of 0.01 to 100,000 m²; beds and pipes up to 5000 m long
 * @returns the parts in order: pools, beds, pipes
 * @throws Problem outside the ranges, or when the feature has no part at all
 * @example drainBack(0.002, { pools: [], reaches: [], pipes: [{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"),
 *   length: 10 }], checkValve: false })[0].volume => 0.0196; π/4 × 0.05² × 10
 *
 * Source: geometry, with the sheet of `lipDepth` and the even flow of `normalFlow`.
 */
export function drainBack(flow: number, feature: Feature): DrainPart[] {
  const { pools, reaches, pipes, checkValve } = feature;
  if (!(flow > 0)) throw invalid("flow must be more than 0");
  if (pools.length + reaches.length + pipes.length === 0) {
    throw invalid("pools, runs or a pipe is needed: there is nothing that drains back");
  }
  const { area, length } = FEATURE_RANGE;
  return [
    ...pools.map((pool, index): DrainPart => {
      requireRange(`area of pool ${index + 1}`, pool.area, area.min, area.max, "m²");
      const depth = ofPart(`pool ${index + 1}`, () => lipDepth(flow, pool.lipWidth, pool.lip));
      const remark = lipDoubt(pool.lipWidth, depth);
      return { kind: "pool", index, volume: depth * pool.area, depth, speed: undefined, remark };
    }),
    ...reaches.map((reach, index): DrainPart => {
      requireRange(`length of run ${index + 1}`, reach.length, length.min, length.max, "m");
      const even = ofPart(`run ${index + 1}`, () => normalFlow(flow, { ...reach, sideSlope: 0 }));
      const volume = even.area * reach.length;
      return { kind: "bed", index, volume, depth: even.depth, speed: even.speed, remark: bedDoubt(even) };
    }),
    ...pipes.map((run, index): DrainPart => {
      requireRange(`length of pipe ${index + 1}`, run.length, length.min, length.max, "m");
      const volume = checkValve ? 0 : boreArea(run.pipe.bore) * run.length;
      const remark = checkValve ? "held by the check valve" : "";
      return { kind: "pipe", index, volume, depth: undefined, speed: undefined, remark };
    }),
  ];
}

/**
 * The whole drain-back, m³.
 *
 * @example drainBackTotal([{ kind: "pool", index: 0, volume: 0.25 }, { kind: "bed", index: 0, volume: 0.5 }]) =>
 *   0.75; 0.25 + 0.5
 */
export function drainBackTotal(parts: readonly DrainPart[]): number {
  return parts.reduce((sum, part) => sum + part.volume, 0);
}
