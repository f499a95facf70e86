import { shippedLabor } from "../../../book/shipped/people";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import type { CellValue } from "../../model";

/** A task of the job; how long one unit of it takes says the book that ships, in the same order. */
export interface Task {
  readonly name: string;
  /** The names that add up to the quantity, or "once": one job, as soon as there is one to build. */
  readonly quantity: "once" | readonly string[];
  /** Its machine is the one that sets the heaviest stone. */
  readonly stones?: true;
  /** The name that says how many times its hours it takes, by size. */
  readonly times?: string;
  /** The same of its machine hours, where those are others. */
  readonly machineTimes?: string;
  /** Lines of the takeoff that it puts into place. */
  readonly places?: RegExp;
}

/** The usual tasks, in the order they are done. */
export const TASKS: readonly Task[] = [
  { name: "Set out and protect the site", quantity: "once" },
  { name: "Dig pit, trench and bed", quantity: ["DugVolume"], places: /^BEDDING$/ },
  { name: "Build the berm in layers", quantity: ["BermNeed"], places: /^FILL$/ },
  { name: "Load spoil", quantity: ["SpoilAway"], places: /^SPOIL$/ },
  { name: "Fabric and liner", quantity: ["LinerBuyArea"], places: /^(LINER|FABRIC|SEAMTAPE)$/ },
  {
    name: "Void modules and pump wells",
    quantity: ["ModuleCount", 'COUNTIF(PartKinds,"*well")'],
    places: /^(MODULE|PUMPWELL)$/,
  },
  {
    name: "Tubs, set level on their bed",
    quantity: ['IF(BasinHold="","",COUNTIF(PartKinds,"tub"))'],
    times: "TubSizeTimes",
    machineTimes: "TubSizeMachineTimes",
    places: /^TUB$/,
  },
  { name: "Pipe", quantity: ["PipeTotalLength"], times: "PipeSizeTimes", places: /^(PIPE-\d+|RISER|FIT-.+)$/ },
  { name: "Cable along the trench", quantity: ["N(CableLength)"], places: /^CABLE$/ },
  { name: "Spillway boxes, set level", quantity: ['IF(DesignFlow="","",SpillBoxes)'], places: /^SPILLBOX$/ },
  {
    name: "Boulders of drops and banks",
    quantity: ["BoulderTons"],
    stones: true,
    times: "BoulderSizeTimes",
    places: /^BOULDER$/,
  },
  {
    name: "Lip stones, set level and foamed",
    quantity: ["LipStoneCount"],
    stones: true,
    times: "LipSizeTimes",
    places: /^LIPSTONE$/,
  },
  {
    name: "Gravel and stone around modules",
    quantity: ["GravelTons", "BasinStoneTons"],
    places: /^(GRAVEL|BASINSTONE|STONEHAUL)$/,
  },
  { name: "Pumps, plumbing and start-up", quantity: ['IF(DesignFlow="","",PumpCount)'], places: /^PUMP$/ },
  { name: "Clean up and hand over", quantity: "once" },
];

/** Task, quantity, unit, hours of one person and machine hours for one unit: rows of the sheet, quantities left to it. */
export function taskRows(system: UnitSystem): CellValue[][] {
  const { rates } = shippedLabor(system);
  return TASKS.map(({ name }, row) => {
    const { unit = "", hours = "", machineHours = "" } = rates[row] ?? {};
    return [name, "", unit, hours, machineHours];
  });
}
