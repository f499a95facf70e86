import { factsOf, numbers, table, texts } from "./fact";

const { number } = factsOf("Levels");
const READING = { US: [0.01, 25], SI: [0.01, 7.6] } as const;

/** What the crew sets out by. */
export const levels = {
  unevenness: number("Unevenness", "office", "share", [0, 1], "How uneven should a natural layout of the drops be?"),
  stepSeed: number("StepSeed", "office", "count", [1, 1_000_000], "Which of many such layouts?", { whole: true }),
  backsight: number("Backsight", "visit", "length", READING, "What does the rod show on the benchmark?"),
  backsightMoved: number(
    "BacksightMoved",
    "visit",
    "length",
    READING,
    "What does the rod show on the benchmark after the instrument was moved?",
    { optional: true },
  ),
  gradeTolerance: number(
    "GradeTolerance",
    "book",
    "size",
    { US: [0.05, 6], SI: [1, 150] },
    "As near as what counts as on grade?",
  ),
  boxHeight: number(
    "BoxHeight",
    "book",
    "size",
    { US: [0, 60], SI: [0, 1500] },
    "How far above its foot is the lip of the spillway box?",
  ),
  ownPoints: table({
    sheet: "Levels",
    knower: "visit",
    name: "SetoutOwn",
    question: "Which points of your own are set out?",
    rows: 3,
    columns: {
      name: texts(1, "What is the point called?"),
      level: numbers(2, "length", [-2000, 30000], "What level should it have?"),
    },
  }),
  readings: table({
    sheet: "Levels",
    knower: "visit",
    name: "SetoutReadings",
    question: "What did the rod show on the points?",
    rows: 21,
    columns: {
      reading: numbers(1, "length", READING, "What did the rod show?"),
      after: numbers(2, "length", READING, "What did it show after the instrument was moved?"),
    },
  }),
  stakeReadings: table({
    sheet: "Levels",
    knower: "visit",
    name: "StakeReadings",
    question: "What did the rod show on the dug bed?",
    rows: 13,
    columns: {
      reading: numbers(1, "length", READING, "What did the rod show?"),
      after: numbers(2, "length", READING, "What did it show after the instrument was moved?"),
    },
  }),
} as const;
