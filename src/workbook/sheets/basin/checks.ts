import type { Job, SheetLayout } from "../../layout";
import { FITTING_COLUMNS } from "../pump/route";

/** What can be wrong with the basin. */
export function basinChecks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Modules and wells fit into the pit",
    value: "=N(COUNT(BasinContents)>0)",
    sign: "at least",
    limit: 1,
    cure: "A part is deeper or longer than the pit, or they are more than it holds: fix their sizes.",
    fix: "BasinParts",
    kind: "answer",
    needs: ["BasinLength", "BasinWidth", "BasinWaterDepth", "GravelVoids"],
  });
  s.check({
    label: "Pools, beds and pipes are complete",
    value: "=N(COUNT(DrainParts)>0)",
    sign: "at least",
    limit: 1,
    cure: "A row on Water or Pump lacks its lip width, width, fall or length: fill it in, or clear the row.",
    fix: "PoolTable",
    kind: "answer",
    needs: ["DesignFlow", "WaterArea"],
  });
  const valves = `SUM(Fittings${FITTING_COLUMNS.findIndex(([title]) => title === "Check valve") + 1})`;
  s.check({
    label: "Check valve on the route",
    source: "by definition: none is needed where the answer is no",
    value: `=IF(CheckValve="no",2,N(${valves}>0))`,
    sign: "at least",
    limit: 1,
    cure: "Count it among the fittings on Pump, or say no here.",
    fix: "CheckValve",
    kind: "answer",
    needs: ["RouteLengths"],
  });
  s.check({
    label: "Spare water beyond the need",
    value: "=INDEX(BasinVerdict,3,2)",
    sign: "at least",
    limit: 0,
    cure: "The basin is short: make it larger, add modules, or plan fewer days without topping up.",
    fix: "BasinLength",
    kind: "water",
    needs: ["BasinVerdict"],
  });
  // Sheets on lips grow with the flow to the power 2/3, beds with less, pipes not at all: no drain-back grows faster.
  s.check({
    label: "Spare water at the flow the pump delivers",
    source:
      "Francis (1855): depth over a lip goes with flow to the power 2/3; what beds and pipes give back grows no faster",
    value: "=BasinHold-LowWater-LossPerDay*ReserveDays-DrainBack*MAX(1,DeliveredFlow/DesignFlow)^(2/3)",
    sign: "at least",
    limit: 0,
    cure: "More flow keeps more water in the stream: throttle the pump to the wanted flow, or make the basin larger.",
    fix: "ChosenPump",
    kind: "water",
    weight: "look",
    needs: ["BasinVerdict", "DeliveredFlow", "DesignFlow"],
  });
  s.check({
    label: "Water that spills when the pump stops",
    value: "=INDEX(BasinVerdict,6,2)",
    limit: 0,
    cure: "The stream gives back more than the basin takes: make the basin larger, or pools and lips smaller.",
    fix: "BasinLength",
    kind: "water",
    needs: ["BasinVerdict"],
  });
  s.check({
    label: "Water over the floor while running",
    value: "=BasinWaterDepth-LevelDrop-LowWaterDepth",
    sign: "at least",
    limit: 0,
    over: "spare",
    cure: "The pump sucks air as soon as the stream is full: make the basin larger.",
    fix: "BasinWaterDepth",
    kind: "length",
    needs: ["BasinWaterDepth", "LevelDrop", "LowWaterDepth"],
  });
  const rim = job.pick({
    US: { least: 2, most: 5, words: "2 to 5 in" },
    SI: { least: 50, most: 125, words: "50 to 125 mm" },
  });
  const depthMatters = "Gravel over a shallow rim shows the liner; a deep one wastes digging (rule of thumb).";
  s.check({
    label: "Rim below finished grade",
    source: "common practice, no source",
    value: "=RimBelowGrade",
    limit: rim.most,
    least: rim.least,
    words: rim.words,
    cure: depthMatters,
    cureStop: "It stands at or above the grade: it shows, and rain washes soil over it. Lower the rim.",
    fix: "RimBelowGrade",
    kind: "size",
    weight: "look",
    stopIf: "RimBelowGrade<=0",
    needs: ["RimBelowGrade"],
  });
  s.check({
    label: "Room for water in the gravel",
    source: "common practice, no source",
    value: "=GravelVoids",
    limit: 0.45,
    least: 0.3,
    words: "30 to 45%",
    cure: "Washed gravel has 35 to 45%. A void ratio e of a manual is e / (1 + e) here.",
    fix: "GravelVoids",
    kind: "share",
    weight: "look",
    needs: ["GravelVoids"],
  });
}
