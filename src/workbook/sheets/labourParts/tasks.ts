/** A task of the job, with production rates of our own invention. */
export interface Task {
  readonly name: string;
  /** The names that add up to the quantity, or "once": one job, as soon as there is one to build. */
  readonly quantity: "once" | readonly string[];
  readonly unit: { readonly US: string; readonly SI: string };
  /** Hours of one person for one unit; ours, to be replaced by the user's own. */
  readonly hours: { readonly US: number; readonly SI: number };
  /** Hours of a machine for one unit. */
  readonly machine: { readonly US: number; readonly SI: number };
}

const both = (value: number): { US: number; SI: number } => ({ US: value, SI: value });
const same = (unit: string): { US: string; SI: string } => ({ US: unit, SI: unit });
const EARTH = { US: "yd³", SI: "m³" };
const LOAD = { US: "ton", SI: "t" };
const LENGTH = { US: "ft", SI: "m" };
const AREA = { US: "ft²", SI: "m²" };

/** The usual tasks, in the order they are done. */
export const TASKS: readonly Task[] = [
  { name: "Set out and protect the site", quantity: "once", unit: same("job"), hours: both(3.5), machine: both(0) },
  {
    name: "Dig pit, trench and bed",
    quantity: ["DugVolume"],
    unit: EARTH,
    hours: { US: 0.35, SI: 0.45 },
    machine: { US: 0.28, SI: 0.36 },
  },
  {
    name: "Build the berm in layers",
    quantity: ["BermNeed"],
    unit: EARTH,
    hours: { US: 0.55, SI: 0.7 },
    machine: { US: 0.22, SI: 0.3 },
  },
  {
    name: "Load spoil",
    quantity: ["SpoilAway"],
    unit: EARTH,
    hours: { US: 0.15, SI: 0.2 },
    machine: { US: 0.12, SI: 0.15 },
  },
  {
    name: "Fabric and liner",
    quantity: ["LinerBuyArea"],
    unit: AREA,
    hours: { US: 0.014, SI: 0.15 },
    machine: both(0),
  },
  {
    name: "Void modules and pump well",
    quantity: ["ModuleCount"],
    unit: same("each"),
    hours: both(0.3),
    machine: both(0),
  },
  { name: "Pipe", quantity: ["PipeTotalLength"], unit: LENGTH, hours: { US: 0.11, SI: 0.36 }, machine: both(0) },
  {
    name: "Boulders of drops and banks",
    quantity: ["BoulderTons"],
    unit: LOAD,
    hours: { US: 1.9, SI: 2.1 },
    machine: { US: 0.75, SI: 0.8 },
  },
  {
    name: "Lip stones, levelled and foamed",
    quantity: ["LipStoneCount"],
    unit: same("each"),
    hours: both(1.4),
    machine: both(0.4),
  },
  {
    name: "Gravel and stone around modules",
    quantity: ["GravelTons", "BasinStoneTons"],
    unit: LOAD,
    hours: { US: 0.8, SI: 0.9 },
    machine: { US: 0.2, SI: 0.2 },
  },
  { name: "Pump, plumbing and start-up", quantity: "once", unit: same("job"), hours: both(5), machine: both(0) },
  { name: "Clean up and hand over", quantity: "once", unit: same("job"), hours: both(4.5), machine: both(0.5) },
];
