import { CLOSURE_LIMITS } from "../../calc/ground/levelRun";
import { VOLUME_METHODS } from "../../calc/ground/cutFill";
import { factsOf, numbers, table, texts } from "./fact";

const { number, choice } = factsOf("Ground");
const own = { sheet: "Ground", knower: "visit" } as const;
const READING = { US: [0, 25], SI: [0, 7.6] } as const;
const LEVEL = [-2000, 30000] as const;

/** What rod readings are taken with. A string pulled level is a line of sight too, and is read on a tape. */
export const SHOT_TOOLS = ["laser", "level", "string"] as const;
/** Points of known level that a run of shots begins on. */
export const SHOT_STARTS = ["benchmark", "finished grade", "rim of the basin"] as const;
export const CLOSURE_NAMES = Object.keys(CLOSURE_LIMITS) as (keyof typeof CLOSURE_LIMITS)[];
/** Rows of shots the sheet has room for. */
export const MOST_SHOTS = 60;

/** The ground as it lies, by shots, and how it is dug and filled. */
export const ground = {
  shotTool: choice("ShotTool", "visit", SHOT_TOOLS, "What are the shots taken with?"),
  shotStart: choice("ShotStart", "visit", SHOT_STARTS, "On what is the first backsight taken?"),
  shotEndLevel: number("ShotEndLevel", "visit", "length", LEVEL, "What level does the last point have, if known?", {
    optional: true,
  }),
  shotDistance: number(
    "ShotDistance",
    "visit",
    "length",
    { US: [1, 20_000], SI: [0.5, 6000] },
    "How far was leveled, out and back together?",
    { optional: true },
  ),
  shotLimit: choice("ShotLimit", "book", CLOSURE_NAMES, "How near must the run close?"),
  topsoilDepth: number(
    "TopsoilDepth",
    "visit",
    "size",
    { US: [0, 24], SI: [0, 600] },
    "How much topsoil is stripped and kept apart?",
  ),
  cutSlope: number("CutSlope", "book", "factor", [0, 6], "How far do sides in cut lean back for each 1 of height?"),
  bankSlope: number("BankSlope", "book", "factor", [0, 6], "How far do the banks lean back for each 1 of height?"),
  volumeMethod: choice("VolumeMethod", "book", VOLUME_METHODS, "How is the volume between stations worked out?"),
  shots: table({
    ...own,
    name: "Shots",
    question: "What did the rod show, from which set-up and where?",
    rows: MOST_SHOTS,
    columns: {
      point: texts(1, "What is the point called?"),
      backsight: numbers(2, "length", READING, "What did the rod show on a point of known level?"),
      intermediate: numbers(3, "length", READING, "What did it show on a point in between?"),
      foresight: numbers(4, "length", READING, "What did it show last from this set-up?"),
      station: numbers(5, "length", { US: [-3000, 3000], SI: [-900, 900] }, "How far down the line from the top lip?"),
      offset: numbers(6, "length", { US: [-300, 300], SI: [-90, 90] }, "How far right of the line?"),
    },
  }),
  poolDepths: table({
    ...own,
    knower: "office",
    name: "PoolDepths",
    question: "How much deeper are the pools dug?",
    rows: 12,
    columns: {
      deeper: numbers(1, "length", { US: [0, 6], SI: [0, 2] }, "How much deeper is the pool below this drop?"),
    },
  }),
} as const;
