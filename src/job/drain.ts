import { drainBack, drainBackTotal, type DrainPart, type PipeRun } from "../calc/basin/drainBack";
import { findPipe } from "../calc/pipe/bore";
import { invalid } from "../calc/problem";
import { USUAL_PIPE } from "../calc/tables/pipes";
import { findRoughness, USUAL_BED } from "../calc/water/bed";
import { findLipShape, USUAL_LIP } from "../calc/water/lip";
import { bedStone } from "../calc/water/bedStone";
import { readDensity } from "../calc/stone/density";
import type { Job } from "./facts";
import { attempt, isKnown, derive, type Derived } from "./derived";
import { filledRows, mostOf, needed, total } from "./rows";
import type { Water } from "./water";

/** m/s²; standard gravity, by definition. */
const GRAVITY = 9.80665;

/** The water above the basin: what stands in pools, beds and pipes, and what runs back when the pump stops. SI. */
export interface Drain {
  readonly parts: Derived<readonly (DrainPart & { readonly row: number })[]>;
  /** m³ */
  readonly drainBack: Derived<number>;
  readonly bedDepthMost: Derived<number>;
  readonly bedSpeedMost: Derived<number>;
  /** V / √(g y) of each bed; above 1 the water shoots. */
  readonly froudes: readonly number[];
  /** Smallest stone that the pull of the water leaves on every bed, m. */
  readonly bedStone: Derived<number>;
  /** Open water of pools and beds, m². */
  readonly openWater: Derived<number>;
}

export function deriveDrain(job: Job, { designFlow }: Water): Drain {
  const parts = partsOf(job, designFlow);
  const beds = isKnown(parts) ? parts.filter(({ kind }) => kind === "bed") : [];
  const speedMost = mostOf(beds.map(({ speed }) => speed));
  return {
    parts,
    drainBack: derive([parts], drainBackTotal),
    bedDepthMost: mostOf(beds.map(({ depth }) => depth)),
    bedSpeedMost: speedMost,
    froudes: beds.flatMap(({ depth = 0, speed = 0 }) => (depth > 0 ? [speed / Math.sqrt(GRAVITY * depth)] : [])),
    bedStone: derive([parts], (all) => {
      const density = readDensity("rock", job.rock ?? "fieldstone", job.system, "rock");
      const stones = all.flatMap(({ kind, depth = 0, row }) => {
        const slope = kind === "bed" ? job.beds[row - 1]?.slope : undefined;
        return slope === undefined ? [] : [bedStone(depth, slope, density)];
      });
      return stones.length === 0 ? undefined : Math.max(...stones);
    }),
    openWater: openWater(job),
  };
}

/** A bed without a width holds no water that could be calculated; the parts of the drain-back say so. */
function openWater({ pools, beds }: Job): Derived<number> {
  const surfaces = [
    ...pools.flatMap(({ area }) => (area === undefined ? [] : [area])),
    ...beds.flatMap(({ length, width = 0 }) => (length === undefined ? [] : [length * width])),
  ];
  return surfaces.length === 0 ? undefined : total(surfaces);
}

function partsOf(job: Job, designFlow: Derived<number>): Drain["parts"] {
  const hasPart =
    job.pools.some(({ area, lipWidth }) => area !== undefined || lipWidth !== undefined) ||
    job.beds.some(({ length, width, slope }) => length !== undefined || width !== undefined || slope !== undefined) ||
    [...job.route, ...job.riser].some(({ size }) => size !== undefined);
  if (!isKnown(designFlow) || !hasPart) return undefined;
  return attempt(() => {
    const pools = filledRows(job.pools);
    const beds = filledRows(job.beds);
    const lip = job.lipShape === undefined ? USUAL_LIP : findLipShape(job.lipShape);
    // Of several pumps each has a riser.
    const risers = job.riser.map((pipe) => ({ ...pipe, length: (pipe.length ?? 0) * (job.pumpCount ?? 0) }));
    const pipes = [...job.route, ...risers].flatMap((pipe, index) => pipeRun(job, pipe, index));
    const parts = drainBack(designFlow, {
      pools: pools.map(({ area, lipWidth, row }) => ({
        area: needed(area, "pools", row, "area"),
        lipWidth: needed(lipWidth, "pools", row, "lip width"),
        lip,
      })),
      reaches: beds.map(({ length, width, slope, kind, row }) => ({
        length: needed(length, "beds", row, "length"),
        width: needed(width, "beds", row, "width"),
        slope: needed(slope, "beds", row, "slope"),
        roughness: findRoughness(kind ?? USUAL_BED),
      })),
      pipes,
      checkValve: job.checkValve === "yes",
    });
    const rows = { pool: pools, bed: beds, pipe: pipes.map((_, index) => ({ row: index + 1 })) };
    return parts.map((part) => ({ ...part, row: rows[part.kind][part.index]?.row ?? part.index + 1 }));
  });
}

/** A pipe that drains back: one without a length holds nothing that can be calculated. */
function pipeRun({ system }: Job, { size, length, type }: Job["route"][number], index: number): PipeRun[] {
  const [across, along] = [size || undefined, length || undefined];
  if (across === undefined && along === undefined) return [];
  if (across === undefined) throw invalid(`pipe size ${index + 1} is needed where a pipe length is given`);
  if (along === undefined) throw invalid(`pipe length ${index + 1} is needed where a pipe size is given`);
  return [{ pipe: findPipe({ size: across, isBore: false }, type ?? USUAL_PIPE[system]), length: along }];
}
