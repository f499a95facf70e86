import { fromInside, type Measure } from "../calc/quantity/measures";
import type { Basin } from "./basin";
import type { Job, JobRow } from "./facts";
import type { Earth } from "./earth";
import type { Liner } from "./liner";
import type { Pump } from "./pump";
import { isKnown, derive, type Derived } from "./derived";
import { sumOf, total } from "./rows";
import { roundingOf } from "./money";
import { deriveSetting, settingRate, type Setting } from "./setting";
import { boulderTimes, pipeTimes, stoneTimes, tubTimes } from "./sizeHours";
import type { Stone } from "./stone";
import type { Water } from "./water";

/** Rows of tasks that the workbook has room for; the last three are the user's own. */
const TASK_ROWS = 18;

/** Tasks that are calculated by size or by their own machine, by their place among the usual ones. */
const PLACES = { tub: 6, pipe: 7, boulders: 10, lips: 11 } as const;

/** How many times its rate's hours and machine hours a task takes. */
interface Times {
  readonly hours: number;
  readonly machineHours: number;
}

/** A task with its hours; quantities in the unit the trade counts them in. */
export interface Task {
  readonly quantity: Derived<number>;
  readonly hours: Derived<number>;
  readonly machineHours: Derived<number>;
  /** Money. */
  readonly labor: Derived<number>;
  readonly machines: Derived<number>;
  /** Named or counted, it has a quantity and both rates; 0 says that it takes none. Of what there is none nobody asks. */
  readonly complete: boolean;
}

/** The crew, its hours and what they cost. */
export interface Labor {
  readonly crewSize: Derived<number>;
  /** What an hour of one person costs, on average. */
  readonly crewHourRate: Derived<number>;
  readonly machineHourRate: Derived<number>;
  readonly laborRate: Derived<number>;
  readonly machineRate: Derived<number>;
  /** What sets the heaviest stone, and what its hour costs. */
  readonly setting: Setting;
  readonly stoneMachineRate: Derived<number>;
  /** How many times the usual hours its pipes and lip stones take, by their size and weight. */
  readonly pipeTimes: Derived<number>;
  readonly stoneTimes: Derived<number>;
  readonly boulderTimes: Derived<number>;
  readonly tubTimes: Derived<Times>;
  readonly tasks: readonly Task[];
  readonly hours: Derived<number>;
  readonly machineHours: Derived<number>;
  readonly workingDays: Derived<number>;
  readonly laborCost: Derived<number>;
  readonly machineCost: Derived<number>;
}

/** What the design hands to the crew. */
interface Design {
  readonly basin: Basin;
  readonly water: Water;
  readonly pump: Pump;
  readonly liner: Liner;
  readonly stone: Stone;
  readonly earth: Earth;
}

export function deriveLabor(job: Job, design: Design): Labor {
  const crewHourRate = crewRate(job);
  const machineHourRate = machinesRate(job);
  const laborRate = job.laborRateTyped ?? crewHourRate;
  const machineRate = job.machineRateTyped ?? machineHourRate;
  const setting = deriveSetting(job, design.stone);
  const stoneMachineRate = settingRate(job, setting, machineRate);
  const quantities = quantitiesOf(job, design);
  const times = {
    pipe: pipeTimes(job),
    stone: stoneTimes(job, design.stone),
    tub: tubTimes(job),
    boulder: boulderTimes(job, design.stone),
  };
  const alike = (both: Derived<number>): Derived<Times> =>
    derive([both], (each) => ({ hours: each, machineHours: each }));
  const bySize = new Map<number, Derived<Times>>([
    [PLACES.tub, times.tub],
    [PLACES.pipe, alike(times.pipe)],
    [PLACES.lips, alike(times.stone)],
    [PLACES.boulders, alike(times.boulder)],
  ]);
  const tasks = Array.from({ length: TASK_ROWS }, (_, index) =>
    taskOf(
      job.tasks[index] ?? {},
      quantities[index],
      bySize.has(index) ? bySize.get(index) : { hours: 1, machineHours: 1 },
      job.difficulty,
      roundingOf(job),
      laborRate,
      index === PLACES.boulders || index === PLACES.lips ? stoneMachineRate : machineRate,
    ),
  );
  const people = job.wages.flatMap(({ people: count }) => (count === undefined ? [] : [count]));
  const crewSize = people.length === 0 ? undefined : total(people);
  const [hours, machineHours] = [hoursOf(tasks, "hours"), hoursOf(tasks, "machineHours")];
  return {
    crewSize,
    crewHourRate,
    machineHourRate,
    laborRate,
    machineRate,
    setting,
    stoneMachineRate,
    pipeTimes: times.pipe,
    stoneTimes: times.stone,
    boulderTimes: times.boulder,
    tubTimes: times.tub,
    tasks,
    hours,
    machineHours,
    workingDays: derive([hours, crewSize, job.dayHours], (taken, crew, day) => taken / (crew * day)),
    laborCost: derive([laborRate, hours], () => sumOf(tasks.map(({ labor }) => labor))),
    machineCost: derive([machineRate, machineHours], () => sumOf(tasks.map(({ machines }) => machines))),
  };
}

