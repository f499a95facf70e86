import type { ProductKind } from "../../book/kinds";
import { readSoil } from "../../calc/earth/soil";
import { fromInside, type Measure } from "../../calc/quantity/measures";
import type { Job } from "../facts";
import { crewRate, machinesRate } from "../labor";
import { known } from "../derived";
import { timesOfTub } from "../sizeHours";
import type { UnitPrices } from "./offers";

/** Rows of the usual tasks. */
const TASK = { dig: 1, loadSpoil: 3, liner: 4, module: 5, tub: 6, gravel: 12, pump: 13 } as const;

/** What one unit of a basin's parts costs in place, from price list, wages and production rates. */
export function unitPrices(job: Job, price: (kind: ProductKind) => number, linerArea: number): UnitPrices {
  const { system, spoilTruck = 6, truckPayload = 9000, soil = "loam" } = job;
  const labor = job.laborRateTyped ?? known(crewRate(job)) ?? 0;
  const machine = job.machineRateTyped ?? known(machinesRate(job)) ?? 0;
  const inPlace = (row: number, measure?: Measure): number => {
    const { hours = 0, machineHours = 0 } = job.tasks[row] ?? {};
    const each = (job.difficulty ?? 1) * (hours * labor + machineHours * machine);
    return measure ? each * fromInside(measure, 1, system) : each;
  };
  const delivery = price("stone delivery");
  const haul = delivery / truckPayload;
  return {
    dig:
      inPlace(TASK.dig, "earth") +
      readSoil(soil).loose * (inPlace(TASK.loadSpoil, "earth") + price("spoil haul") / spoilTruck),
    beddingVolume: price("bedding sand"),
    linerArea,
    layLiner: inPlace(TASK.liner, "area"),
    fabricArea: price("fabric"),
    stone: price("basin stone") + inPlace(TASK.gravel, "load"),
    haulStone: (weight) => (weight > 0 ? Math.max(delivery, haul * weight) : 0),
    gravel: price("gravel") + haul + inPlace(TASK.gravel, "load"),
    setModule: inPlace(TASK.module),
    setTub: (volume) => {
      const { hours = 0, machineHours = 0 } = job.tasks[TASK.tub] ?? {};
      // What the steps do not reach has no hours, and no price that could be compared.
      const times = timesOfTub(job.sizeHours, volume) ?? { hours: Infinity, machineHours: 0 };
      return (job.difficulty ?? 1) * (hours * times.hours * labor + machineHours * times.machineHours * machine);
    },
    well: price("pump well") + inPlace(TASK.module),
    setPump: inPlace(TASK.pump),
  };
}
