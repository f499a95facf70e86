import { pitVolume } from "../calc/earth/earthworks";
import { readSoil, soilOf } from "../calc/earth/soil";
import { soilBalance, type SoilBalance } from "../calc/earth/soilBalance";
import type { Job } from "./facts";
import type { Ground } from "./ground";
import { derive, type Derived } from "./derived";
import type { Water } from "./water";

/** What is dug, filled in again, taken away and brought. SI: m, m³; bank, loose and compacted as said. */
export interface Earth {
  /** From the finished grade to the bottom of the pit. */
  readonly pitDepth: Derived<number>;
  readonly pitLength: Derived<number>;
  readonly pitWidth: Derived<number>;
  /** Bank. */
  readonly pit: Derived<number>;
  /** Loose. */
  readonly bedding: Derived<number>;
  /** Bank. */
  readonly trench: Derived<number>;
  /** Bank. */
  readonly shelf: Derived<number>;
  /** Bank. */
  readonly dug: Derived<number>;
  /** Compacted. */
  readonly backfill: Derived<number>;
  /** Over the ground it stands on. */
  readonly bermHeight: Derived<number>;
  /** Compacted. */
  readonly berm: Derived<number>;
  readonly balance: Derived<SoilBalance>;
  /** Loose. */
  readonly spoilAway: Derived<number>;
  readonly spoilLoads: Derived<number>;
  /** Loose. */
  readonly fillNeed: Derived<number>;
  readonly fillLoads: Derived<number>;
}

export function deriveEarth(job: Job, { topLipLevel }: Water, ground: Ground): Earth {
  const { basinWaterDepth, rimBelowGrade, beddingDepth, basinSideSlope: slope = 0, pitMargin } = job;
  const pitDepth = derive([basinWaterDepth, rimBelowGrade, beddingDepth], (water, rim, sand) => water + rim + sand);
  const widened = (side: number | undefined): Derived<number> =>
    derive([side, pitMargin], (inside, margin) => inside + 2 * margin);
  const [pitLength, pitWidth] = [widened(job.basinLength), widened(job.basinWidth)];
  const pit = derive([pitLength, pitWidth, pitDepth], (length, width, depth) => pitVolume(length, width, depth, slope));
  const bedding = derive([pitLength, pitWidth, beddingDepth], (length, width, sand) => length * width * sand);
  const trench = derive(
    [job.trenchLength, job.trenchWidth, job.trenchDepth],
    (length, width, depth) => length * width * depth,
  );
  // Along the line, by station: what lies over the surface is dug, what it lies over is filled.
  const { cut: shelf, fill: berm, atLip } = ground;
  const dug = derive([pit, trench, shelf], (a, b, c) => a + b + c);
  // The basin itself, from the rim of the pit down to its bedding, is not filled in again.
  const basin = derive([job.basinLength, job.basinWidth, pitDepth, beddingDepth], (length, width, depth, sand) =>
    pitVolume(length, width, depth - sand, slope),
  );
  const backfill = derive([pit, bedding, basin, trench], (whole, sand, kept, ditch) => whole - sand - kept + ditch);
  // It carries the box, whose lip is the top lip; where the ground is higher the box is dug in.
  const bermHeight = derive([topLipLevel, job.boxHeight, atLip], (lip, box, under) => Math.max(0, lip - box - under));
  const balance = derive([dug, berm, backfill, job.spoilTruck], (bank, raised, filled, truck) =>
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
    spoilAway: derive([balance], ({ away }) => away.loose),
    spoilLoads: derive([balance], ({ loadsAway }) => loadsAway),
    fillNeed: derive([balance], ({ fill }) => fill.loose),
    fillLoads: derive([balance], ({ loadsFill }) => loadsFill),
  };
}

function soilUsed({ ownSwell, ownShrink, soil }: Job): ReturnType<typeof readSoil> {
  return ownSwell !== undefined && ownShrink !== undefined ? soilOf(ownSwell, ownShrink) : readSoil(soil ?? "loam");
}
