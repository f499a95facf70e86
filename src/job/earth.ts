import { pitVolume } from "../calc/earth/earthworks";
import { readSoil, soilOf } from "../calc/earth/soil";
import { soilBalance, type SoilBalance } from "../calc/earth/soilBalance";
import type { Job } from "./facts";
import type { Ground } from "./ground";
import { reckon, type Reckoned } from "./reckoned";
import type { Water } from "./water";

/** What is dug, filled in again, taken away and brought. SI: m, m³; bank, loose and compacted as said. */
export interface Earth {
  /** From the finished grade to the bottom of the pit. */
  readonly pitDepth: Reckoned<number>;
  readonly pitLength: Reckoned<number>;
  readonly pitWidth: Reckoned<number>;
  /** Bank. */
  readonly pit: Reckoned<number>;
  /** Loose. */
  readonly bedding: Reckoned<number>;
  /** Bank. */
  readonly trench: Reckoned<number>;
  /** Bank. */
  readonly shelf: Reckoned<number>;
  /** Bank. */
  readonly dug: Reckoned<number>;
  /** Compacted. */
  readonly backfill: Reckoned<number>;
  /** Over the ground it stands on. */
  readonly bermHeight: Reckoned<number>;
  /** Compacted. */
  readonly berm: Reckoned<number>;
  readonly balance: Reckoned<SoilBalance>;
  /** Loose. */
  readonly spoilAway: Reckoned<number>;
  readonly spoilLoads: Reckoned<number>;
  /** Loose. */
  readonly fillNeed: Reckoned<number>;
  readonly fillLoads: Reckoned<number>;
}

export function reckonEarth(job: Job, { topLipLevel }: Water, ground: Ground): Earth {
  const { basinWaterDepth, rimBelowGrade, beddingDepth, basinSideSlope: slope = 0, pitMargin } = job;
  const pitDepth = reckon([basinWaterDepth, rimBelowGrade, beddingDepth], (water, rim, sand) => water + rim + sand);
  const widened = (side: number | undefined): Reckoned<number> =>
    reckon([side, pitMargin], (inside, margin) => inside + 2 * margin);
  const [pitLength, pitWidth] = [widened(job.basinLength), widened(job.basinWidth)];
  const pit = reckon([pitLength, pitWidth, pitDepth], (length, width, depth) => pitVolume(length, width, depth, slope));
  const bedding = reckon([pitLength, pitWidth, beddingDepth], (length, width, sand) => length * width * sand);
  const trench = reckon(
    [job.trenchLength, job.trenchWidth, job.trenchDepth],
    (length, width, depth) => length * width * depth,
  );
  // Along the line, by station: what lies over the surface is dug, what it lies over is filled.
  const { cut: shelf, fill: berm, atLip } = ground;
  const dug = reckon([pit, trench, shelf], (a, b, c) => a + b + c);
  // The basin itself, from the rim of the pit down to its bedding, is not filled in again.
  const basin = reckon([job.basinLength, job.basinWidth, pitDepth, beddingDepth], (length, width, depth, sand) =>
    pitVolume(length, width, depth - sand, slope),
  );
  const backfill = reckon([pit, bedding, basin, trench], (whole, sand, kept, ditch) => whole - sand - kept + ditch);
  // It carries the box, whose lip is the top lip; where the ground is higher the box is dug in.
  const bermHeight = reckon([topLipLevel, job.boxHeight, atLip], (lip, box, under) => Math.max(0, lip - box - under));
  const balance = reckon([dug, berm, backfill, job.spoilTruck], (bank, raised, filled, truck) =>
    soilBalance(bank, raised + filled, soilUsed(job), truck),
  );
  return {
    pitDepth,
    pitLength,
    pitWidth,
    pit,
    bedding,
    trench,
    shelf,
    dug,
    backfill,
    bermHeight,
    berm,
    balance,
    spoilAway: reckon([balance], ({ away }) => away.loose),
    spoilLoads: reckon([balance], ({ loadsAway }) => loadsAway),
    fillNeed: reckon([balance], ({ fill }) => fill.loose),
    fillLoads: reckon([balance], ({ loadsFill }) => loadsFill),
  };
}

function soilUsed({ ownSwell, ownShrink, soil }: Job): ReturnType<typeof readSoil> {
  return ownSwell !== undefined && ownShrink !== undefined ? soilOf(ownSwell, ownShrink) : readSoil(soil ?? "loam");
}
