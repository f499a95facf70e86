import { toSi } from "../facts/units";
import type { Topics } from "../topics";
import type { Job } from "../facts";
import { isKnown, known, type Derived } from "../derived";
import { total } from "../rows";
import { atLeast, atMost, checksOn, there, type Check } from "./check";

/** Depth of water over rough stones, as a multiple of that of an even flow. */
const OVER_STONES = 1.9;

export function siteChecks(job: Job, { water }: Topics): Check[] {
  const check = checksOn("Site");
  const { run, dropCount, system } = job;
  const { fall } = water;
  const tallest = toSi("length", { US: 2, SI: 0.6 }[system], system);
  const oneDrop = (): number => there(fall) / there(dropCount);
  return [
    check({
      label: "Slope of the feature",
      needs: [fall, run],
      value: () => there(fall) / there(run),
      limit: "at most 100%",
      ok: () => atMost(there(fall), there(run)),
      cure: "Over 1 in 1 is a wall: check fall and run, or design a waterfall.",
      place: "FallTyped",
      kind: "share",
      weight: "look",
    }),
    check({
      label: "Fall of one drop",
      needs: [fall, dropCount],
      value: oneDrop,
      limit: { US: "at most 2 ft", SI: "at most 0.6 m" }[system],
      ok: () => atMost(oneDrop(), tallest),
      cure: "Add drops: tall ones splash water out (rule of thumb).",
      place: "DropCount",
      kind: "length",
      weight: "look",
    }),
  ];
}

export function waterChecks(job: Job, { water, drain }: Topics): Check[] {
  const check = checksOn("Water");
  const { system, sheetWanted, bankHeight, run } = job;
  const tape = { US: { most: 0.011, words: "within ⅛ in" }, SI: { most: 0.003, words: "within 3 mm" } }[system];
  const addsUp = (label: string, sum: Derived<number>, whole: Derived<number>, place: string, cure: string): Check =>
    check({
      label,
      needs: [whole, sum],
      value: () => there(sum) - there(whole),
      limit: tape.words,
      ok: () => atMost(Math.abs(there(sum) - there(whole)), toSi("length", tape.most, system)),
      cure,
      place,
      kind: "length",
    });
  const sheet = { US: { least: 0.25, most: 2, words: "¼ to 2 in" }, SI: { least: 6, most: 50, words: "6 to 50 mm" } };
  const { least, most, words } = sheet[system];
  const lipFlows = known(water.split)?.map(({ flow }) => flow);
  const bedLengths = job.beds.flatMap(({ length }) => (length === undefined ? [] : [length]));
  const { froudes } = drain;
  return [
    addsUp(
      "Drops against the fall",
      water.dropTotal,
      water.fall,
      "Drops",
      "Change the drops until they add up to the fall.",
    ),
    addsUp(
      "Treads against the run",
      water.treadTotal,
      run,
      "Treads",
      "Change the treads until they add up to the run.",
    ),
    check({
      label: "Wanted sheet",
      needs: [sheetWanted],
      value: () => sheetWanted,
      limit: words,
      ok: () =>
        atLeast(there(sheetWanted), toSi("size", least, system)) &&
        atMost(there(sheetWanted), toSi("size", most, system)),
      cure: "Thinner sheets break up into threads, deeper ones take a lot of flow (rule of thumb).",
      place: "SheetWanted",
      kind: "size",
      weight: "look",
    }),
    check({
      label: "Least flow over a lip",
      needs: [lipFlows],
      value: () => Math.min(...there(lipFlows)),
      limit: "more than 0",
      ok: () => Math.min(...there(lipFlows)) > 0,
      cure: "A lip stays dry: lower it, or ask for more flow.",
      place: "LipTable",
      kind: "flow",
      weight: "look",
    }),
    check({
      label: "Deepest bed over rough stones (1.9 times)",
      needs: [drain.bedDepthMost, bankHeight],
      value: () => there(bankHeight) - OVER_STONES * there(drain.bedDepthMost),
      limit: "0 or more",
      ok: () => atMost(OVER_STONES * there(drain.bedDepthMost), there(bankHeight)),
      cure: "Water would leave the banks: raise them, widen the bed or take less flow.",
      place: "BankHeight",
      kind: "length",
    }),
    check({
      label: "Beds together against the run",
      needs: [bedLengths[0], run],
      value: () => total(bedLengths) / there(run),
      limit: () => 1.1,
      ok: () => atMost(total(bedLengths), 1.1 * there(run)),
      cure: "The beds are longer than the run has room for: check the lengths, or the run on Site.",
      place: "BedTable",
      kind: "share",
      weight: "look",
    }),
    check({
      label: "Highest Froude number",
      needs: [froudes.find(isKnown)],
      value: () => Math.max(...froudes),
      limit: "at most 1",
      ok: () => atMost(Math.max(...froudes), 1),
      cure: "The water shoots: flatten or roughen the bed, or keep splash inside the liner.",
      place: "BedTable",
      kind: "factor",
      weight: "look",
    }),
  ];
}
