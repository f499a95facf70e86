import type { Job, SheetLayout } from "../../layout";

/** Share of the wanted flow that still counts as meeting it: a maker's curve is no better than 5 %. */
const NEARLY = 0.999;

/** The mistakes this sheet catches. */
export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Lift",
    value: "=StaticLift",
    sign: "more than",
    limit: 0,
    cure: "The top lip lies below the running water: check the levels.",
    fix: "StaticLift",
    kind: "head",
    needs: ["StaticLift"],
  });
  s.check({
    label: "Water speed in the pipe",
    source: "common practice, no source",
    value: "=MAX(PipeSpeed,N(DutySpeed))",
    limit: job.pick({ US: 5, SI: 1.5 }),
    cure: "Choose a wider pipe: fast water wears, knocks and costs head (rule of thumb).",
    fix: "RouteTable",
    kind: "speed",
    weight: "look",
    needs: ["PipeSpeed"],
  });
  s.check({
    label: "Check valve for each pump",
    source: "by definition: a pump alone has no other to run back through",
    value: "=IF(PumpCount<2,2,N(N(RiserFittings7)>=1))",
    sign: "at least",
    limit: 1,
    cure: "Give each riser a check valve: a pump that stops lets the other's water run back.",
    fix: "RiserTable",
    kind: "answer",
    needs: ["PumpCount"],
  });
  s.check({
    label: "Pumps with blanks in their row",
    value: '=SUMPRODUCT((PumpNames<>"")*((PumpPrices="")+(PumpPowers="")+(PumpShutOffs="")>0))',
    limit: 0,
    cure: "Fill in price, power and shut-off head of each pump, or clear its row.",
    fix: "PumpTable",
    kind: "count",
    needs: ["PumpShutOffs"],
  });
  s.check({
    label: "Shut-off head above the lift",
    source: "affinity laws: DOE-HDBK-1012/3, pump laws",
    value: "=INDEX(ChosenHeads,1)*PumpSpeed^2-StaticLift",
    sign: "more than",
    limit: 0,
    over: "spare",
    cure: "This pump cannot lift the water to the top at all: choose one with a higher shut-off head.",
    fix: "ChosenPump",
    kind: "head",
    needs: ["PumpRow", "StaticLift"],
  });
  s.check({
    label: "Works on its curve",
    value: '=N(DutyState<>"off its curve")',
    sign: "at least",
    limit: 1,
    cure: "Past its last point the flow is not known: add points, or take a smaller pump.",
    fix: "ChosenPump",
    kind: "answer",
    needs: ["DeliveredFlow"],
  });
  s.check({
    label: "Flow delivered",
    source: "by definition, to a thousandth",
    value: "=DeliveredFlow/DesignFlow",
    sign: "at least",
    limit: NEARLY,
    cure: "Too little water for the wanted sheet: choose a stronger pump or a wider pipe.",
    fix: "ChosenPump",
    kind: "share",
    over: "of need",
    needs: ["DeliveredFlow", "DesignFlow"],
  });
  s.check({
    label: "Head to spare at the wanted flow",
    source: "common practice, no source",
    value: "=HeadAtWanted/DesignHead-1",
    sign: "at least",
    limit: 0.1,
    cure: "A little more head costs a lot of flow: stronger pump or wider pipe (rule of thumb).",
    fix: "ChosenPump",
    kind: "share",
    weight: "look",
    needs: ["HeadAtWanted", "DesignHead"],
  });
  s.check({
    label: "Flow not far over the wanted",
    source: "common practice, no source",
    value: "=DeliveredFlow/DesignFlow",
    limit: 1.5,
    cure: "Half as much again: it splashes and costs electricity. Fit a valve or take a smaller pump.",
    fix: "ChosenPump",
    kind: "share",
    over: "of need",
    weight: "look",
    needs: ["DeliveredFlow", "DesignFlow"],
  });
  s.check({
    label: job.pick({ US: "Curve in gph, not gpm", SI: "Curve in L/h, not L/min" }),
    source: "by definition: a curve in units of a minute reads 1/60; a third of that is room for pumps side by side",
    value: "=MAX(ChosenFlows)/DesignFlow",
    sign: "at least",
    limit: 0.05,
    cure: job.pick({
      US: "Its flows are far too small beside the wanted flow: makers often print gpm; times 60 gives gph.",
      SI: "Flows far too small beside the wanted: makers often print L/min (× 60) or m³/h (× 1000).",
    }),
    fix: "PumpTable",
    kind: "share",
    over: "of need",
    needs: ["PumpRow", "DesignFlow"],
  });
  s.check({
    label: "Power and tariff filled in",
    source: "by definition: both are needed",
    value: "=N(COUNT(PumpWatts)+COUNT(Tariff)=2)",
    sign: "at least",
    limit: 1,
    cure: "Without both, electricity is missing from the choice.",
    fix: "Tariff",
    kind: "answer",
    needs: ["PumpRow"],
  });
  s.check({
    label: "Cheapest pump that serves",
    source: "by definition, to half a cent",
    value: "=N(OR(PumpOwnCost<=INDEX(PumpRanking,1,7)+0.005,INDEX(PumpRanking,1,1)<>1))",
    sign: "at least",
    limit: 1,
    cure: "Another choice on the list meets the flow and costs less over the years.",
    fix: "ChosenPump",
    kind: "answer",
    weight: "look",
    needs: ["PumpOwnCost", "DeliveredFlow"],
  });
}
