import { toInside } from "../../calc/quantity/measures";
import { fallCut } from "../../calc/liner/fall";
import { linerCut } from "../../calc/liner/liner";
import { attempt, isKnown } from "../derived";
import { tubsAsPit } from "../basin";
import type { Water } from "../water";
import type { Flowing } from "./bed";
import type { OfferedRoll } from "./offers";
import type { Sketch } from "./sketch";
import { tape } from "./words";

/** Rolls that the job has room for. */
const MOST_ROLLS = 4;

/** Rolls that hold the pieces, and a seam where none does. */
export function linerRule(sketch: Sketch, { water }: Flowing): void {
  const { system, offers } = sketch;
  const narrow = piecesOf(sketch, water).map(({ length, width }) => Math.min(length, width));
  const most = Math.max(0, ...narrow);
  if (offers.rolls.length > 0) {
    sketch.assume("rolls", () => ({
      value: rollsFor(offers.rolls, narrow).map(({ price, per, ...roll }) => ({
        ...roll,
        per,
        // On the sheet a price is for a unit of the system.
        price: per === "roll" ? price : price * toInside(per, 1, system),
      })),
      reason: `Rolls of the book next wider than the pieces, ${tape(most, system)} across at most.`,
    }));
  }
  const widest = Math.max(0, ...sketch.job.rolls.map(({ width = 0 }) => width));
  if (widest > 0 && widest < most) {
    sketch.assume("seamLap", () => ({
      value: sketch.pick(4 * 0.0254, 0.1),
      reason: `No roll is ${tape(most, system)} wide, so a piece is seamed with tape.`,
    }));
  }
}

function piecesOf({ job, system }: Sketch, water: Water): { length: number; width: number }[] {
  const overlap = job.linerOverlap ?? 0.3;
  const stream = attempt(() =>
    fallCut({
      drops: water.drops.filter((drop) => drop !== undefined && drop > 0) as number[],
      treads: water.treads.filter((tread) => tread !== undefined && tread > 0) as number[],
      bedWidth: (job.bedWidth ?? 0) + 2 * (job.bankReach ?? 0),
      bankHeight: job.bankHeight ?? 0,
      overlap,
      slackPerDrop: job.slackPerDrop ?? (system === "US" ? 0.0762 : 0.08),
      roundTo: job.cutRounding ?? 0.1,
    }),
  );
  const basin = attempt(() =>
    linerCut({
      length: job.basinLength ?? 0,
      width: job.basinWidth ?? 0,
      depth: job.basinWaterDepth ?? 0,
      overlap,
      sideSlope: job.basinSideSlope ?? 0,
      roundTo: job.cutRounding ?? 0.1,
    }),
  );
  return (tubsAsPit(job) > 0 ? [stream] : [stream, basin]).filter(isKnown);
}

/** For each piece the narrowest roll that holds it and the next wider one; where none does, the widest. */
function rollsFor(rolls: readonly OfferedRoll[], narrow: readonly number[]): OfferedRoll[] {
  const sorted = [...rolls].sort((a, b) => a.width - b.width);
  if (sorted.length <= MOST_ROLLS) return sorted;
  const picked = new Set<OfferedRoll>();
  for (const side of [...narrow].sort((a, b) => b - a)) {
    const holding = sorted.filter(({ width }) => width >= side);
    for (const roll of holding.length > 0 ? holding.slice(0, 2) : sorted.slice(-1)) picked.add(roll);
  }
  return [...picked].slice(0, MOST_ROLLS);
}
