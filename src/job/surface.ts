import type { DesignedSurface } from "../calc/ground/overGround";
import type { LinerStation } from "../calc/ground/linerRun";
import type { Job } from "./facts";
import { isKnown, known } from "./derived";
import { MOST_DROPS, type Water } from "./water";

/** The surface to dig and fill to, and the liner on it. SI. */
export interface Surface {
  /** By the row of the sheet: the berm's crest, the bed below each drop, the edge of the basin. */
  readonly stations: readonly (DesignedSurface | undefined)[];
  readonly liner: readonly LinerStation[];
}

/** Below the finished bed by what lies on it; level below each drop, but for a pool, which rises to its lip. */
export function surfaceOf(job: Job, { drops, treads, topLipLevel }: Water): Surface {
  const { shelfDepth, boxHeight, bermLength = 0, bermWidth, bedWidth = 0, shelfMargin = 0 } = job;
  const top = known(topLipLevel);
  if (top === undefined) return { stations: Array.from({ length: MOST_DROPS + 2 }, () => undefined), liner: [] };
  const width = bedWidth + 2 * shelfMargin;
  const crest: DesignedSurface | undefined =
    bermLength > 0 && boxHeight !== undefined && bermWidth !== undefined
      ? { station: -bermLength, design: top - boxHeight, width: bermWidth }
      : undefined;
  const stations: (DesignedSurface | undefined)[] = [crest];
  const liner: LinerStation[] = [];
  let [reached, fallen] = [0, 0];
  let lip = shelfDepth === undefined ? undefined : top - shelfDepth;
  let edge = crest?.design ?? lip;
  const { bankReach, bankHeight, bankSlope } = job;
  const onLiner = (station: number, bed: number, drop: number): void => {
    if ([bankReach, bankHeight, bankSlope, job.bedWidth].every(isKnown))
      liner.push({
        station,
        bed,
        drop,
        width: bedWidth + 2 * (bankReach ?? 0),
        bank: (bankHeight ?? 0) + (shelfDepth ?? 0),
        bankSlope: bankSlope ?? 0,
      });
  };
  for (let index = 0; index < MOST_DROPS; index++) {
    const tread = treads[index] ?? 0;
    fallen += drops[index] ?? 0;
    if (!(tread > 0) || lip === undefined || edge === undefined || shelfDepth === undefined) {
      stations.push(undefined);
    } else {
      const level = top - fallen - shelfDepth;
      const design = level - (job.poolDepths[index]?.deeper ?? 0);
      stations.push({ station: reached, design, width, step: edge - design });
      onLiner(reached, design, Math.max(0, lip - design));
      lip = edge = level;
    }
    reached += Math.max(0, tread);
  }
  if (reached > 0 && lip !== undefined && edge !== undefined) {
    stations.push({ station: reached, design: edge, width });
    onLiner(reached, edge, 0);
  } else stations.push(undefined);
  return { stations, liner };
}
