import { COST_KIND_WORDS } from "../../calc/money/costKinds";
import { choices, numbers, table, texts, told, worked } from "./fact";

const own = { sheet: "Rates", knower: "book" } as const;
const PART = [0, 1000] as const;
const REACH = { US: [0, 60], SI: [0, 20] } as const;

/** What an hour of the crew and of its machines costs, and the price list. */
export const rates = {
  burden: table({
    ...own,
    name: "BurdenTable",
    question: "What comes on top of the wages?",
    rows: 9,
    columns: {
      line: texts(1, "What is it for?"),
      share: numbers(2, "share", [0, 1], "What share of the wage is it?"),
    },
  }),
  wages: table({
    ...own,
    name: "WageTable",
    question: "Who is on the crew, at what wage?",
    rows: 6,
    columns: {
      role: texts(1, "Who works?"),
      wage: numbers(2, "money", PART, "What wage an hour?"),
      people: numbers(5, "count", [0, 30], "How many of them are on the crew?", { whole: true }),
    },
  }),
  machines: table({
    ...own,
    name: "MachineTable",
    question: "Which machines work, and what do they cost an hour?",
    rows: 8,
    columns: {
      name: texts(1, "Which machine?"),
      own: numbers(2, "money", PART, "What does an hour of hire or ownership cost?"),
      fuel: numbers(3, "money", PART, "What does the fuel of an hour cost?"),
      upkeep: numbers(4, "money", PART, "What does the upkeep of an hour cost?"),
      share: numbers(6, "share", [0, 1], "What share of the machine hours does it work?"),
      width: numbers(7, "length", REACH, "How wide a way in does it need?"),
      lift: numbers(8, "weight", { US: [0, 40_000], SI: [0, 20_000] }, "What does it lift by its load chart?"),
      reach: numbers(9, "length", REACH, "At what reach from its middle does it lift that?"),
    },
  }),
  prices: table({
    ...own,
    name: "RateTable",
    question: "What do you pay, to whom, and how is it sold?",
    rows: 20_200,
    columns: {
      description: texts(1, "What is it?"),
      code: texts(2, "Which code is it looked up by?"),
      unit: texts(3, "In which unit is it bought?"),
      cost: worked(numbers(4, "money", [0, 1_000_000], "What does one unit cost?")),
      pack: numbers(5, "number", [0.0001, 1_000_000], "How much is sold in one piece?"),
      minimum: numbers(6, "number", [0, 1_000_000], "What is the least that is sold?"),
      waste: numbers(7, "share", [0, 2], "What share is added for waste?"),
      supplier: texts(8, "Who sells it?"),
      kind: choices(9, COST_KIND_WORDS, "Which line of the price does it count under?"),
      taxable: choices(10, ["yes", "no"], "Is sales tax owed on it?"),
      day: numbers(11, "day", [36526, 73050], "Of which day is the price?"),
      theirs: texts(12, "What does the supplier call it?"),
      came: texts(13, "Did the price come as invented?"),
      freight: numbers(14, "money", [0, 1_000_000], "What does bringing an order of it cost?"),
      mark: told(texts(15, "Is the price invented still?")),
    },
  }),
} as const;
