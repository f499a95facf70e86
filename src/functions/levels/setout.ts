import { LEVEL_RANGE, setOut, type SetOutPoint } from "../../calc/levels/setOut";
import { invalid } from "../../calc/problem";
import { formatFeetInches } from "../../calc/quantity/feetInches";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { aboveZero } from "../contract/range";
import { tableResult, type TableCell } from "../contract/result";
import { quantity, text } from "../contract/scalars";
import { table } from "../contract/tables";
import { inStep, READING } from "./arguments";

const COLUMNS = [
  { title: "Point" },
  { title: "Level", measure: "length" },
  { title: "Rod reading", measure: "length" },
  { title: "Rod on the tape" },
  { title: "From the string" },
  { title: "Reading taken", measure: "length" },
  { title: "Too high by", measure: "length" },
  { title: "To do" },
] as const;

export const SETOUT = declare({
  name: "SETOUT",
  topic: "levels",
  summary: "Turns levels into rod readings and string measures, and readings taken into cut or fill.",
  formula:
    "HI = benchmark + backsight; rod = HI - level; string = level - benchmark; too high by = HI - reading - level",
  source: "Differential levelling, any surveying text",
  limits:
    "Feet and inches to the nearest eighth, or whole millimeters: the text can be off by half of that. " +
    "A new backsight is all that moving the instrument takes. Check the benchmark again before leaving; sights of equal length cancel the instrument's own error. " +
    "A point without a level waits for it, and keeps what was read on it.",
  caution:
    "Check that the instrument is level and read the benchmark again at the end; a moved tripod spoils every level.",
  args: {
    benchmark: quantity("length", "Level of the benchmark", LEVEL_RANGE.level),
    backsight: quantity("length", "Rod reading on the benchmark", READING),
    targets: table("Points to set out", {
      name: text("Name of the point", { longest: 80 }),
      level: optional(quantity("length", "Level wanted", LEVEL_RANGE.level), "not known yet"),
    }),
    readings: optional(
      table("Rod readings taken, row by row beside the points", {
        reading: optional(quantity("length", "Reading", READING), "none"),
        after: optional(quantity("length", "Reading after the instrument was moved", READING), "none"),
      }),
      "none taken",
    ),
    tolerance: optional(
      quantity("size", "As near as this is on grade", aboveZero(LEVEL_RANGE.tolerance)),
      "1/4 in | 6 mm",
      { US: 0.25, SI: 6 },
    ),
    moved: optional(
      quantity("length", "Rod reading on the benchmark after the instrument was moved", READING),
      "it was not moved",
    ),
  },
  result: tableResult("the rod readings", COLUMNS),
  examples: [
    {
      args: [
        100,
        4.35,
        [
          ["Basin bottom", 96.5],
          ["Lip 1", 101],
        ],
        [[7.9], [""]],
      ],
      gives: [
        { at: [1, 2], is: 7.85 },
        { at: [1, 3], is: "7'-10 1/4\"" },
        { at: [1, 4], is: "down 3'-6\"" },
        { at: [1, 6], is: -0.05 },
        { at: [1, 7], is: "fill 0'-0 5/8\"" },
        { at: [2, 2], is: 3.35 },
        { at: [2, 4], is: "up 1'-0\"" },
      ],
      within: 1e-9,
      from:
        "by hand: HI = 104.35 ft; 104.35 - 96.5 = 7.85 ft = 7 ft 10.2 in, nearest eighth 10 1/4; 100 - 96.5 = 3.5 ft down; " +
        "the ground read 104.35 - 7.9 = 96.45 ft, 0.05 ft = 0.6 in low",
    },
    {
      args: [
        50,
        1.2,
        [
          ["Rim", 49.975],
          ["Lip 1", 50.6],
        ],
        [
          [1.215, ""],
          ["", 0.91],
        ],
        6,
        1.5,
        "SI",
      ],
      gives: [
        { at: [1, 2], is: 1.525 },
        { at: [1, 7], is: "cut 10 mm" },
        { at: [2, 2], is: 0.9 },
        { at: [2, 7], is: "fill 10 mm" },
      ],
      within: 1e-9,
      from:
        "by hand: the rim read 51.2 - 1.215 = 49.985 m before the move, 10 mm high; after it HI = 51.5 m, " +
        "the lip's reading 51.5 - 50.6 = 0.9 m, read at 0.91 it is 10 mm low",
    },
    {
      args: [50, 1.2, [["Rim", 49.975]], [[1.215]], 6, "", "SI"],
      gives: [
        { at: [1, 2], is: 1.225 },
        { at: [1, 3], is: "1225 mm" },
        { at: [1, 4], is: "down 25 mm" },
        { at: [1, 7], is: "cut 10 mm" },
      ],
      within: 1e-9,
      from: "by hand: HI = 51.2 m; 51.2 - 49.975 = 1.225 m; read 51.2 - 1.215 = 49.985 m, 10 mm high",
    },
  ],
  compute({ benchmark, backsight, targets, readings, tolerance, moved }, system) {
    const byRow = new Map((readings ?? []).map(({ row, reading, after }) => [row, { reading, after }]));
    const told = targets.flatMap(({ level, ...target }) =>
      level === undefined ? [] : [{ ...target, level, ...byRow.get(target.row) }],
    );
    const points = new Map(
      setOut(benchmark, backsight, told, tolerance, moved).map((point, at) => [told[at]?.row, point]),
    );
    const rows = targets.map(({ row, name }) => {
      const point = points.get(row);
      return point ? cells(point, system) : waiting(name, byRow.get(row));
    });
    for (const { row } of targets) byRow.delete(row);
    for (const row of byRow.keys())
      throw invalid(`readings row ${row} has no point beside it; name the point and its level`);
    return inStep(targets, rows);
  },
});

/** A point whose level is not known yet: what was read on it stays beside it. */
function waiting(name: string, read: Pick<SetOutPoint, "reading" | "after"> | undefined): TableCell[] {
  return [name, "", "", "", "", read?.after ?? read?.reading ?? "", "", "needs its level"];
}

function cells(point: SetOutPoint, system: UnitSystem): TableCell[] {
  const { name, level, rod, fromString, reading, high, todo } = point;
  const seen = rod >= 0;
  const side = fromString > 0 ? "up" : "down";
  const string = onTape(Math.abs(fromString), system);
  const move = high === undefined || todo === "on grade" ? todo : `${todo} ${onTape(Math.abs(high), system)}`;
  const hidden = `above the line of sight by ${onTape(-rod, system)}: set up higher, or use the string`;
  return [
    name,
    level,
    seen ? rod : "",
    seen ? onTape(rod, system) : "",
    fromString === 0 ? "at the string" : `${side} ${string}`,
    reading ?? "",
    high ?? "",
    move || (seen ? "" : hidden),
  ];
}

/** As a tape or rod is read: feet, inches and eighths, or millimetres. */
function onTape(metres: number, system: UnitSystem): string {
  return system === "US" ? formatFeetInches(metres, 8) : `${Math.round(metres * 1000)} mm`;
}
