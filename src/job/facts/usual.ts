import { shippedPricing } from "../../book/shipped/office";
import type { Pricing } from "../../book/types";
import { GRAVEL_VOIDS } from "../../calc/tables/basinParts";
import { USUAL_SHAPE } from "../../calc/stone/boulder";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Assumed, Assumption } from "./assumption";
import { FACTS, type FactKey } from "./index";
import { inSystem, toSi, type Both } from "./units";

/** What a fact is taken for until somebody says otherwise: in the unit that the system types it in. */
export interface Usual {
  readonly value: Both<number | string>;
  readonly reason: Both<string>;
  /** Money, rate, markup or term that was made up for this tool: nothing is signed on it. */
  readonly invented?: true;
}

const RULE = "rule of thumb, no source";
const assumed = (value: Usual["value"], reason: Usual["reason"] = RULE): Usual => ({ value, reason });
const invented = (value: Usual["value"], reason: Usual["reason"] = "made up for this tool"): Usual => ({
  value,
  reason,
  invented: true,
});

const PRICING = { US: shippedPricing("US"), SI: shippedPricing("SI") } as const;
type Priced = Exclude<keyof Pricing & FactKey, "markups" | "stages">;
/** As the book that ships prices its jobs. */
const priced = (key: Priced, reason?: string): Usual => invented({ US: PRICING.US[key], SI: PRICING.SI[key] }, reason);

/** Every fact with a usual value, once, whether a sheet shows it or a job is calculated from it. */
export const USUAL = {
  currency: assumed(
    { US: "$", SI: "€" },
    {
      US: "$, the most common in US units",
      SI: "€, the most common in metric units",
    },
  ),
  fallFrom: assumed("finished grade", "most often shot from there"),
  benchmarkLevel: assumed({ US: 100, SI: 50 }, "any round number will do"),
  soil: assumed("loam", "the middle of the soils listed"),
  rock: assumed({ US: "granite", SI: "basalt" }, "common in the yards, no source"),
  gravel: assumed("washed gravel", "common in the yards, no source"),
  airTemperature: assumed({ US: 86, SI: 29 }, "a hot spell, no source"),
  humidity: assumed({ US: 0.45, SI: 0.5 }, "a hot spell, no source"),
  wind: assumed({ US: 6, SI: 9 }, "a light breeze"),
  latitude: assumed({ US: 39, SI: 50 }, { US: "middle of the United States", SI: "middle of Europe" }),

  shotTool: assumed("laser", "what most crews carry"),
  shotStart: assumed("benchmark", "the run that can be closed"),
  shotLimit: assumed("construction", "0.1 ft √mile, rule of thumb"),
  topsoilDepth: assumed({ US: 4, SI: 100 }, "what a lawn stands on, no source"),
  cutSlope: assumed(1, "stiff soil for as long as a job takes, no source"),
  bankSlope: assumed(0.5, "a dug bank leaning back, no source"),
  volumeMethod: assumed("prismoidal", "exact for straight edges"),

  lipShape: assumed("broad", "a flat stone or box lip"),
  spillBoxes: assumed(1, "one box spreads the water"),
  boxWidth: assumed({ US: 28, SI: 700 }, "a middle width: take one as wide as your lip"),
  frictionMethod: assumed(
    { US: "Hazen-Williams", SI: "Darcy-Weisbach" },
    { US: "the trade's usual one", SI: "the sounder one" },
  ),
  ownYears: assumed(8),
  pumpCount: assumed(1, "one pump"),
  pumpSpeed: assumed(1, "full speed"),

  basinSideSlope: assumed(0, "upright walls"),
  rimBelowGrade: assumed({ US: 3, SI: 75 }, "gravel hides the rim"),
  gravelVoids: assumed(GRAVEL_VOIDS, "washed gravel has 35 to 45%"),
  checkValve: assumed("no", "pipes that stay full freeze"),
  lowWaterDepth: assumed({ US: 0.5, SI: 0.15 }),
  splashShare: assumed(0.5, "rule of thumb: often more than evaporation"),
  reserveDays: assumed(7, "a week away"),

  linerOverlap: assumed({ US: 1, SI: 0.3 }),
  slackPerDrop: assumed({ US: 0.25, SI: 0.08 }),
  cutRounding: assumed({ US: 0.5, SI: 0.1 }, "what a tape on site cuts to"),
  linerThickness: assumed({ US: 45, SI: 1.15 }, "common practice for EPDM, no source"),
  linerTurn: assumed("yes", "rubber has no grain"),
  fabricUnder: assumed(1, "one layer under the liner"),
  fabricOver: assumed(1, "one layer under the stone"),
  fabricRollWidth: assumed({ US: 6, SI: 2 }),
  fabricLap: assumed({ US: 0.5, SI: 0.15 }),
  fabricMass: assumed({ US: 8, SI: 270 }),

  stoneWaste: assumed(0.08),
  dropReach: assumed({ US: 14, SI: 350 }),
  solidShare: assumed(0.65, "loosely laid, no source"),
  bankReach: assumed({ US: 10, SI: 250 }),
  lipStonesPerDrop: assumed(1, "one in each drop"),
  lipStoneShape: assumed("box", "sawn or split flat stone"),
  handLimit: assumed({ US: 50, SI: 23 }, { US: "just under NIOSH's 51 lb", SI: "NIOSH's 23 kg" }),
  boulderShape: assumed(USUAL_SHAPE, "half way between round and box"),
  bedGravelDepth: assumed({ US: 2.5, SI: 60 }),
  coverDepth: assumed({ US: 3, SI: 75 }),
  basinStone: assumed("river stone"),
  bagWeight: assumed({ US: 50, SI: 25 }, "as bags are sold"),
  palletLoad: assumed({ US: 1.5, SI: 1 }),
  truckPayload: assumed({ US: 14, SI: 9 }, "a tandem or three-axle truck, no source"),

  pitMargin: assumed(0, "the liner lies on the cut wall"),
  beddingDepth: assumed({ US: 2, SI: 50 }),
  trenchWidth: assumed({ US: 0.75, SI: 0.25 }, "one bucket wide"),
  trenchDepth: assumed({ US: 1.5, SI: 0.45 }),
  shelfDepth: assumed({ US: 0.5, SI: 0.15 }),
  shelfMargin: assumed({ US: 1, SI: 0.3 }),
  bermSlope: assumed(2, "loose earth needs 1.5 and more"),
  bermEnds: assumed("sloped", "it stands free"),
  spoilTruck: assumed({ US: 10, SI: 6 }),

  unevenness: assumed(0.35, "looks natural: your taste"),
  stepSeed: assumed(7, "any number will do"),
  backsight: assumed({ US: 4.5, SI: 1.4 }, "a level at eye height: read your own"),
  gradeTolerance: assumed({ US: 0.25, SI: 6 }),
  boxHeight: assumed({ US: 14, SI: 350 }),

  dayHours: invented({ US: 8.5, SI: 8 }),
  difficulty: invented({ US: 1.15, SI: 1.1 }),
  wantedMargin: priced("wantedMargin"),
  overheadBy: priced("overheadBy"),
  overheadShare: priced("overheadShare"),
  overheadPerHour: priced("overheadPerHour"),
  contingencyShare: priced("contingencyShare"),
  taxBase: priced("taxBase", "rules differ: ask your accountant"),
  taxRate: priced("taxRate", "rates differ: ask your accountant"),
  roundTo: priced("roundTo"),
  chosenOption: assumed("A", "the job as designed"),
  confidence: assumed(0.8, "four times in five"),
  costCorrelation: assumed(0.3),
  validDays: priced("validDays"),
} as const satisfies Partial<Record<FactKey, Usual>>;

