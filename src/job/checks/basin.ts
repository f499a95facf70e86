import type { Topics } from "../topics";
import type { Job } from "../facts";
import { toSi } from "../facts/units";
import { isKnown, derive } from "../derived";
import { total } from "../rows";
import { atLeast, atMost, checksOn, there, yes, type Check } from "./check";

export function basinChecks(job: Job, { water, drain, basin, pump }: Topics): Check[] {
  const check = checksOn("Basin");
  const { system, basinLength, basinWidth, basinWaterDepth, gravelVoids, rimBelowGrade, lowWaterDepth } = job;
  const { verdict, levelDrop } = basin;
  const valves = total(job.route.map(({ checkValves }) => checkValves ?? 0));
  const wantsNone = job.checkValve === "no";
  const rim = { US: { least: 2, most: 5, words: "2 to 5 in" }, SI: { least: 50, most: 125, words: "50 to 125 mm" } };
  const { least, most, words } = rim[system];
  // Sheets on lips grow with the flow to the power 2/3, beds with less, pipes not at all: no drain-back grows faster.
  const spare = derive(
    [verdict, basin.hold, basin.lowWater, basin.lossPerDay, job.reserveDays, drain.drainBack],
    (_, hold, low, loss, days, back) => ({ room: hold - low - loss * days, back }),
  );
  const returned = derive(
    [spare, pump.deliveredFlow, water.designFlow],
    ({ back }, delivered, wanted) => back * Math.max(1, delivered / wanted) ** (2 / 3),
  );
  const overFloor = (): number => there(basinWaterDepth) - there(levelDrop);
  return [
    check({
      label: "Modules and wells fit into the pit",
      needs: [basinLength, basinWidth, basinWaterDepth, gravelVoids],
      ...yes(() => isKnown(basin.contents)),
      cure: "A part is deeper or longer than the pit, or they are more than it holds: fix their sizes.",
      place: "BasinParts",
      kind: "count",
    }),
    check({
      label: "Pools, beds and pipes are complete",
      needs: [water.designFlow, drain.openWater],
      ...yes(() => isKnown(drain.parts)),
      cure: "A row on Water or Pump lacks its lip width, width, fall or length: fill it in, or clear the row.",
      place: "PoolTable",
      kind: "count",
    }),
    check({
      label: "Check valve on the route",
      needs: [pump.pipeLength],
      value: () => (wantsNone ? "not needed" : Number(valves > 0)),
      limit: "yes",
      ok: () => wantsNone || valves > 0,
      cure: "Count it among the fittings on Pump, or say no here.",
      place: "CheckValve",
      kind: "count",
    }),
    check({
      label: "Spare water beyond the need",
      needs: [verdict],
      value: () => there(verdict).margin,
      limit: "0 or more",
      ok: () => there(verdict).margin >= 0,
      cure: "The basin is short: make it larger, add modules, or plan fewer days without topping up.",
      place: "BasinLength",
      kind: "water",
    }),
    check({
      label: "Spare water at the flow the pump delivers",
      needs: [spare, returned],
      value: () => there(spare).room - there(returned),
      limit: "0 or more",
      ok: () => there(spare).room >= there(returned),
      cure: "More flow keeps more water in the stream: throttle the pump to the wanted flow, or make the basin larger.",
      place: "ChosenPump",
      kind: "water",
      weight: "look",
    }),
    check({
      label: "Water that spills when the pump stops",
      needs: [verdict],
      value: () => there(verdict).overflow,
      limit: () => 0,
      ok: () => there(verdict).overflow <= 0,
      cure: "The stream gives back more than the basin takes: make the basin larger, or pools and lips smaller.",
      place: "BasinLength",
      kind: "water",
    }),
    check({
      label: "Water over the floor while running",
      needs: [basinWaterDepth, levelDrop, lowWaterDepth],
      value: () => overFloor() - there(lowWaterDepth),
      limit: "0 or more",
      ok: () => atLeast(overFloor(), there(lowWaterDepth)),
      cure: "The pump sucks air as soon as the stream is full: make the basin larger.",
      place: "BasinWaterDepth",
      kind: "length",
    }),
    check({
      label: "Rim below finished grade",
      needs: [rimBelowGrade],
      value: () => rimBelowGrade,
      limit: words,
      ok: () =>
        atLeast(there(rimBelowGrade), toSi("size", least, system)) &&
        atMost(there(rimBelowGrade), toSi("size", most, system)),
      cure:
        (rimBelowGrade ?? 1) > 0
          ? "Gravel over a shallow rim shows the liner; a deep one wastes digging (rule of thumb)."
          : "It stands at or above the grade: it shows, and rain washes soil over it. Lower the rim.",
      place: "RimBelowGrade",
      kind: "size",
      weight: "look",
      stopIf: () => (rimBelowGrade ?? 1) <= 0,
    }),
    check({
      label: "Room for water in the gravel",
      needs: [gravelVoids],
      value: () => gravelVoids,
      limit: "30 to 45%",
      ok: () => atLeast(there(gravelVoids), 0.3) && atMost(there(gravelVoids), 0.45),
      cure: "Washed gravel has 35 to 45%. A void ratio e of a manual is e / (1 + e) here.",
      place: "GravelVoids",
      kind: "share",
      weight: "look",
    }),
  ];
}
