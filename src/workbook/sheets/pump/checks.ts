import type { Job, SheetLayout } from "../../layout";

/** Share of the wanted flow that still counts as meeting it: a maker's curve is no better than 5 %. */
const NEARLY = 0.999;

/** The mistakes this sheet catches. */
export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Lift",
    value: "=StaticLift",
    limit: "more than 0",
    ok: "StaticLift>0",
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
    ok: `MAX(PipeSpeed,N(DutySpeed))<=${job.pick({ US: 5, SI: 1.5 })}`,
    cure: "Choose a wider pipe: fast water wears, knocks and costs head (rule of thumb).",
    fix: "RouteTable",
    kind: "speed",
    weight: "look",
    needs: ["PipeSpeed"],
  });
  s.check({
    label: "Check valve for each pump",
    source: "by definition: a pump alone has no other to run back through",
    value: '=IF(RiserFittings7="",0,RiserFittings7)',
    limit: '=IF(PumpCount>1,"at least 1","none needed")',
    ok: 'OR(PumpCount<2,IF(RiserFittings7="",0,RiserFittings7)>=1)',
    cure: "Give each riser a check valve: a pump that stops lets the other's water run back.",
    fix: "RiserTable",
    kind: "count",
    needs: ["PumpCount"],
  });
  s.check({
    label: "Pumps with blanks in their row",
    value: '=SUMPRODUCT((PumpNames<>"")*((PumpPrices="")+(PumpPowers="")+(PumpShutOffs="")>0))',
    limit: 0,
    ok: 'SUMPRODUCT((PumpNames<>"")*((PumpPrices="")+(PumpPowers="")+(PumpShutOffs="")>0))=0',
    cure: "Fill in price, power and shut-off head of each pump, or clear its row.",
    fix: "PumpTable",
    kind: "count",
    needs: ["PumpShutOffs"],
  });
  s.check({
    label: "Shut-off head above the lift",
    source: "affinity laws: DOE-HDBK-1012/3, pump laws",
    value: "=INDEX(ChosenHeads,1)*PumpSpeed^2",
    limit: "=StaticLift",
    ok: "INDEX(ChosenHeads,1)*PumpSpeed^2>StaticLift",
    cure: "This pump cannot lift the water to the top at all: choose one with a higher shut-off head.",
    fix: "ChosenPump",
    kind: "head",
    needs: ["PumpRow", "StaticLift"],
  });
  s.check({
    label: "Works on its curve",
    value: "=DutyState",
    limit: "not off its curve",
    ok: 'DutyState<>"off its curve"',
    cure: "Past its last point the flow is not known: add points, or take a smaller pump.",
    fix: "ChosenPump",
    kind: "text",
    needs: ["DeliveredFlow"],
  });
  s.check({
    label: "Flow delivered",
    source: "by definition, to a thousandth",
    value: "=DeliveredFlow",
    limit: "=DesignFlow",
    ok: `DeliveredFlow>=DesignFlow*${NEARLY}`,
    cure: "Too little water for the wanted sheet: choose a stronger pump or a wider pipe.",
    fix: "ChosenPump",
    kind: "flow",
    needs: ["DeliveredFlow", "DesignFlow"],
  });
  s.check({
    label: "Head to spare at the wanted flow",
    source: "common practice, no source",
    value: "=HeadAtWanted/DesignHead-1",
    limit: "at least 10%",
    ok: "HeadAtWanted>=1.1*DesignHead",
    cure: "A little more head costs a lot of flow: stronger pump or wider pipe (rule of thumb).",
    fix: "ChosenPump",
    kind: "share",
    weight: "look",
    needs: ["HeadAtWanted", "DesignHead"],
  });
  s.check({
    label: "Flow not far over the wanted",
    source: "common practice, no source",
    value: "=DeliveredFlow",
    limit: "=1.5*DesignFlow",
    ok: "DeliveredFlow<=1.5*DesignFlow",
    cure: "Half as much again: it splashes and costs electricity. Fit a valve or take a smaller pump.",
    fix: "ChosenPump",
    kind: "flow",
    weight: "look",
    needs: ["DeliveredFlow", "DesignFlow"],
  });
  s.check({
    label: job.pick({ US: "Curve in gph, not gpm", SI: "Curve in L/h, not L/min" }),
    source: "by definition: a curve in units of a minute reads 1/60; a third of that is room for pumps side by side",
    value: "=MAX(ChosenFlows)",
    limit: "=DesignFlow/20",
    ok: "MAX(ChosenFlows)>=DesignFlow/20",
    cure: job.pick({
      US: "Its flows are far too small beside the wanted flow: makers often print gpm; times 60 gives gph.",
      SI: "Flows far too small beside the wanted: makers often print L/min (× 60) or m³/h (× 1000).",
    }),
    fix: "PumpTable",
    kind: "flow",
    needs: ["PumpRow", "DesignFlow"],
  });
  s.check({
    label: "Power and tariff filled in",
    source: "by definition: both are needed",
    value: "=COUNT(PumpWatts)+COUNT(Tariff)",
    limit: 2,
    ok: "COUNT(PumpWatts)+COUNT(Tariff)=2",
    cure: "Without both, electricity is missing from the choice.",
    fix: "Tariff",
    kind: "count",
    needs: ["PumpRow"],
  });
  s.check({
    label: "Cheapest pump that serves",
    source: "by definition, to half a cent",
    value: "=PumpOwnCost",
    limit: "=INDEX(PumpRanking,1,7)",
    ok: "OR(PumpOwnCost<=INDEX(PumpRanking,1,7)+0.005,INDEX(PumpRanking,1,1)<>1)",
    cure: "Another choice on the list meets the flow and costs less over the years.",
    fix: "ChosenPump",
    kind: "money",
    weight: "look",
    needs: ["PumpOwnCost", "DeliveredFlow"],
  });
}
