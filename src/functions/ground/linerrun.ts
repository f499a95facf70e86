import { LINER_RUN_RANGE, linerRun } from "../../calc/ground/linerRun";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { number, quantity, share } from "../contract/scalars";
import { table } from "../contract/tables";

const slope = optional(number("Slope of the banks, run per 1 of height", LINER_RUN_RANGE.bankSlope), "0, upright", 0);

export const LINERRUN = declare({
  name: "LINERRUN",
  topic: "ground",
  summary: "Develops a stream's liner station by station: along bed and drops, across bed, banks and edges.",
  formula: "across = (bed + 2 bank √(1 + z²) + 2 edge)(1 + slack); along = sum of (√(Δx² + Δz²) + drop)(1 + slack)",
  source:
    "Perimeter of a trapezoid: V. T. Chow, Open-Channel Hydraulics (1959), Table 2-1. Edges and slack: common practice, no source",
  limits:
    "The bed is straight from station to station: add a station where it bends or changes width. Levels are those of the dug bed. " +
    "Laps and seams are not in it (see CUTPLAN).",
  args: {
    stations: table("Stations along the line", {
      station: quantity("length", "Distance along the line", LINER_RUN_RANGE.station),
      bed: quantity("length", "Level of the dug bed, below the drop", LINER_RUN_RANGE.level),
      drop: optional(quantity("length", "Height of the face at this station", LINER_RUN_RANGE.drop), "0, no drop", 0),
      width: quantity("length", "Width of the dug bed", LINER_RUN_RANGE.width),
      bank: quantity("length", "Height of the banks, freeboard included", LINER_RUN_RANGE.bank),
      bank_slope: slope,
    }),
    edge: optional(quantity("length", "Turned over each bank", LINER_RUN_RANGE.edge), "1 ft | 0.3 m", {
      US: 1,
      SI: 0.3,
    }),
    slack: optional(share("Slack in folds and for settling", LINER_RUN_RANGE.slack), "5%", 0.05),
  },
  result: tableResult("the developed liner", [
    { title: "Station", measure: "length" },
    { title: "Along the liner", measure: "length" },
    { title: "Across the liner", measure: "length" },
  ]),
  examples: [
    {
      args: [
        [
          [0, 103, 0, 3, 1, 0],
          [4, 102, 1, 3, 1, 0],
          [8, 99, 0, 4, 0.75, 1.3333333333333333],
        ],
        1,
        0,
      ],
      gives: [
        { at: [1, 2], is: 7 },
        { at: [2, 1], is: 5 },
        { at: [3, 1], is: 10 },
        { at: [3, 2], is: 8.5 },
      ],
      within: 1e-9,
      from: "by hand: level for 4 ft, 1 ft down, then 4 along and 3 down: 5; across 3 + 2 × 1 + 2 × 1 = 7, and 4 + 2 × 0.75 × 5/3 + 2 = 8.5",
    },
  ],
  compute: ({ stations, edge, slack }) =>
    linerRun(
      stations.map((at) => ({ ...at, bankSlope: at.bank_slope })),
      { edge, slack },
    ).map(({ station, along, across }): TableCell[] => [station, along, across]),
});
