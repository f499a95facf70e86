import { unitLabel } from "../calc/quantity/measures";
import type { PaperCells } from "./cells";
import type { Words } from "./words";

/** What is tried before the crew leaves, with the job's own figures to hold it against. */
export function startUpSteps(cells: PaperCells, { figure, system }: Words): string[] {
  const length = unitLabel("length", system);
  const water = unitLabel("water", system);
  const hold = cells.number("BasinHold");
  const drop = cells.number("LevelDrop");
  const flow = cells.number("DeliveredFlow");
  const evaporation = cells.number("EvaporationPerDay");
  return [
    `Fill to the overflow, about ${figure(hold, 0)} ${water}, and mark the level in the pump well.`,
    `Run it 15 minutes: the level falls about ${figure(drop)} ${length}. Mark it. A bigger drop means the bed leaks.`,
    `Time a bucket at the box: the pump should bring ${figure(flow, 0)} ${unitLabel("flow", system)}.`,
    "Walk every edge, fold and lip; raise the liner where the ground is wet.",
    "Stop the pump: everything runs back, and the basin must not spill.",
    `Overnight: losing more than the ${figure(evaporation, 0)} ${water} a day that evaporate means a leak. The electrician reads the amps.`,
  ];
}
