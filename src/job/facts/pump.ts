import { BORE_TYPE } from "../../calc/pipe/bore";
import { FRICTION_METHODS } from "../../calc/pipe/route";
import { PIPE_TYPES } from "../../calc/tables/pipes";
import { WIRES } from "../../calc/tables/wires";
import { choices, factsOf, numbers, table, texts, worked } from "./fact";

const { number, text, choice } = factsOf("Pump");
const HEAD = { US: [0, 300], SI: [0, 90] } as const;
const FLOW = { US: [0, 200_000], SI: [0, 800_000] } as const;

const typesIn = (unit: "in" | "mm"): string[] => [
  ...PIPE_TYPES.filter(({ sizedIn }) => sizedIn === unit).map(({ name }) => name),
  BORE_TYPE,
];

/** Sizes that a pump's cable does not come in: too thin for a circuit, or seldom sold. */
const NO_CABLE = new Set(["18 AWG", "16 AWG", "3 AWG", "1 AWG", "1/0 AWG", "25 mm2", "35 mm2"]);

const wiresIn = (unit: "AWG" | "mm2"): string[] =>
  WIRES.flatMap(({ name }) => (name.endsWith(unit) && !NO_CABLE.has(name) ? [name] : []));

const fitting = (table: "" | "Riser", place: number, what: string) =>
  worked(numbers(`${table}Fittings${place}`, "count", [0, 200], `How many on this pipe: ${what}?`, { whole: true }));

const pipeColumns = (table: "" | "Riser") => ({
  size: numbers(1, "size", { US: [0.5, 24], SI: [12, 630] }, "Which nominal size?"),
  length: numbers(2, "length", { US: [0, 2000], SI: [0, 600] }, "How long is it?"),
  type: choices(3, { US: typesIn("in"), SI: typesIn("mm") }, "Which type of pipe?"),
  sumOfK: worked(numbers(4, "number", [0, 1000], "What do the K of its fittings add up to?")),
  elbows: fitting(table, 1, "90 elbow"),
  sweeps: fitting(table, 2, "90 sweep"),
  halfElbows: fitting(table, 3, "45 elbow"),
  teesThrough: fitting(table, 4, "tee, straight"),
  teesBranch: fitting(table, 5, "tee, branch"),
  ballValves: fitting(table, 6, "ball valve"),
  checkValves: fitting(table, 7, "check valve"),
  unions: fitting(table, 8, "union"),
  intakes: fitting(table, 9, "intake"),
  otherK: numbers(`${table}FittingsOtherK`, "number", [0, 1000], "What K has anything else on this pipe?"),
});

const point = (place: number) => ({
  flow: numbers(2 * place + 3, "flow", FLOW, `What flow is point ${place} of the maker's curve at?`),
  head: numbers(2 * place + 4, "head", HEAD, `What head does it give there?`),
});
const [first, second, third, fourth, fifth] = [point(1), point(2), point(3), point(4), point(5)];

/** The pipe's route, the pumps on offer, and how they run. */
export const pump = {
  frictionMethod: choice("FrictionMethod", "book", FRICTION_METHODS, "By which method is friction calculated?"),
  route: table({
    sheet: "Pump",
    knower: "office",
    name: "RouteTable",
    question: "Which pipes lead from the pump to the top, in the order the water takes?",
    rows: 4,
    required: true,
    columns: pipeColumns(""),
  }),
  riser: table({
    sheet: "Pump",
    knower: "office",
    name: "RiserTable",
    question: "Which pipe does each of several pumps have for itself, up to where their flows join?",
    rows: 1,
    columns: pipeColumns("Riser"),
  }),
  pumps: table({
    sheet: "Pump",
    knower: "book",
    name: "PumpTable",
    question: "Which pumps could you buy, and what do their makers' curves say?",
    rows: 6,
    columns: {
      name: texts(1, "What is the pump called?"),
      price: numbers(2, "money", [0, 100_000], "What does one cost?"),
      watts: numbers(3, "power", [1, 20_000], "What power does it draw?"),
      shutOffHead: numbers(4, "head", { US: [0.1, 300], SI: [0.1, 90] }, "What head does it give at no flow?"),
      flow1: first.flow,
      head1: first.head,
      flow2: second.flow,
      head2: second.head,
      flow3: third.flow,
      head3: third.head,
      flow4: fourth.flow,
      head4: fourth.head,
      flow5: fifth.flow,
      head5: fifth.head,
    },
  }),
  runHours: number("RunHours", "visit", "hours", [0, 24], "How many hours a day does it run?"),
  runDays: number("RunDays", "visit", "count", [0, 366], "How many days a year?", { whole: true }),
  tariff: number("Tariff", "book", "money", [0, 100], "What does a kilowatt-hour cost, taxes included?"),
  ownYears: number("OwnYears", "book", "count", [0, 50], "Over how many years do you add up price and electricity?", {
    whole: true,
  }),
  cableLength: number(
    "CableLength",
    "visit",
    "length",
    { US: [0, 2000], SI: [0, 600] },
    "How much cable to the pump do you buy?",
    { optional: true },
  ),
  cableGauge: choice(
    "CableGauge",
    "office",
    { US: wiresIn("AWG"), SI: wiresIn("mm2") },
    "Of which size are its conductors, as the electrician says?",
    { optional: true },
  ),
  chosenPump: text("ChosenPump", "office", "Which pump do you choose?"),
  pumpCount: number("PumpCount", "office", "count", [1, 12], "How many of it, side by side?", { whole: true }),
  pumpSpeed: number("PumpSpeed", "office", "share", [0.3, 1.2], "At which share of its curve's speed?"),
} as const;
