import { reckonBasin } from "./basin";
import { checksOf, type Check } from "./checks";
import { reckonDrain } from "./drain";
import type { Job } from "./facts";
import { reckonEarth } from "./earth";
import { reckonGround } from "./ground";
import { reckonLabor } from "./labor";
import { reckonLevels } from "./levels";
import { reckonLiner } from "./liner";
import { reckonPrice } from "./price";
import { lazily } from "./reckoned";
import { reckonPump } from "./pump";
import { standingOf } from "./standing";
import { reckonStone } from "./stone";
import { reckonTakeoff } from "./takeoff";
import { needsOf } from "./takeoff/lines";
import type { Topics } from "./topics";
import { reckonWater } from "./water";

/** Everything that follows from a job's facts. */
export interface State extends Topics {
  /** Every mistake that is looked for, and what was found; made when it is asked for. */
  readonly checks: readonly Check[];
}

/**
 * From the facts of a job to its price: the second reckoning, beside that of the workbook's cells. Pure; SI inside, money
 * in the job's currency.
 */
export function evaluate(job: Job): State {
  const water = reckonWater(job);
  const ground = reckonGround(job, water);
  const drain = reckonDrain(job, water);
  const basin = reckonBasin(job, drain);
  const pump = reckonPump(job, water, basin);
  const liner = reckonLiner(job, water, ground);
  const stone = reckonStone(job, water, basin);
  const earth = reckonEarth(job, water, ground);
  const labor = reckonLabor(job, { water, basin, pump, liner, stone, earth });
  const takeoff = reckonTakeoff(job, needsOf(job, { water, pump, basin, liner, stone, earth }));
  const standing = standingOf(job, {
    takeoff,
    labor,
    design: [water, ground, drain, basin, pump, liner, stone, earth],
  });
  const price = reckonPrice(job, { takeoff, labor }, standing, evaluate);
  const topics = { water, ground, drain, basin, pump, liner, stone, earth, labor, takeoff, price };
  // No price needs levels or checks, and who moves a fact a hundred times asks for nothing but the price.
  const levels = lazily(() => reckonLevels(job, { water, basin, earth, ground }));
  const checks = lazily(() => checksOf(job, { ...topics, levels: levels() }));
  return {
    ...topics,
    get levels() {
      return levels();
    },
    get checks() {
      return checks();
    },
  };
}
