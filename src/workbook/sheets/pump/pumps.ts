import { rowOf } from "../../layout/conditions";
import { Ref, type Job, type SheetLayout } from "../../layout";
import { fillDown } from "../money/cells";
import { CURVE_PAIRS, DEMO_PUMPS, PUMP_ROWS } from "./demo";

/** The pumps on offer, each with its maker's curve. */
export function pumps(s: SheetLayout, job: Job): void {
  s.section("Pumps on offer");
  s.note(
    "Read each curve off the maker's sheet: the head at no flow (shut-off), then up to five points of flow and head, head falling. " +
      "Nothing is guessed beyond the last point. Pumps marked (invented), their curves and prices are made up for the demo.",
  );
  const flowUnit = job.pick({ US: "gph, not gpm", SI: "L/h, not L/min" });
  s.table({
    name: "PumpTable",
    rows: PUMP_ROWS,
    columns: [
      { key: "name", title: "Pump", kind: "text", name: "PumpNames", input: { max: 60, message: "Name of the pump." } },
      {
        key: "price",
        title: "Price",
        kind: "money",
        name: "PumpPrices",
        input: { min: 0, max: 100000, message: "Price of one pump." },
      },
      {
        key: "watts",
        title: "Power",
        kind: "power",
        name: "PumpPowers",
        input: { min: 1, max: 20000, message: "Power it draws, from the nameplate or the maker's sheet." },
      },
      {
        key: "shutoff",
        title: "Shut-off head",
        kind: "head",
        name: "PumpShutOffs",
        input: { min: 0.1, max: job.pick({ US: 300, SI: 90 }), message: "Head at no flow: where the curve begins." },
      },
      ...Array.from({ length: CURVE_PAIRS }, (_, index) => [
        {
          key: `q${index + 1}`,
          title: `Flow ${index + 1}`,
          kind: "flow" as const,
          input: {
            min: 0,
            max: job.pick({ US: 200000, SI: 800000 }),
            message: `Flow at point ${index + 1} of the curve (${flowUnit}).`,
          },
        },
        {
          key: `h${index + 1}`,
          title: `Head ${index + 1}`,
          kind: "head" as const,
          input: { min: 0, max: job.pick({ US: 300, SI: 90 }), message: `Head at point ${index + 1} of the curve.` },
        },
      ]).flat(),
    ],
    demo: DEMO_PUMPS,
  });
}

/** What each pump does on this route and costs to own, read from the function's table further down. */
export function ranking(s: SheetLayout): void {
  s.section("Which pump");
  s.note(
    "As many of each as the flow needs, up to three side by side at full speed, without what their risers cost. Those that meet the flow come first, the cheapest to own on top.",
  );
  const shown = (cells: string): string => `=IF(${cells}="","",${cells})`;
  const { body } = s.table({
    rows: PUMP_ROWS,
    columns: [
      { key: "pump", title: "Pump", kind: "text" },
      { key: "rank", title: "Rank", kind: "count" },
      { key: "count", title: "How many", kind: "count" },
      { key: "flow", title: "Flow delivered", kind: "flow" },
      { key: "head", title: "Head", kind: "head" },
      { key: "energy", title: "Energy per year", kind: "money" },
      { key: "own", title: "Cost to own", kind: "money" },
      { key: "verdict", title: "Verdict", kind: "text", formula: shown(rowOf("PumpRanking", "[#]", 8)), across: 8 },
    ],
  });
  // All but the verdicts, which wrap over merged cells: the pump stands before its rank.
  const told = new Ref(s.name, body.top, body.left, body.bottom, body.left + 6);
  fillDown(s, told, shown(`INDEX(PumpRanking,SEQUENCE(${PUMP_ROWS}),{2,1,3,4,5,6,7})`));
  // Room for a verdict of two lines.
  for (let row = s.row - PUMP_ROWS; row < s.row; row++) s.sheet.heights.set(row, 28);
  s.result({
    name: "SuggestedPump",
    label: "Suggestion: cheapest to own that meets the flow",
    formula:
      '=IF(INDEX(PumpRanking,1,2)="","",IF(INDEX(PumpRanking,1,1)=1,' +
      'IF(INDEX(PumpRanking,1,3)>1,INDEX(PumpRanking,1,3)&" of ","")&INDEX(PumpRanking,1,2),"none meets the flow"))',
    kind: "text",
  });
}
