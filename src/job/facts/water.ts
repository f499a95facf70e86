import { BED_KINDS } from "../../calc/tables/beds";
import { LIP_SHAPES } from "../../calc/tables/lips";
import { choices, factsOf, numbers, table, worked } from "./fact";

const { number, choice } = factsOf("Water");
const own = { sheet: "Water", knower: "visit" } as const;

/** The water that is wanted: sheet and lips, drops, pools and beds. */
export const water = {
  sheetWanted: number(
    "SheetWanted",
    "visit",
    "size",
    { US: [0.1, 12], SI: [3, 300] },
    "How deep should the water stand over the lowest lip while the pump runs?",
  ),
  lipShape: choice(
    "LipShape",
    "office",
    LIP_SHAPES.map(({ name }) => name),
    "What shape are the lips?",
  ),
  lips: table({
    ...own,
    name: "LipTable",
    question: "Which lips does the top pool have?",
    rows: 3,
    required: true,
    columns: {
      width: numbers(1, "size", { US: [1, 480], SI: [25, 12_000] }, "How wide is the lip along its edge?"),
      level: numbers(2, "size", { US: [0, 24], SI: [0, 600] }, "How much higher does it lie than the lowest lip?"),
    },
  }),
  flowTyped: number(
    "FlowTyped",
    "office",
    "flow",
    { US: [10, 900_000], SI: [40, 3_600_000] },
    "Which flow do you want, if not that of the lips?",
    { optional: true },
  ),
  spillBoxes: number("SpillBoxes", "office", "count", [0, 12], "How many spillway boxes stand at the top?", {
    whole: true,
  }),
  boxWidth: number(
    "SpillBoxWidth",
    "office",
    "size",
    { US: [4, 120], SI: [100, 3000] },
    "How wide is the lip of one spillway box?",
  ),
  drops: table({
    ...own,
    name: "Drops",
    question: "How high is each drop, and how long the tread below it?",
    rows: 12,
    columns: {
      drop: worked(numbers("Drops", "length", { US: [0, 20], SI: [0, 6] }, "How high is this drop?")),
      tread: worked(numbers("Treads", "length", { US: [0, 300], SI: [0, 100] }, "How long is the tread below it?")),
    },
  }),
  pools: table({
    ...own,
    name: "PoolTable",
    question: "Which pools does the water run through above the basin?",
    rows: 6,
    columns: {
      area: numbers(1, "area", { US: [0.2, 20_000], SI: [0.02, 2000] }, "How large is the pool's water surface?"),
      lipWidth: numbers(2, "size", { US: [1, 960], SI: [25, 24_000] }, "How wide is the lip it runs over?"),
    },
  }),
  beds: table({
    ...own,
    name: "BedTable",
    question: "Which reaches of stream lie between the drops?",
    rows: 4,
    columns: {
      length: numbers(1, "length", { US: [0, 2000], SI: [0, 600] }, "How long is this reach along the bed?"),
      width: numbers(2, "length", { US: [0.2, 100], SI: [0.06, 30] }, "How wide is its bottom?"),
      slope: numbers(3, "percent", [0.1, 100], "How much does the bed itself fall, in percent of its length?"),
      kind: choices(
        4,
        BED_KINDS.map(({ name }) => name),
        "What is the bed made of?",
      ),
    },
  }),
} as const;
