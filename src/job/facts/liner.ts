import { PRICE_BASES } from "../../calc/liner/cutplan/request";
import { choices, factsOf, numbers, table, texts, worked } from "./fact";

const { number, choice, text } = factsOf("Liner");
const SIDE = { US: [0, 300], SI: [0, 90] } as const;
const LAYERS = [0, 5] as const;
const whole = { whole: true } as const;

/** Liner and fabric: allowances, pieces, and the rolls they come off. */
export const liner = {
  linerOverlap: number(
    "LinerOverlap",
    "book",
    "length",
    { US: [0, 10], SI: [0, 3] },
    "How far does the liner run on over the ground at every edge?",
  ),
  slackPerDrop: number(
    "SlackPerDrop",
    "book",
    "length",
    { US: [0, 3], SI: [0, 1] },
    "How much loose liner is left at every drop?",
  ),
  cutRounding: number(
    "CutRounding",
    "book",
    "length",
    { US: [0.01, 5], SI: [0.001, 1] },
    "To what are the sides of a cut rounded up?",
  ),
  linerThickness: number(
    "LinerThickness",
    "book",
    "thickness",
    { US: [10, 120], SI: [0.25, 3] },
    "How thick is the liner?",
  ),
  pieces: table({
    sheet: "Liner",
    knower: "office",
    name: "LinerPieces",
    question: "Which pieces are cut? The first two are stream and basin.",
    rows: 8,
    columns: {
      name: worked(texts(1, "What is the piece for?")),
      length: worked(numbers(2, "length", SIDE, "How long is it, allowances included?")),
      width: worked(numbers(3, "length", SIDE, "How wide is it, allowances included?")),
      count: worked(numbers(4, "count", [1, 3], "How many of it?", whole)),
    },
  }),
  rolls: table({
    sheet: "Liner",
    knower: "book",
    name: "LinerRolls",
    question: "Which rolls of liner can you buy?",
    rows: 4,
    columns: {
      width: numbers(1, "length", { US: [1, 100], SI: [0.3, 30] }, "How wide is the roll?"),
      price: numbers(2, "money", [0, 100_000], "What does it cost?"),
      per: choices(3, PRICE_BASES, "What is the price for?"),
      longest: numbers(4, "length", { US: [5, 1000], SI: [1, 300] }, "What is the longest length sold in one piece?"),
    },
  }),
  linerTurn: choice("LinerTurn", "office", ["yes", "no"], "May pieces be turned across the roll?"),
  seamLap: number(
    "SeamLap",
    "book",
    "size",
    { US: [1, 24], SI: [25, 600] },
    "How far do the parts of a seamed piece lap? Blank where no seam is allowed.",
    { optional: true },
  ),
  seamPrice: number(
    "SeamPrice",
    "book",
    "money",
    [0, 1000],
    "What does a ft (m) of seam cost in tape and work, to weigh seams against wider rolls?",
    { optional: true },
  ),
  linerKeptPlan: text("LinerKeptPlan", "office", "Which plan did a longer search find? The pane writes it.", {
    optional: true,
  }),
  fabricUnder: number("FabricUnder", "book", "count", LAYERS, "How many layers of fabric lie under the liner?", whole),
  fabricOver: number("FabricOver", "book", "count", LAYERS, "How many layers of fabric lie over the liner?", whole),
  fabricRollWidth: number(
    "FabricRollWidth",
    "book",
    "length",
    { US: [1, 30], SI: [0.3, 10] },
    "How wide is the fabric roll?",
  ),
  fabricLap: number("FabricLap", "book", "length", { US: [0, 3], SI: [0, 1] }, "How far do strips of fabric lap?"),
  fabricMass: number(
    "FabricMass",
    "book",
    "sheetMass",
    { US: [2, 32], SI: [70, 1100] },
    "What does the fabric weigh by area?",
  ),
} as const;
