import type fc from "fast-check";
import type { UnitSystem } from "../../../src/calc/quantity/unitSystem";
import { COST_KIND_WORDS, TAX_BASES } from "../../../src/calc/money/costKinds";
import type { SomeFacts } from "../../../src/workbook/jobCells/typeJob";
import { between, mostly, oneOf, record, rows, seldom, some, whole } from "./arbitrary";

type Facts = fc.Arbitrary<SomeFacts>;

/** To the cent, or a little below it. */
const money = (least: number, most: number): fc.Arbitrary<number> =>
  between(least, most).map((amount) => Math.round(amount * 1000) / 1000);

const tasks = rows(
  record<NonNullable<SomeFacts["tasks"]>[number]>({
    name: oneOf("A task"),
    quantity: seldom(between(0, 50)),
    unit: seldom(oneOf("each")),
    hours: mostly(between(0, 3), 8),
    machineHours: mostly(between(0, 1), 8),
  }),
  0,
  15,
);

export const labor: Facts = some({
  dayHours: mostly(between(6, 10)),
  difficulty: mostly(between(0.8, 2)),
  laborRateTyped: seldom(money(20, 90)),
  machineRateTyped: seldom(money(20, 150)),
  tasks,
  sizeHours: rows(
    record<NonNullable<SomeFacts["sizeHours"]>[number]>({
      pipe: mostly(oneOf(0.06, 0.08, 0.11, 0.3), 8),
      pipeTimes: mostly(between(0.3, 3), 8),
      stone: mostly(between(20, 900), 8),
      stoneTimes: mostly(between(0.3, 4), 8),
      boulder: mostly(between(2, 600), 8),
      boulderTimes: mostly(between(0.3, 4), 8),
    }),
    0,
    6,
  ),
  burden: rows(record({ line: seldom(oneOf("Insurance")), share: mostly(between(0, 0.2), 8) }), 0, 9),
  wages: rows(
    record({ role: oneOf("Somebody"), wage: mostly(money(14, 48), 8), people: mostly(whole(0, 3), 8) }),
    0,
    6,
  ),
  machines: rows(
    record({
      name: oneOf("Something"),
      own: mostly(money(5, 60), 8),
      fuel: mostly(money(0, 12), 8),
      upkeep: mostly(money(0, 9), 8),
      share: mostly(between(0, 1), 8),
      width: mostly(between(0.8, 3), 8),
      lift: mostly(between(50, 900), 8),
      reach: mostly(between(1, 5), 8),
    }),
    0,
    8,
  ),
});

/** Codes of the design, of nothing, and none. */
const CODES = ["GRAVEL", "boulder", "LINER", "PUMP", "FIT-TEE", "NO-SUCH"] as const;

export const takeoff = (system: UnitSystem): Facts =>
  some({
    ownLines: rows(
      record<NonNullable<SomeFacts["ownLines"]>[number]>({
        description: seldom(oneOf("A lamp")),
        code: seldom(oneOf(...CODES), 2),
        unit: seldom(oneOf("each", "ft")),
        need: mostly(between(0, 40), 5),
        waste: seldom(between(0, 0.3)),
        minimum: seldom(between(0, 10)),
        pack: seldom(oneOf(0.5, 1, 5, 12)),
        price: seldom(money(0, 120)),
        kind: seldom(oneOf(...COST_KIND_WORDS[system])),
        supplier: seldom(oneOf("Somebody (invented)")),
        taxable: seldom(oneOf("yes", "no")),
      }),
      0,
      8,
    ),
    orders: rows(
      record({
        order: oneOf("T-1"),
        item: oneOf("GRAVEL", "BOULDER", "PUMP", "NO-SUCH"),
        quantity: mostly(between(-3, 20), 8),
        unit: oneOf("ton", "t", "each"),
        price: mostly(money(1, 200), 8),
      }),
      0,
      4,
    ),
  });

const stages = oneOf([0.3, 0.35, 0.25, 0.1], [1], [0.333, 0.333, 0.334], [0.5, 0.4], [0.25, undefined, 0.75], []).map(
  (shares) => shares.map((share) => (share === undefined ? {} : { name: "Then", share })),
);

export const price = (system: UnitSystem): Facts =>
  some({
    currency: seldom(oneOf("JPY", "₩", "KWD", "UDS"), 3),
    wantedMargin: mostly(between(0, 0.6)),
    ownPrice: seldom(money(50, 40_000), 3),
    ownMargin: seldom(between(0, 0.9), 3),
    overheadBy: mostly(oneOf("share of cost", "crew hours")),
    overheadShare: mostly(between(0, 0.4)),
    overheadPerHour: mostly(money(0, 30)),
    contingencyShare: mostly(between(0, 0.2)),
    taxBase: mostly(oneOf(...TAX_BASES)),
    taxRate: mostly(between(0, 0.25)),
    roundTo: mostly(oneOf(0, 0, 1, 5, 10, 50, 0.05)),
    chosenOption: mostly(oneOf("A", "A", "A", "B", "C")),
    options: oneOf<SomeFacts["options"]>(
      [{ name: "As designed" }],
      [{ name: "As designed" }, { name: "With ledges" }, { name: "With lamps" }],
      [{ name: "As designed" }, {}, { name: "With lamps" }],
      [],
    ),
    optionChanges: rows(
      record({
        what: oneOf("A change"),
        kind: mostly(oneOf(...COST_KIND_WORDS[system]), 8),
        B: seldom(money(-400, 800), 2),
        C: seldom(money(-400, 800), 2),
      }),
      0,
      8,
    ),
    optionFacts: rows(
      record({
        factB: oneOf("BedWidth", "Run"),
        valueB: seldom(oneOf("1.5", "2"), 2),
        factC: oneOf("GravelVoids"),
        valueC: seldom(oneOf("0.4", "0.45"), 2),
      }),
      0,
      3,
    ),
    markups: rows(record({ markup: mostly(between(0, 0.8)) }), 0, 8),
    costCorrelation: mostly(between(0, 1)),
    confidence: mostly(between(0.5, 0.99)),
    odds: rows(record({ below: mostly(between(0, 0.3)), above: mostly(between(0, 0.5)) }), 0, 6),
    stages,
  });
