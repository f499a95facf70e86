import type { Job } from "./facts";
import { known, derive, type Derived } from "./derived";
import { total } from "./rows";
import { tubVolumes } from "./takeoff/asks";
import type { Stone } from "./stone";

/** Up to a size or weight, and how many times the usual hours it takes. */
type Step = readonly [upTo: number | undefined, times: number | undefined];

/** What a conversion of units leaves behind. */
const NOISE = 1e-9;

/** The next step at or over a size; no other stands in where that is not told. */
function timesAt(steps: readonly Step[], size: number): number | undefined {
  const least = size * (1 - NOISE);
  let next = Infinity;
  let found: number | undefined;
  for (const [upTo, times] of steps)
    if (upTo !== undefined && upTo >= least && upTo < next) [next, found] = [upTo, times];
  return found;
}

/** The mean over all pipe, by its length. */
export function pipeTimes({ route, riser, pumpCount = 0, sizeHours }: Job): number | undefined {
  const steps = sizeHours.map(({ pipe, pipeTimes: times }): Step => [pipe, times]);
  const pipes = [...route, ...riser.map((pipe) => ({ ...pipe, length: (pipe.length ?? 0) * pumpCount }))];
  const laid = pipes.flatMap(({ size, length = 0 }) =>
    length > 0 ? [{ length, times: size === undefined ? undefined : timesAt(steps, size) }] : [],
  );
  if (laid.some(({ times }) => times === undefined)) return undefined;
  const length = total(laid.map((pipe) => pipe.length));
  return length === 0 ? 1 : total(laid.map((pipe) => pipe.length * (pipe.times ?? 0))) / length;
}

/** By the likely weight of one lip stone; where there is none, nothing is heavier than usual. */
export function stoneTimes({ sizeHours }: Job, { lipStoneCount, lipStoneWeight }: Stone): Derived<number> {
  const steps = sizeHours.map(({ stone, stoneTimes: times }): Step => [stone, times]);
  if (lipStoneCount === undefined || lipStoneCount === 0) return 1;
  return derive([lipStoneCount, lipStoneWeight], (_, weight) => timesAt(steps, weight));
}

/**
 * What a load of boulders takes, each size by the likely weight of one, weighed by how much there is of it; usual where the
 * company has no steps for them.
 */
export function boulderTimes({ sizeHours }: Job, { boulders, sizes }: Stone): Derived<number> {
  const steps = sizeHours.map(({ boulder, boulderTimes: times }): Step => [boulder, times]);
  if (boulders === undefined || boulders === 0 || steps.every(([, times]) => times === undefined)) return 1;
  return derive([boulders], () => {
    const mix = known(sizes);
    if (mix === undefined || mix.some(({ each }) => timesAt(steps, each) === undefined)) return undefined;
    const taken = total(mix.map(({ each, weight }) => weight * (timesAt(steps, each) ?? 0)));
    return taken / total(mix.map(({ weight }) => weight));
  });
}

/** What a tub of a volume takes; undefined beyond the last step, or where one of the two is blank. */
export function timesOfTub(steps: Job["sizeHours"], volume: number): TubTimes | undefined {
  const at = (key: "tubTimes" | "tubMachineTimes"): number | undefined =>
    timesAt(
      steps.map((row): Step => [row.tub, row[key]]),
      volume,
    );
  const [hours, machineHours] = [at("tubTimes"), at("tubMachineTimes")];
  return hours === undefined || machineHours === undefined ? undefined : { hours, machineHours };
}

interface TubTimes {
  readonly hours: number;
  readonly machineHours: number;
}

/** What tubs take, each by its volume, on average; where there is none, nothing is more than usual. */
export function tubTimes(job: Job): TubTimes | undefined {
  const each = tubVolumes(job).map((volume) => (volume === undefined ? undefined : timesOfTub(job.sizeHours, volume)));
  if (each.length === 0) return { hours: 1, machineHours: 1 };
  const known = each.flatMap((one) => (one ? [one] : []));
  if (known.length < each.length) return undefined;
  const mean = (key: keyof TubTimes): number => total(known.map((one) => one[key])) / known.length;
  return { hours: mean("hours"), machineHours: mean("machineHours") };
}
