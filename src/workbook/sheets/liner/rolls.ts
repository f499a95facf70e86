import { PRICE_BASES } from "../../../calc/liner/cutplan/request";
import type { Job, SheetLayout } from "../../layout";
import { allBlank } from "../../layout/conditions";

/** Rows of rolls. */
export const ROLLS = 4;

/** The rolls that can be bought, and how pieces may lie on them. */
export function rolls(s: SheetLayout, job: Job): void {
  s.section("Rolls you can buy");
  s.note(
    "One row for each width. Prices are for a length or an area cut off the roll, or for a full roll of the longest length.",
  );
  const bought = `SUMIFS(INDEX(CutPlan,0,5),INDEX(CutPlan,0,1),"Length to buy",INDEX(CutPlan,0,2),SEQUENCE(${ROLLS}))`;
  const table = s.table({
    rows: ROLLS,
    columns: [
      {
        key: "width",
        title: "Width of the roll",
        kind: "length",
        name: "RollWidths",
        input: { min: { US: 1, SI: 0.3 }, max: { US: 100, SI: 30 }, message: "Width of the roll as sold." },
      },
      { key: "price", title: "Price", kind: "money", input: { min: 0, max: 100000, message: "Price as quoted." } },
      {
        key: "per",
        title: "Price is for",
        kind: "text",
        input: { choices: [...PRICE_BASES], message: "What the price is for: a length, an area, or a full roll." },
      },
      {
        key: "longest",
        title: "Longest length",
        kind: "length",
        input: {
          min: { US: 5, SI: 1 },
          max: { US: 1000, SI: 300 },
          message: "Longest length sold in one piece; the length of the roll when the price is for a full roll.",
        },
      },
      {
        key: "buy",
        title: "Length to buy",
        kind: "length",
        name: "RollBuyLengths",
        whole: true,
        formula: `=IF(ISNUMBER([width])*COUNT(INDEX(CutPlan,1,3)),${bought},"")`,
      },
    ],
    demo: {
      US: [
        [15, 14.6, "length", 100],
        [20, 1.02, "area", 100],
        [20, 930, "roll", 50],
      ],
      SI: [
        [4.3, 42, "length", 30],
        [6.2, 10.4, "area", 30],
        [6.2, 1340, "roll", 25],
      ],
    },
  });
  s.define("LinerRolls", table.body.top, 1, table.body.bottom, 4);
  s.input({
    name: "LinerTurn",
    label: "Pieces may be turned",
    kind: "text",
    choices: ["yes", "no"],
    message: "Whether a piece's length may lie across the roll.",
  });
  s.input({
    name: "SeamLap",
    label: "Lap of a seam, where one is needed",
    kind: "size",
    min: { US: 1, SI: 25 },
    max: { US: 24, SI: 600 },
    optional: true,
    message: "Leave blank to allow no seam. Where a roll does not hold a piece, it may be seamed if that costs less.",
    note: `Blank: no seams. Common practice: ${job.pick({ US: "4 in", SI: "100 mm" })} with seam tape.`,
  });
  comparing(s, job);
}

/** What seams cost when plans are compared, and a plan found by a longer search. */
function comparing(s: SheetLayout, job: Job): void {
  s.input({
    name: "SeamPrice",
    label: `Price of a seam, for each ${job.pick({ US: "ft", SI: "m" })}`,
    kind: "money",
    min: 0,
    max: 1000,
    optional: true,
    message: "Tape and work of a seam, to weigh seams against wider rolls. Blank counts seams as free.",
    note: "Only compares plans; tape and work are priced where they are taken off.",
  });
  s.input({
    name: "LinerKeptPlan",
    label: "Plan from a longer search",
    kind: "text",
    max: 5000,
    optional: true,
    message:
      "Written by the pane, Drawings, Cut plan, Search longer. Clear it any time; it is ignored for other pieces.",
  });
}

/** What the plan comes to. */
export function plan(s: SheetLayout): void {
  s.section("To buy");
  const read = (row: string): string => `INDEX(CutPlan,MATCH(${row},INDEX(CutPlan,0,1),0),2)`;
  const planned = ["PieceCount", "RollWidths"];
  const [counts, prices, bases] = ["PieceCounts", "INDEX(LinerRolls,0,2)", "INDEX(LinerRolls,0,3)"];
  s.result({
    name: "LinerGaps",
    label: "Incomplete rows",
    kind: "count",
    formula:
      `=SUMPRODUCT(((PieceLengths<>"")+(PieceWidths<>"")+(${counts}<>"")>0)*(1-ISNUMBER(PieceLengths)*ISNUMBER(PieceWidths)*ISNUMBER(${counts})))` +
      `+SUMPRODUCT(((RollWidths<>"")+(${prices}<>"")>0)*(1-ISNUMBER(RollWidths)*ISNUMBER(${prices})*(${bases}<>"")))`,
    note: "Each takes length, width, count; width, price, basis.",
  });
  s.result({
    name: "LinerBuyLength",
    label: "Liner to buy, length of all rolls",
    kind: "length",
    // A plan that failed buys no length, and not a length of 0.
    formula: "=IF(ISNUMBER(LinerBuyArea),SUM(RollBuyLengths),LinerBuyArea)",
    needs: planned,
  });
  const rows = '{"Area to buy";"Cost of rolls";"Waste share";"Seam tape"}';
  s.results(`=IF((PieceCount="")+(${allBlank("RollWidths")})+{0;0;0;0},"",${read(rows)})`, [
    { name: "LinerBuyArea", label: "Liner to buy, area", kind: "area", strong: true },
    { name: "LinerCost", label: "Cost of the liner", kind: "money" },
    { name: "LinerWasteShare", label: "Waste of it", kind: "share" },
    { name: "SeamTapeLength", label: "Seam tape, seams and a tenth more", kind: "length" },
  ]);
  s.result({
    name: "LinerPlanState",
    label: "The plan is",
    kind: "text",
    formula: `=${read('"Plan"')}`,
    needs: planned,
    note: "Cuts run from edge to edge.",
  });
}
