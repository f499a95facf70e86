import { LEVEL_RANGE } from "../../calc/levels/setOut";
import { closedRun } from "../../calc/ground/closedRun";
import { CLOSURE_LIMITS, RUN_RANGE, type Closure } from "../../calc/ground/levelRun";
import { convert } from "../../calc/quantity/units";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { aboveZero } from "../contract/range";
import { tableResult } from "../contract/result";
import { choice, quantity } from "../contract/scalars";
import { table } from "../contract/tables";
import { inStep, READING, rodColumns } from "./arguments";

const LIMIT_NAMES = Object.keys(CLOSURE_LIMITS) as (keyof typeof CLOSURE_LIMITS)[];

export const LEVELRUN = declare({
  name: "LEVELRUN",
  topic: "levels",
  summary: "Turns rod readings over turning points into levels, checks the page, and shares the misclosure out.",
  formula:
    "HI = known level + backsight; level = HI - reading; check: sum of backsights - sum of foresights = last - first; " +
    "limit = k √(distance); corrected = level - misclosure × set-ups so far / all set-ups",
  source:
    "US Army FM 5-233 (1985), chapter 4 (from memory). Third order 12 mm √km: Federal Geodetic Control Committee (1984); " +
    "construction 0.1 ft √mile: common practice, no source",
  limits:
    "The page check proves the arithmetic, never a reading: close the run on the benchmark. A misclosure over the limit is not shared out. " +
    "A backsight alone is read on a point already in the book, as after moving a laser. Readings upside down are not taken.",
  caution:
    "Check that the instrument is level and read the benchmark again at the end; a moved tripod spoils every level.",
  args: {
    readings: table("Rod readings in the order taken", rodColumns(READING)),
    start: quantity("length", "Level of the first point", LEVEL_RANGE.level),
    known: optional(
      quantity("length", "Known level of the last point", LEVEL_RANGE.level),
      "that of the first, where the run ends on it",
    ),
    distance: optional(
      quantity("length", "Distance leveled, out and back together", aboveZero(RUN_RANGE.length)),
      "no limit is worked out",
    ),
    limit: optional(choice("Limit of closure", LIMIT_NAMES), "construction", "construction"),
  },
  result: tableResult("the levels", [
    { title: "Point" },
    { title: "Height of instrument", measure: "length" },
    { title: "Level", measure: "length" },
    { title: "Corrected level", measure: "length" },
    { title: "Remark" },
  ]),
  examples: [
    {
      args: [
        [
          ["BM1", 1.216, "", ""],
          ["a", "", 0.025, ""],
          ["b", "", 1.555, ""],
          ["CP b", 1.386, "", 2.508],
          ["bd1", "", 3.625, ""],
          ["CP c", 1.235, "", 1.196],
          ["CP bd2", 3.655, "", 3.566],
          ["CP d", 2.126, "", 0.506],
          ["e", "", 2.605, ""],
          ["f", "", 1.094, ""],
          ["CP g", 1.125, "", 3.628],
          ["h", "", 1.394, ""],
          ["BM2", "", "", 0.484],
        ],
        106.366,
        105.263,
        "",
        "",
        "SI",
      ],
      gives: [
        { at: [2, 2], is: 107.557 },
        { at: [5, 3], is: 102.849 },
        { at: [12, 3], is: 104.353 },
        { at: [13, 2], is: 105.221 },
        { at: [13, 3], is: 105.263 },
      ],
      within: 1e-9,
      from: "a teaching sheet's level book, every column printed: 6 set-ups, 7 mm a set-up; an intermediate sight takes that of its own",
    },
    {
      args: [
        [
          ["Bench mark", 4.35, "", ""],
          ["Rim", "", 5.1, ""],
          ["Turning point", 6.2, "", 1.15],
          ["Top lip", "", 2.05, ""],
          ["Bench mark", "", "", 9.41],
        ],
        100,
        "",
        200,
      ],
      gives: [
        { at: [2, 2], is: 99.25 },
        { at: [4, 2], is: 107.35 },
        { at: [5, 2], is: 99.99 },
        { at: [5, 3], is: 100 },
      ],
      within: 1e-9,
      from:
        "by hand: HI 104.35; rim 104.35 - 5.1; turning point 103.2, HI 109.4; lip 109.4 - 2.05; back 109.4 - 9.41 = 99.99, " +
        "0.01 ft low; limit 0.024 m √0.06096 = 0.0194 ft, two set-ups of +0.005 ft each",
    },
  ],
  compute({ readings, start, known, distance, limit }, system) {
    const { points, backsights, foresights, closure, corrected } = closedRun(
      start,
      readings.map((row) => ({ ...row, point: row.point ?? "" })),
      { known, distance, limit },
    );
    return inStep(
      readings,
      points.map(({ point, instrument, level }, index) => [
        point,
        instrument ?? "",
        level,
        corrected?.[index] ?? "",
        index === points.length - 1 ? remark(backsights - foresights, closure, system) : "",
      ]),
    );
  },
});

function remark(pageCheck: number, closed: Closure | undefined, system: UnitSystem): string {
  const check = `Backsights less foresights: ${asClosed(pageCheck, system)}.`;
  if (!closed) return `${check} Not closed: end on a point of known level.`;
  const { misclosure, limit, within } = closed;
  const off = `Closes ${asClosed(Math.abs(misclosure), system)} ${misclosure < 0 ? "low" : "high"}`;
  if (limit === undefined) return `${check} ${off}; give the distance leveled for its limit.`;
  if (within) return `${check} ${off}, limit ${asClosed(limit, system)}: shared out by set-ups.`;
  return `${check} ${off}, over the limit of ${asClosed(limit, system)}: level again.`;
}

/** A misclosure finer than a rod is read, so that one just over its limit does not look like it: 0.001 ft, 0.1 mm. */
function asClosed(metres: number, system: UnitSystem): string {
  const [unit, digits] = system === "US" ? (["ft", 3] as const) : (["mm", 1] as const);
  return `${Number(convert(metres, "m", unit).toFixed(digits))} ${unit}`;
}
