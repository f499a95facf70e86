import { CENT_DIGITS, roundMoney } from "../../calc/money/cents";
import { invalid } from "../../calc/problem";
import { say, unitLabel } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { cutPlan, misfit } from "../../calc/liner/cutplan/plan";
import type { Plan, PlanRequest } from "../../calc/liner/cutplan/request";
import { fits, tapeFor } from "../../calc/liner/cutplan/seams";
import { declare } from "../contract/declaration";
import { tableResult, type TableCell } from "../contract/result";
import { CARRYING_CAUTION } from "./arguments";
import type { RollRow } from "./cutPlanArguments";
import { CUTPLAN_ARGUMENTS, requestOf } from "./cutPlanRequest";

export const CUTPLAN = declare({
  name: "CUTPLAN",
  topic: "liner",
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
    "for crooked cuts. Once a lap is given, a piece that some roll does not hold may be seamed where that costs less: " +
    "strips of equal width, of the rolls' full widths, or of what is left of a roll beside other pieces. Give the price " +
    "of a seam: without it seams are counted as free. Cost is rolls and seams. Without any price the least area is " +
    "sought. A kept plan made for other pieces is passed over.",
  caution: CARRYING_CAUTION,
  args: CUTPLAN_ARGUMENTS,
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
        { at: [13, 1], is: "proven least cost" },
      ],
      within: 1e-9,
      from:
        "by hand: 270 + 84 + 56 = 410 ft² cost at least 410 × 13.50 / 15 = 369. Basin 18 ft of the 15 ft roll, then fall " +
        "(14 wide) 6 ft and both skirts turned end to end (14 wide) 4 ft: 28 ft, 378.00; 420 − 410 = 10 ft² waste",
    },
    {
      args: [[["Bed", 3.3, 2, 1]], [[2, 1450.5, "length", 30]], true, null, null, null, "JPY", "SI"],
      gives: [
        { at: [2, 4], is: 3.3 },
        { at: [6, 1], is: 4787 },
      ],
      within: 1e-9,
      from: "by hand, yen: 3.3 m of the 2 m roll at 1,450.5 = 4,786.65, up to the yen",
    },
  ],
  compute(values, system) {
    const { cuts, rolls, turn, seam } = values;
    const request = requestOf(values, system);
    const misfits = seam === undefined ? cuts.filter((piece) => !rolls.some((roll) => fits(piece, roll, turn))) : [];
    for (const piece of misfits) {
      throw invalid(`cuts row ${piece.row}: ${misfit(piece, request, (metres) => say("length", metres, system))}`);
    }
    const plan = cutPlan(request);
    return [...cutRows(plan, rolls), ...totals(plan, request, rolls, system)];
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
function totals(plan: Plan, request: PlanRequest, rolls: readonly RollRow[], system: UnitSystem): TableCell[][] {
  const { bought, area, waste, cost, rollCost, lowerBound, seamLength } = plan;
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
    row("Cost of rolls", rollCost),
    row("Cost of seams", seamCost(plan, request)),
    row("Lower bound", lowerBound),
    row("Plan", state(plan)),
    row("Seam length", { measure: "length", inside: seamLength }, inLength),
    row("Seam tape", { measure: "length", inside: tapeFor(seamLength) }, inLength),
  ];
}

/** What is not priced is not 0. */
function seamCost({ cost, rollCost, seamLength }: Plan, { seamPrice, digits }: PlanRequest): TableCell {
  return seamLength > 0 && seamPrice === undefined ? "not priced" : roundMoney(cost - rollCost, digits ?? CENT_DIGITS);
}

function state({ proven, mayPart }: Plan): string {
  if (!proven) return "best found";
  return mayPart ? "proven least cost of the partings tried" : "proven least cost";
}
