import { factsOf, numbers, table, texts, worked } from "./fact";

const { number } = factsOf("Hours");
const HOURS = [0, 1000] as const;
const TIMES = [0.05, 50] as const;

/** The crew's day, and its production rates. */
export const labor = {
  dayHours: number("DayHours", "book", "hours", [1, 14], "How many hours does the crew work a day?"),
  difficulty: number("Difficulty", "visit", "factor", [0.5, 4], "How much harder is this site than a plain one?"),
  laborRateTyped: number(
    "LaborRateTyped",
    "book",
    "money",
    [0, 2000],
    "What does an hour of one person cost, if not as the wages say?",
    { optional: true },
  ),
  machineRateTyped: number(
    "MachineRateTyped",
    "book",
    "money",
    [0, 2000],
    "What does a machine hour cost, if not as the machines say?",
    { optional: true },
  ),
  tasks: table({
    sheet: "Hours",
    knower: "book",
    name: "LaborTable",
    question: "What is done, and how long does one unit of it take?",
    rows: 18,
    columns: {
      name: texts(1, "What is done?"),
      quantity: worked(numbers(2, "number", [0, 1_000_000], "How much of it is there?")),
      unit: texts(3, "In which unit?"),
      hours: numbers(4, "factor", HOURS, "How many hours of one person does one unit take?"),
      machineHours: numbers(5, "factor", HOURS, "How many machine hours does one unit take?"),
    },
  }),
  sizeHours: table({
    sheet: "Hours",
    knower: "book",
    name: "SizeHours",
    question: "How many times the usual hours do pipes, lip stones, tubs and boulders of each size take?",
    rows: 6,
    columns: {
      pipe: numbers(1, "size", { US: [0.25, 48], SI: [6, 1200] }, "Pipe up to which nominal size?"),
      pipeTimes: numbers(2, "factor", TIMES, "How many times the usual hours does it take?"),
      stone: numbers(3, "weight", { US: [1, 40_000], SI: [1, 20_000] }, "Lip stones up to which weight?"),
      stoneTimes: numbers(4, "factor", TIMES, "How many times the usual hours do they take?"),
      tub: numbers(5, "water", { US: [5, 25_000], SI: [20, 100_000] }, "Tubs up to which volume?"),
      tubTimes: numbers(6, "factor", TIMES, "How many times the usual hours do they take?"),
      tubMachineTimes: numbers(7, "factor", [0, 50], "How many times the usual machine hours; 0 if they are carried?"),
      boulder: numbers(8, "weight", { US: [1, 40_000], SI: [1, 20_000] }, "Boulders up to which weight of one?"),
      boulderTimes: numbers(9, "factor", TIMES, "How many times the usual hours does a load of them take?"),
    },
  }),
} as const;
