import { roundCents } from "../calc/money/cents";
import { say } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { Machine } from "./types";

/** What a site asks of the machine that sets its stones; SI, undefined where nobody has measured it. */
export interface Lift {
  /** Narrowest point of the way in, m. */
  readonly wayIn: number | undefined;
  /** The most the heaviest stone can weigh, kg: the heavy side, not the likely one. */
  readonly heaviest: number | undefined;
  /** How far from its slewing center the stone is set, m; the reach of the load chart where it is not known. */
  readonly reach?: number | undefined;
  /** The most that one person lifts, kg. */
  readonly handLimit?: number | undefined;
}

export type MachineChoice =
  | { readonly by: "hand" }
  | { readonly by: "machine"; readonly machine: Machine; readonly others: readonly Machine[] }
  /** No machine of the book fits, or too little is known to say; the sentence says which. */
  | { readonly by: "none" | "unknown"; readonly reason: string };

/**
 * The machine that comes in and lifts the heaviest stone, by the narrowest way it passes and by its load chart: one that
 * works the usual hours before one that is fetched for it, one with an engine before a hoist, then the cheapest hour. A lift is known at the reach of the chart and nearer, never beyond it, so that nothing is
 * extrapolated from a chart. The load chart of the machine itself, on its own ground and slings, has the last word.
 */
export function chooseMachine(machines: readonly Machine[], lift: Lift, system: UnitSystem): MachineChoice {
  const { wayIn, heaviest, reach, handLimit } = lift;
  if (heaviest === undefined) return { by: "unknown", reason: "the weight of the heaviest stone is not known" };
  if (handLimit !== undefined && heaviest <= handLimit) return { by: "hand" };
  const lifters = machines.filter(({ lift: most }) => most !== undefined && most > 0);
  if (lifters.length === 0) return { by: "none", reason: "the book holds no machine that lifts" };
  const strong = lifters.filter((machine) => lifts(machine, heaviest, reach));
  if (strong.length === 0) return { by: "none", reason: tooHeavy(lifters, heaviest, reach, system) };
  if (wayIn === undefined) return { by: "unknown", reason: "the width of the way in is not known" };
  const fitting = strong.filter(({ width }) => width !== undefined && width <= wayIn);
  const [machine, ...others] = [...fitting].sort((a, b) => rank(a) - rank(b));
  if (machine) return { by: "machine", machine, others };
  const known = strong.flatMap(({ name, width }) => (width === undefined ? [] : [{ name, width }]));
  const narrowest = known.sort((a, b) => a.width - b.width)[0];
  if (!narrowest) return { by: "unknown", reason: `the book does not say how wide ${strong[0]?.name ?? ""} is` };
  return {
    by: "none",
    reason:
      `no machine that lifts ${say("weight", whole(heaviest, system), system)} comes through ` +
      `${say("length", wayIn, system)}: ${narrowest.name} needs ${say("length", narrowest.width, system)}`,
  };
}

function lifts({ lift = 0, reach }: Machine, weight: number, wanted: number | undefined): boolean {
  if (lift < weight) return false;
  return wanted === undefined || (reach !== undefined && wanted <= reach);
}

/** More than an hour of any machine costs. */
const MORE = 1e4;

function rank(machine: Machine): number {
  return (machine.share > 0 ? 0 : 2 * MORE) + ((machine.fuel ?? 0) > 0 ? 0 : MORE) + hourCost(machine);
}

/** What an hour of a machine costs, without its operator; Infinity where the book does not say. */
export function hourCost({ own, fuel, upkeep }: Machine): number {
  return own === undefined ? Infinity : roundCents(own + (fuel ?? 0) + (upkeep ?? 0));
}

function tooHeavy(
  machines: readonly Machine[],
  heaviest: number,
  reach: number | undefined,
  system: UnitSystem,
): string {
  const strongest = machines.reduce((best, one) => ((one.lift ?? 0) > (best.lift ?? 0) ? one : best));
  const at = strongest.reach === undefined ? "" : ` at ${say("length", strongest.reach, system)}`;
  const far = reach === undefined ? "" : ` at ${say("length", reach, system)}`;
  return (
    `no machine of the book lifts ${say("weight", whole(heaviest, system), system)}${far}: ` +
    `${strongest.name} lifts ${say("weight", whole(strongest.lift ?? 0, system), system)}${at}`
  );
}

/** A weight to the full lb or kg. */
function whole(weight: number, system: UnitSystem): number {
  const unit = system === "US" ? 0.45359237 : 1;
  return Math.round(weight / unit) * unit;
}