function sumKnown(values: readonly (number | undefined)[]): number {
  return total(values.filter(isKnown));
}

/** Hours that come to nothing while a task's are open are not known yet. */
function hoursOf(tasks: readonly Task[], which: "hours" | "machineHours"): Derived<number> {
  const sum = sumOf(tasks.map((task) => task[which]));
  return sum === 0 && tasks.some(({ complete }) => !complete) ? undefined : sum;
}

function taskOf(
  typed: JobRow<"tasks">,
  drafted: Derived<number>,
  times: Derived<Times>,
  difficulty: number | undefined,
  round: (amount: number) => number,
  laborRate: Derived<number>,
  machineRate: Derived<number>,
): Task {
  const quantity = typed.quantity === undefined ? drafted : (typed.quantity ?? undefined);
  const taking = (rate: number | undefined, key: keyof Times): Derived<number> =>
    derive([quantity, rate, times, difficulty], (amount, each, size, factor) => amount * each * size[key] * factor);
  const cost = (hours: Derived<number>, rate: Derived<number>): Derived<number> =>
    derive([hours, rate], (taken, each) => round(taken * each));
  const [hours, machineHours] = [taking(typed.hours, "hours"), taking(typed.machineHours, "machineHours")];
  return {
    quantity,
    hours,
    machineHours,
    labor: cost(hours, laborRate),
    machines: cost(machineHours, machineRate),
    complete:
      quantity === 0 ||
      (typed.name === undefined && [quantity, typed.hours, typed.machineHours].every((each) => each === undefined)) ||
      [quantity, typed.hours, typed.machineHours, times].every((each) => each !== undefined),
  };
}

/** How much there is to do of each of the usual tasks, in their order, in the unit of the system. */
function quantitiesOf(job: Job, { water, basin, pump, liner, stone, earth }: Design): readonly Derived<number>[] {
  const shown = (measure: Measure, inside: Derived<number>): Derived<number> =>
    derive([inside], (value) => fromInside(measure, value, job.system));
  const once = derive([water.designFlow], () => 1);
  return [
    once,
    shown("earth", earth.dug),
    shown("earth", earth.berm),
    shown("earth", earth.spoilAway),
    shown("area", liner.buyArea),
    derive([basin.moduleCount], (modules) => modules + basin.wells),
    derive([basin.hold], () => basin.tubs),
    shown("length", pump.pipeLength),
    shown("length", job.cableLength ?? 0),
    derive([job.spillBoxes, water.designFlow], (boxes) => boxes),
    shown("load", stone.boulders),
    stone.lipStoneCount,
    shown(
      "load",
      derive([stone.gravel, stone.basinStone], (gravel, around) => gravel + around),
    ),
    derive([water.designFlow, job.pumpCount], (_, pumps) => pumps),
    once,
  ];
}

/** Wage and burden of the crew, weighed by how many of each are on it. */
export function crewRate(job: Job): Derived<number> {
  const told = [
    ...job.wages.map(({ role, wage, people }) => inFull(role, wage, people)),
    ...job.burden.map(({ line, share }) => inFull(line, share)),
  ];
  if (told.includes(false)) return undefined;
  const burden = sumKnown(job.burden.map(({ share }) => share));
  const rates = job.wages.map(({ wage, people = 0 }) => ({
    people,
    rate: wage === undefined ? undefined : roundingOf(job)(wage * (1 + burden)),
  }));
  return weighed(
    job,
    rates.map(({ rate, people }) => [rate, people]),
    job.wages.some(({ people }) => people !== undefined),
  );
}

/** Cost of a machine hour, weighed by the share each machine has of them. */
export function machinesRate(job: Job): Derived<number> {
  const { machines } = job;
  if (machines.some(({ name, own, fuel, upkeep, share }) => !inFull(name, own, fuel, upkeep, share))) return undefined;
  const rates = machines.map(({ own, fuel, upkeep, share = 0 }) => {
    const parts = [own, fuel, upkeep].filter(isKnown);
    return [parts.length === 0 ? undefined : roundingOf(job)(total(parts)), share] as const;
  });
  return weighed(
    job,
    rates,
    machines.some(({ share }) => share !== undefined),
  );
}

/** Whether a row that says something has all its numbers; 0 says that there is none. */
function inFull(name: string | undefined, ...numbers: readonly (number | undefined)[]): boolean {
  return numbers.every(isKnown) || [name, ...numbers].every((cell) => cell === undefined);
}

function weighed(
  job: Job,
  rates: readonly (readonly [rate: number | undefined, weight: number])[],
  anyWeight: boolean,
): Derived<number> {
  if (!anyWeight || !rates.some(([rate]) => rate !== undefined)) return undefined;
  const weight = total(rates.map(([, each]) => each));
  const sum = total(rates.map(([rate = 0, each]) => rate * each));
  return derive([sum, weight], (all, by) => (by === 0 ? NaN : roundingOf(job)(all / by)));
}
