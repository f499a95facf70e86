import { reckonBasin, type Basin } from "./basin";
import { checksOf, type Check } from "./checks";
import { reckonDrain, type Drain } from "./drain";
import type { Job } from "./facts";
import { reckonEarth, type Earth } from "./earth";
import { reckonLabor, type Labor } from "./labor";
import { reckonLevels, type Levels } from "./levels";
import { reckonLiner, type Liner } from "./liner";
import { reckonPrice, type Price } from "./price";
import { lazily } from "./reckoned";
import { reckonPump, type Pump } from "./pump";
import { reckonStone, type Stone } from "./stone";
import { reckonTakeoff, type Takeoff } from "./takeoff";
import { needsOf } from "./takeoff/lines";
import { reckonWater, type Water } from "./water";

/** What the topics of a job come to. */
export interface Topics {
  readonly water: Water;
  readonly drain: Drain;
  readonly basin: Basin;
  readonly pump: Pump;
  readonly liner: Liner;
  readonly stone: Stone;
  readonly earth: Earth;
  readonly levels: Levels;
  readonly labor: Labor;
  readonly takeoff: Takeoff;
  readonly price: Price;
}

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
  const drain = reckonDrain(job, water);
  const basin = reckonBasin(job, drain);
  const pump = reckonPump(job, water, basin);
  const liner = reckonLiner(job, water);
  const stone = reckonStone(job, water, basin);
  const earth = reckonEarth(job, water);
  const levels = reckonLevels(job, water, basin, earth);
  const labor = reckonLabor(job, { basin, pump, liner, stone, earth });
  const takeoff = reckonTakeoff(job, needsOf(job, { water, pump, basin, liner, stone, earth }));
  const price = reckonPrice(job, takeoff, labor);
  const topics = { water, drain, basin, pump, liner, stone, earth, levels, labor, takeoff, price };
  const checks = lazily(() => checksOf(job, topics));
  return {
    ...topics,
    get checks() {
      return checks();
    },
  };
}
