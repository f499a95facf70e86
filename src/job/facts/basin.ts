import { BASIN_PARTS } from "../../calc/tables/basinParts";
import { choices, factsOf, numbers, table } from "./fact";

const { number, choice } = factsOf("Basin");
const SIDE = { US: [0.3, 200], SI: [0.1, 60] } as const;
const DEPTH = { US: [0, 8], SI: [0, 2.4] } as const;
const MODULE = { US: [0.3, 8], SI: [0.1, 2.4] } as const;
const optional = { optional: true } as const;

/** The buried basin, what stands in it, and what it must make up for. */
export const basin = {
  basinLength: number("BasinLength", "office", "length", SIDE, "How long is the basin at its bottom, inside?"),
  basinWidth: number("BasinWidth", "office", "length", SIDE, "How wide is the basin at its bottom, inside?"),
  basinWaterDepth: number(
    "BasinWaterDepth",
    "office",
    "length",
    { US: [0.5, 12], SI: [0.15, 3.6] },
    "How deep is the water, from the floor to the overflow?",
  ),
  basinSideSlope: number("BasinSideSlope", "office", "number", [0, 3], "How far do its walls lean out for each 1 up?"),
  rimBelowGrade: number(
    "RimBelowGrade",
    "office",
    "size",
    { US: [0, 48], SI: [0, 1200] },
    "How far below the finished grade do rim and overflow lie?",
  ),
  gravelVoids: number("GravelVoids", "book", "share", [0.05, 1], "What share of the gravel can water fill?"),
  basinParts: table({
    sheet: "Basin",
    knower: "office",
    name: "BasinParts",
    question: "Which void modules and pump wells stand in the pit?",
    rows: 4,
    columns: {
      kind: choices(
        1,
        BASIN_PARTS.filter(({ role }) => role !== "pit").map(({ name }) => name),
        "What is it?",
      ),
      length: numbers(2, "length", SIDE, "How long is the block or well; across, where it is round?"),
      width: numbers(3, "length", SIDE, "How wide is it; blank where it is round?"),
      depth: numbers(
        4,
        "length",
        { US: [0.1, 12], SI: [0.03, 3.6] },
        "How high does it stand below the full water level?",
      ),
      voids: numbers(5, "share", [0.05, 1], "What share of it can water fill?"),
    },
  }),
  moduleLength: number("ModuleLength", "book", "length", MODULE, "How long is one void module?", optional),
  moduleWidth: number("ModuleWidth", "book", "length", MODULE, "How wide is one void module?", optional),
  moduleHeight: number("ModuleHeight", "book", "length", MODULE, "How high is one void module?", optional),
  checkValve: choice("CheckValve", "office", ["no", "yes"], "Does a check valve keep the pipe full?"),
  lowWaterDepth: number("LowWaterDepth", "book", "length", DEPTH, "How much water must the pump have above the floor?"),
  splashShare: number("SplashShare", "book", "share", [0, 10], "What do splash and wind add to the evaporation?"),
  reserveDays: number("ReserveDays", "visit", "count", [0, 60], "How many days must it run without topping up?", {
    whole: true,
  }),
} as const;