/** Tables that the tool ships with rows of its own in them, and how far to trust those. */
export const SHIPPED_TABLES = {
  boulderSizes: { state: "assumed", reason: RULE },
  odds: { state: "assumed", reason: RULE },
  options: { state: "assumed", reason: "the job as designed" },
  tasks: { state: "invented", reason: "production rates made up for this tool" },
  sizeHours: { state: "invented", reason: "made up for this tool" },
  burden: { state: "invented", reason: "made up for this tool" },
  wages: { state: "invented", reason: "made up for this tool" },
  machines: { state: "invented", reason: "made up for this tool" },
  prices: { state: "invented", reason: "prices made up for this tool" },
  markups: { state: "invented", reason: "made up for this tool" },
  stages: { state: "invented", reason: "terms made up for this tool" },
} as const satisfies Partial<Record<FactKey, { readonly state: "assumed" | "invented"; readonly reason: string }>>;

/** What a job of a system is taken for while nobody says more: the usual values, in SI. */
export function usualOf(system: UnitSystem): Assumed {
  const entries = Object.entries(USUAL).map(([key, usual]): [string, Assumption] => [key, assumptionOf(key, usual)]);
  return Object.fromEntries(entries);

  function assumptionOf(key: string, { value, reason, invented }: Usual): Assumption {
    const fact = FACTS[key as FactKey];
    const typed = inSystem(value, system);
    return {
      value: fact.type === "number" && typeof typed === "number" ? toSi(fact.kind, typed, system) : typed,
      reason: inSystem(reason, system),
      ...(invented ? { invented } : {}),
    };
  }
}
