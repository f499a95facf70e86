import { chooseMachine, hourCost } from "../book/machine";
import type { Machine } from "../book/types";
import type { Job } from "./facts";
import { roundingOf } from "./money";
import { derive, type Derived } from "./derived";
import type { Stone } from "./stone";

/** What sets the heaviest stone of the job. */
export interface Setting {
  /** Name of the machine, or one of SETTING_WORDS. */
  readonly by: Derived<string>;
  /** The machine, where one is needed and one fits. */
  readonly machine: Derived<Machine>;
}

export const SETTING_WORDS = { hand: "by hand", none: "none fits", unknown: "not known" } as const;

/** The machine of the job's own list that comes in and lifts the heaviest stone at its heaviest. */
export function deriveSetting(job: Job, stone: Stone): Setting {
  const machines = job.machines.flatMap(asMachine);
  const lifts = job.machines.flatMap(({ lift }) => (lift === undefined ? [] : [lift]));
  const choice = derive([stone.heaviest, job.handLimit], (heaviest, handLimit) => ({
    heaviest,
    ...chooseMachine(machines, { wayIn: job.accessWidth, heaviest, reach: job.setReach, handLimit }, job.system),
  }));
  return {
    by: derive([choice], (found) => {
      if (found.by === "hand") return SETTING_WORDS.hand;
      if (found.by === "machine") return found.machine.name;
      const strong = Math.max(...lifts) >= found.heaviest;
      const open = lifts.length === 0 || (job.accessWidth === undefined && strong);
      return open ? SETTING_WORDS.unknown : SETTING_WORDS.none;
    }),
    machine: derive([choice], (found) => (found.by === "machine" ? found.machine : undefined)),
  };
}

/** What an hour of work with stones costs: of the machine that is needed, else of the usual mix. */
export function settingRate(job: Job, { machine }: Setting, usual: Derived<number>): Derived<number> {
  if (job.machineRateTyped !== undefined) return job.machineRateTyped;
  const own = derive([machine], (one) => roundingOf(job)(hourCost(one)));
  return own ?? usual;
}

/** A row that says all it takes to be chosen. */
function asMachine({ name, own, fuel, upkeep, share = 0, width, lift, reach }: Job["machines"][number]): Machine[] {
  if ([name, own, fuel, upkeep, width].some((value) => value === undefined)) return [];
  return [{ name: name ?? "", own, fuel, upkeep, share, width, lift, reach, invented: false }];
}
