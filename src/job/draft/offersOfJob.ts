import { fromInside, type Measure } from "../../calc/quantity/measures";
import { PIPE_TYPES, USUAL_PIPE } from "../../calc/tables/pipes";
import { readSoil } from "../../calc/ground/soil";
import type { Job } from "../facts";
import { crewRate, machinesRate } from "../labor";
import { known } from "../reckoned";
import type { Offers, OfferedPipe, UnitPrices } from "./offers";
import { asOffer } from "./works";

/** Sizes of the usual pipe that are tried, m. */
const SIZES = { least: 0.03, most: 0.17 } as const;

/** What a job's own tables offer, where there is no book: its pumps, rolls, machine and price list. */
export function offersOfJob(job: Partial<Job> & Pick<Job, "system">): Offers {
  const { moduleLength, moduleWidth, moduleHeight, machineWidth, machineLift } = job;
  const price = (code: string): number | undefined =>
    job.prices?.find((line) => line.code?.toLowerCase() === code.toLowerCase())?.cost ?? undefined;
  const module = price("MODULE");
  return {
    pumps: (job.pumps ?? []).flatMap(asOffer),
    pipes: usualPipes(job.system, (price("PIPE-1") ?? 0) * fromInside("length", 1, job.system)),
    modules:
      moduleLength === undefined || moduleWidth === undefined || moduleHeight === undefined || module === undefined
        ? []
        : [{ length: moduleLength, width: moduleWidth, height: moduleHeight, price: module }],
    tubs: [],
    rolls: (job.rolls ?? []).flatMap(({ width, price: asked, per = "length", longest = Infinity }) =>
      width === undefined || asked === undefined ? [] : [{ width, price: asked, per, longest }],
    ),
    machines:
      machineWidth === undefined || machineLift === undefined
        ? []
        : [{ name: "the machine of the book", width: machineWidth, lift: machineLift }],
    prices: unitPrices(job, price),
  };
}

/** The usual pipe in the sizes a stream takes, at one price for a meter. */
export function usualPipes(system: Job["system"], price: number): OfferedPipe[] {
  const type = PIPE_TYPES.find(({ name }) => name === USUAL_PIPE[system]);
  return (type?.sizes ?? [])
    .map(({ nominal }) => nominal)
    .filter((size) => size >= SIZES.least && size <= SIZES.most)
    .map((size) => ({ size, type: USUAL_PIPE[system], price }));
}

/** Rows of the usual tasks. */
const TASK = { dig: 1, loadSpoil: 3, liner: 4, module: 5, gravel: 9 } as const;

/** What one unit of a basin's parts costs in place, from price list, wages and production rates. */
function unitPrices(
  job: Partial<Job> & Pick<Job, "system">,
  price: (code: string) => number | undefined,
): UnitPrices {
  const { system, spoilTruck = 6, truckPayload = 9000, soil = "loam" } = job;
  const whole = { burden: [], wages: [], machines: [], ...job } as unknown as Job;
  const labor = job.laborRateTyped ?? known(crewRate(whole)) ?? 0;
  const machine = job.machineRateTyped ?? known(machinesRate(whole)) ?? 0;
  const inPlace = (row: number, measure?: Measure): number => {
    const { hours = 0, machineHours = 0 } = job.tasks?.[row] ?? {};
    const each = (job.difficulty ?? 1) * (hours * labor + machineHours * machine);
    return measure ? each * fromInside(measure, 1, system) : each;
  };
  const bought = (code: string, measure: Measure): number => (price(code) ?? 0) * fromInside(measure, 1, system);
  const haul = (price("STONEHAUL") ?? 0) / truckPayload;
  const { loose } = readSoil(soil);
  const rolls = (job.rolls ?? []).flatMap(({ width = 0, price: asked = 0, per, longest = 30 }) =>
    width > 0
      ? [per === "area" ? asked * fromInside("area", 1, system) : per === "roll" ? asked / (width * longest) : (asked * fromInside("length", 1, system)) / width]
      : [],
  );
  return {
    dig:
      inPlace(TASK.dig, "earth") +
      loose * (inPlace(TASK.loadSpoil, "earth") + (price("SPOIL") ?? 0) / spoilTruck),
    beddingVolume: bought("BEDDING", "earth"),
    linerArea: (rolls.length > 0 ? Math.min(...rolls) : 0) + inPlace(TASK.liner, "area"),
    fabricArea: bought("FABRIC", "area"),
    stone: bought("BASINSTONE", "load") + haul + inPlace(TASK.gravel, "load"),
    gravel: bought("GRAVEL", "load") + haul + inPlace(TASK.gravel, "load"),
    setModule: inPlace(TASK.module),
    well: price("PUMPWELL") ?? 0,
  };
}
