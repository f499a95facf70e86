import { PLAN_RANGE } from "../../calc/sheet/cutplan/check";
import { invalid } from "../../calc/problem";
import { say, unitLabel } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { cutPlan, misfit } from "../../calc/sheet/cutplan/plan";
import type { Piece, Plan } from "../../calc/sheet/cutplan/request";
import { fits, tapeFor } from "../../calc/sheet/cutplan/seams";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { flag, quantity } from "../contract/scalars";
import { CARRYING_CAUTION } from "./arguments";
import { cuts, rolls, type RollRow } from "./cutPlanArguments";

export const CUTPLAN = declare({
  name: "CUTPLAN",
  topic: "sheet",
  summary: "Cuts pieces from rolls for the least cost with edge-to-edge cuts: where each cut lies and what to buy.",
  formula:
    "least Σ cost of the lengths bought, then least length; every cut runs from edge to edge of what it parts. Up to 11 " +
    "different pieces by a dynamic program over all such plans; beyond that pieces are gathered two by two with little " +
    "waste, and the same program puts the groups together",
  source:
    "P. C. Gilmore and R. E. Gomory, Operations Research 13 (1965) 94-120; P. Y. Wang, Operations Research 31 (1983) " +
    "573-586 (from memory); lower bound: Gilmore and Gomory, Operations Research 9 (1961) 849-859 (from memory)",
  limits:
    'The row "Plan" says whether the cost is proven least or the best found; no plan costs less than the "Lower bound". ' +
    "Positions are measured on the lengths bought of a roll laid end to end, and from one edge across. Nothing is added " +
    "for crooked cuts. A piece is seamed only when it fits no roll. Without any price the least area is sought.",
  caution: CARRYING_CAUTION,
  args: {
    cuts,
    rolls,
    turn: optional(flag("Whether pieces may be turned across the roll"), "TRUE", true),
    seam: optional(quantity("size", "Lap of a seam; blank: no seams", PLAN_RANGE.seamLap), "no piece is seamed"),
  },
  result: tableResult("the cut plan: every cut, then what to buy, waste, cost and how sure the plan is", [
    { title: "Cut" },
    { title: "Roll" },
    { title: "Along", measure: "length" },
    { title: "Across", measure: "length" },
    { title: "Length", measure: "length" },
    { title: "Width", measure: "length" },
    { title: "Turned" },
  ]),
  examples: [
    {
      args: [
        [
          ["Basin", 18, 15, 1],
          ["Fall", 14, 6, 1],
          ["Skirt", 7, 4, 2],
        ],
        [
          [15, 13.5, "length", 100],
          [20, 20, "length", 100],
        ],
      ],
      gives: [
        { at: [1, 0], is: "Basin" },
        { at: [5, 0], is: "Length to buy" },
        { at: [5, 1], is: 1 },
        { at: [5, 4], is: 28 },
        { at: [6, 0], is: "Area to buy" },
        { at: [6, 1], is: 420 },
        { at: [7, 1], is: 10 },
        { at: [9, 1], is: 378 },
        { at: [11, 1], is: "proven least cost" },
      ],
      within: 1e-9,
      from:
        "by hand: 270 + 84 + 56 = 410 ft² cost at least 410 × 13.50 / 15 = 369. Basin 18 ft of the 15 ft roll, then fall " +
        "(14 wide) 6 ft and both skirts turned end to end (14 wide) 4 ft: 28 ft, 378.00; 420 − 410 = 10 ft² waste",
    },
  ],
  compute({ cuts, rolls, turn, seam }, system) {
    const pieces = cuts.flatMap(({ count, ...piece }): Piece[] => Array.from({ length: count }, () => piece));
    const request = { pieces, rolls, turn, ...(seam === undefined ? {} : { seamLap: seam }) };
    const misfits = seam === undefined ? cuts.filter((piece) => !rolls.some((roll) => fits(piece, roll, turn))) : [];
    for (const piece of misfits) {
      throw invalid(`cuts row ${piece.row}: ${misfit(piece, request, (metres) => say("length", metres, system))}`);
    }
    const plan = cutPlan(request);
    return [...cutRows(plan, rolls), ...totals(plan, rolls, system)];
  },
});

function cutRows({ placements }: Plan, rolls: readonly RollRow[]): TableCell[][] {
  return placements.map(({ name, roll, along, across, length, width, turned }) => [
    name,
    rolls[roll]?.row ?? "",
    along,
    across,
    length,
    width,
    turned ? "turned" : "",
  ]);
}

/** The rows below the cuts: a name, and its value beside it. */
function totals(plan: Plan, rolls: readonly RollRow[], system: UnitSystem): TableCell[][] {
  const { bought, area, waste, cost, lowerBound, seamLength, proven } = plan;
  const row = (name: string, value: TableCell, unit = ""): TableCell[] => [name, value, unit, "", "", "", ""];
  const inLength = unitLabel("length", system);
  const inArea = unitLabel("area", system);
  return [
    ...bought.map(({ roll, start, length }): TableCell[] => [
      "Length to buy",
      rolls[roll]?.row ?? "",
      start,
      0,
      length,
      rolls[roll]?.width ?? "",
      "",
    ]),
    row("Area to buy", { measure: "area", inside: area }, inArea),
    row("Waste", { measure: "area", inside: waste }, inArea),
    row("Waste share", area > 0 ? waste / area : 0),
    row("Cost", cost),
    row("Lower bound", lowerBound),
    row("Plan", proven ? "proven least cost" : "best found"),
    row("Seam length", { measure: "length", inside: seamLength }, inLength),
    row("Seam tape", { measure: "length", inside: tapeFor(seamLength) }, inLength),
  ];
}
