import type { Topics } from "../topics";
import type { Job } from "../facts";
import { basinChecks } from "./basin";
import { blankCheck } from "./blanks";
import type { Check } from "./check";
import { laborChecks, ordersChecks, priceChecks, ratesChecks, takeoffChecks } from "./money";
import { groundChecks } from "./ground";
import { levelsChecks } from "./levels";
import { pumpChecks } from "./pump";
import { earthChecks, linerChecks, stoneChecks } from "./stone";
import { siteChecks, waterChecks } from "./water";

export { VERDICTS, type Check, type Verdict } from "./check";

/** Every mistake that is looked for in a job, sheet by sheet in the order of the work. */
export function checksOf(job: Job, state: Topics): Check[] {
  return [
    blankCheck(job, "Site"),
    ...siteChecks(job, state),
    blankCheck(job, "Ground"),
    ...groundChecks(job, state),
    blankCheck(job, "Water"),
    ...waterChecks(job, state),
    blankCheck(job, "Pump"),
    ...pumpChecks(job, state),
    blankCheck(job, "Basin"),
    ...basinChecks(job, state),
    blankCheck(job, "Liner"),
    ...linerChecks(job, state),
    blankCheck(job, "Stone"),
    ...stoneChecks(job, state),
    blankCheck(job, "Earth"),
    ...earthChecks(job, state),
    blankCheck(job, "Levels"),
    ...levelsChecks(job, state),
    blankCheck(job, "Hours"),
    ...laborChecks(job, state),
    ...ratesChecks(job),
    ...takeoffChecks(state),
    blankCheck(job, "Price"),
    ...priceChecks(job, state),
    ...ordersChecks(job, state),
  ];
}
