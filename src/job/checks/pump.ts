import { invalid } from "../../calc/problem";
import type { Topics } from "../topics";
import type { Job } from "../facts";
import { toSi } from "../facts/units";
import { isKnown, known } from "../derived";
import { total } from "../rows";
import { atLeast, atMost, checksOn, there, yes, type Check } from "./check";

/** Share of the wanted flow that still counts as meeting it: a maker's curve is no better than 5 %. */
const NEARLY = 0.999;
/** Head to spare that a pump should have. Common practice, no source. */
const SPARE_HEAD = 1.1;
/** Flow that is far over the wanted one. */
const FAR_OVER = 1.5;
/** A curve that ends at less than this part of the wanted flow was read in another unit. */
const UNIT_SLIP = 20;

const HALF_A_CENT = 0.005;

export function pumpChecks(job: Job, { water, pump }: Topics): Check[] {
  const check = checksOn("Pump");
  const { system } = job;
  const { designFlow } = water;
  const { lift, chosen, deliveredFlow, designHead, headAtWanted } = pump;
  const fastest = toSi("speed", { US: 5, SI: 1.5 }[system], system);
  const speed = (): number => Math.max(there(pump.pipeSpeed), known(pump.dutySpeed) ?? 0);
  const incomplete = job.pumps.filter(
    ({ name, price, watts, shutOffHead }) =>
      name !== undefined && (price === undefined || watts === undefined || shutOffHead === undefined),
  ).length;
  const shutOff = (): number => {
    const { shutOffHead } = there(chosen);
    if (shutOffHead === undefined) throw invalid("the chosen pump has no shut-off head");
    return shutOffHead * (job.pumpSpeed ?? 0) ** 2;
  };
  const curveEnd = (): number => {
    const { flow1, flow2, flow3, flow4, flow5 } = there(chosen);
    return Math.max(0, ...[flow1, flow2, flow3, flow4, flow5].filter(isKnown));
  };
  const paid = Number(isKnown(pump.watts)) + Number(job.tariff !== undefined);
  const riserValves = total(job.riser.map(({ checkValves }) => checkValves ?? 0));
  const best = known(pump.ranking())?.[0];
  const isCheapest = (): boolean => !best?.meets || there(pump.ownCost) <= best.ownCost + HALF_A_CENT;
  return [
    check({
      label: "Lift",
      needs: [lift],
      value: () => there(lift),
      limit: "more than 0",
      ok: () => there(lift) > 0,
      cure: "The top lip lies below the running water level: check the levels on Site, Water and Basin.",
      place: "StaticLift",
      kind: "head",
    }),
    check({
      label: "Water speed in the pipe",
      needs: [pump.pipeSpeed],
      value: speed,
      limit: () => fastest,
      ok: () => atMost(speed(), fastest),
      cure: "Choose a wider pipe: fast water wears, knocks and costs head (rule of thumb).",
      place: "RouteTable",
      kind: "speed",
      weight: "look",
    }),
    check({
      label: "Pumps with blanks in their row",
      needs: [job.pumps.find(({ shutOffHead }) => shutOffHead !== undefined)],
      value: () => incomplete,
      limit: () => 0,
      ok: () => incomplete === 0,
      cure: "A price, power or shut-off head is missing. Fill in the row, or clear it: pumps are compared only when every row is complete.",
      place: "PumpTable",
      kind: "count",
    }),
    check({
      label: "Shut-off head above the lift",
      needs: [chosen, lift],
      value: () => shutOff() - there(lift),
      limit: "more than 0",
      ok: () => shutOff() > there(lift),
      cure: "This pump cannot lift the water to the top at all: choose one with a higher shut-off head.",
      place: "ChosenPump",
      kind: "head",
    }),
    check({
      label: "Works on its curve",
      needs: [pump.duty],
      ...yes(() => there(pump.duty).state !== "off its curve"),
      cure: "The pump runs beyond the last point of its curve, where its flow is not known: add points, choose a smaller pump or throttle it.",
      place: "ChosenPump",
    }),
    check({
      label: "Flow delivered",
      needs: [deliveredFlow, designFlow],
      value: () => there(deliveredFlow) / there(designFlow),
      limit: () => NEARLY,
      ok: () => atLeast(there(deliveredFlow), there(designFlow) * NEARLY),
      cure: "Too little water for the wanted sheet: choose a stronger pump or a wider pipe.",
      place: "ChosenPump",
      kind: "share",
    }),
    check({
      label: "Head to spare at the wanted flow",
      needs: [headAtWanted, designHead],
      value: () => there(headAtWanted) / there(designHead) - 1,
      limit: "at least 10%",
      ok: () => atLeast(there(headAtWanted), SPARE_HEAD * there(designHead)),
      cure: "A little more head costs a lot of flow: stronger pump or wider pipe (rule of thumb).",
      place: "ChosenPump",
      kind: "share",
      weight: "look",
    }),
    check({
      label: "Flow not far over the wanted",
      needs: [deliveredFlow, designFlow],
      value: () => there(deliveredFlow) / there(designFlow),
      limit: () => FAR_OVER,
      ok: () => atMost(there(deliveredFlow), FAR_OVER * there(designFlow)),
      cure: "Half as much again: it splashes and costs electricity. Fit a valve or take a smaller pump.",
      place: "ChosenPump",
      kind: "share",
      weight: "look",
    }),
    check({
      label: { US: "Curve in gph, not gpm", SI: "Curve in L/h, not L/min" }[system],
      needs: [chosen, designFlow],
      value: () => curveEnd() / there(designFlow),
      limit: () => 1 / UNIT_SLIP,
      ok: () => atLeast(curveEnd(), there(designFlow) / UNIT_SLIP),
      cure: {
        US: "Its flows are far too small beside the wanted flow: makers often print gpm; times 60 gives gph.",
        SI: "Flows far too small beside the wanted: makers often print L/min (× 60) or m³/h (× 1000).",
      }[system],
      place: "PumpTable",
      kind: "share",
    }),
    check({
      label: "Power and tariff filled in",
      needs: [chosen],
      ...yes(() => paid === 2),
      cure: "Without both the yearly electricity is missing from the choice: a cheap pump can be the dearest to own.",
      place: "Tariff",
      kind: "count",
    }),
    check({
      label: "Check valve for each pump",
      needs: [job.pumpCount],
      value: () => (there(job.pumpCount) < 2 ? "not needed" : Number(riserValves >= 1)),
      limit: "yes",
      ok: () => there(job.pumpCount) < 2 || riserValves >= 1,
      cure: "Give each riser a check valve: a pump that stops lets the other's water run back.",
      place: "RiserTable",
      kind: "count",
    }),
    check({
      label: "Cheapest pump that serves",
      needs: [pump.ownCost, deliveredFlow],
      ...yes(isCheapest),
      cure: "Another choice on the list meets the flow and costs less over the years.",
      place: "ChosenPump",
      kind: "count",
      weight: "look",
    }),
  ];
}
