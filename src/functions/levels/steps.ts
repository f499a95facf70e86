import { aboveZero } from "../contract/range";
import { layOutSteps, STEPS_RANGE } from "../../calc/levels/steps";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { number, quantity, share } from "../contract/scalars";

/** What levels are rounded to: an eighth of an inch, or 5 mm. */
const GRID = { US: 0.0254 / 8, SI: 0.005 } as const;

export const STEPS = declare({
  name: "STEPS",
  topic: "levels",
  summary: "Lays a fall out in natural-looking drops and treads that add up exactly; the same seed repeats it.",
  formula:
    "share = (1 + 0.7 × unevenness × x) / Σ, x = 2 frac(φ i + seed) - 1; levels to the nearest 1/8 in or 5 mm, the last step takes what is left",
  source:
    "Additive recurrence: Weyl (1916). Long pools behind high steps: Abrahams, Li and Atkinson, Water Resources Research 31 (1995). " +
    "Shares: common practice, no source",
  limits:
    "A suggestion: type over any drop or tread that the stones ask for. Each drop is at least 1 in (25 mm) and each tread at least 2 in (50 mm).",
  args: {
    fall: quantity("length", "Whole fall", aboveZero(STEPS_RANGE.fall)),
    run: quantity("length", "Whole run", aboveZero(STEPS_RANGE.run)),
    drops: number("How many drops", { above: 0, max: 100 }, { whole: true }),
    unevenness: optional(share("0 all alike, 1 very uneven"), "0.35", 0.35),
    seed: optional(
      number("Any number; another gives another layout", { above: 0, max: 1_000_000 }, { whole: true }),
      "1",
      1,
    ),
  },
  result: tableResult("the drops and treads", [
    { title: "Step" },
    { title: "Drop", measure: "length" },
    { title: "Tread", measure: "length" },
    { title: "Fallen so far", measure: "length" },
    { title: "Run so far", measure: "length" },
  ]),
  examples: [
    {
      args: [3, 8, 4, 0],
      gives: [
        { at: [1, 1], is: 0.75 },
        { at: [4, 2], is: 2 },
        { at: [4, 3], is: 3 },
        { at: [4, 4], is: 8 },
      ],
      within: 1e-9,
      from: "by hand: four drops all alike, 3 ft / 4 = 0.75 ft and 8 ft / 4 = 2 ft",
    },
    {
      args: [0.9, 3.2, 5, 0.5, 7, "SI"],
      gives: [
        { at: [5, 3], is: 0.9 },
        { at: [5, 4], is: 3.2 },
      ],
      within: 1e-12,
      from: "the drops add up to the fall and the treads to the run",
    },
  ],
  compute({ fall, run, drops, unevenness, seed }, system) {
    let fallen = 0;
    let gone = 0;
    return layOutSteps(fall, run, drops, unevenness, seed, GRID[system]).map(({ drop, tread }, i): TableCell[] => {
      fallen += drop;
      gone += tread;
      return [i + 1, drop, tread, fallen, gone];
    });
  },
});
