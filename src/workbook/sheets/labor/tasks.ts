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
}

/** The usual tasks, in the order they are done. */
export const TASKS: readonly Task[] = [
  { name: "Set out and protect the site", quantity: "once" },
  { name: "Dig pit, trench and bed", quantity: ["DugVolume"] },
  { name: "Build the berm in layers", quantity: ["BermNeed"] },
  { name: "Load spoil", quantity: ["SpoilAway"] },
  { name: "Fabric and liner", quantity: ["LinerBuyArea"] },
  { name: "Void modules and pump well", quantity: ["ModuleCount"] },
  { name: "Pipe", quantity: ["PipeTotalLength"], times: "PipeSizeTimes" },
  { name: "Boulders of drops and banks", quantity: ["BoulderTons"], stones: true },
  { name: "Lip stones, levelled and foamed", quantity: ["LipStoneCount"], stones: true, times: "LipSizeTimes" },
  { name: "Gravel and stone around modules", quantity: ["GravelTons", "BasinStoneTons"] },
  { name: "Pump, plumbing and start-up", quantity: "once" },
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
