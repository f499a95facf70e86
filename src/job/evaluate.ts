import { deriveBasin } from "./basin";
import { checksOf, type Check } from "./checks";
import { deriveDrain } from "./drain";
import type { Job } from "./facts";
import { deriveEarth } from "./earth";
import { deriveGround } from "./ground";
import { deriveLabor } from "./labor";
import { deriveLevels } from "./levels";
import { deriveLiner } from "./liner";
import { derivePrice } from "./price";
import { lazily } from "./derived";
import { derivePump } from "./pump";
import { standingOf } from "./standing";
import { deriveStone } from "./stone";
import { deriveTakeoff } from "./takeoff";
import { needsOf } from "./takeoff/lines";
import type { Topics } from "./topics";
import { deriveWater } from "./water";

/** Everything that follows from a job's facts. */
export interface State extends Topics {
  /** Every mistake that is looked for, and what was found; made when it is asked for. */
  readonly checks: readonly Check[];
}

/**
 * From the facts of a job to its price: the second calculation, beside that of the workbook's cells. Pure; SI inside, money
 * in the job's currency.
 */
export function evaluate(job: Job): State {
  const water = deriveWater(job);
  const ground = deriveGround(job, water);
  const drain = deriveDrain(job, water);
  const basin = deriveBasin(job, drain);
  const pump = derivePump(job, water, basin);
  const liner = deriveLiner(job, water, ground);
  const stone = deriveStone(job, water, basin);
  const earth = deriveEarth(job, water, ground);
  const labor = deriveLabor(job, { water, basin, pump, liner, stone, earth });
  const takeoff = deriveTakeoff(job, needsOf(job, { water, pump, basin, liner, stone, earth }));
  const standing = standingOf(job, {
    takeoff,
    labor,
    design: [water, ground, drain, basin, pump, liner, stone, earth],
  });
  const price = derivePrice(job, { takeoff, labor }, standing, evaluate);
  const topics = { water, ground, drain, basin, pump, liner, stone, earth, labor, takeoff, price };
  // No price needs levels or checks, and who moves a fact a hundred times asks for nothing but the price.
  const levels = lazily(() => deriveLevels(job, { water, basin, earth, ground }));
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
