import { toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Company, PastJob, Pricing } from "../types";

const invented = { invented: true } as const;

const TERMS = [
  "Changes to the work are priced and agreed in writing before they are made.",
  "Payments are due within 14 days of each stage.",
  "Defects in our work found within a year are repaired free; pump and lights carry makers' warranties.",
];

const SCOPE = [
  "Lay out the stream with you on site before digging starts.",
  "Start the pump, set the water level with you, and show you what to clean and when.",
];

const EXCLUSIONS = [
  "Rock, tree roots, old foundations or groundwater that cannot be seen before digging.",
  "Power to the pump and its protection: a licensed electrician's work.",
  "Permits.",
  "Filling water, and water lost to evaporation and splash.",
];

/** A company that does not exist. */
export function shippedCompany(system: UnitSystem): Company {
  const words = { terms: TERMS, scope: SCOPE, exclusions: EXCLUSIONS, ...invented };
  return system === "US"
    ? {
        name: "Brindle & Moss Streamworks (invented demo)",
        address: "3 Sample Yard, Demo Township",
        phone: "555-0142 (demo)",
        email: "office@brindlemoss.example",
        license: "DEMO-0000 (invented)",
        estimator: "M. Fennimore (invented)",
        currency: "USD",
        ...words,
      }
    : {
        name: "Schachtelhalm Wasserbau (invented demo)",
        address: "Musterhof 3, 00000 Demostadt",
        phone: "+00 000 0142 (demo)",
        email: "office@schachtelhalm.example",
        license: "DEMO-0000 (invented)",
        estimator: "J. Torfgren (invented)",
        currency: "EUR",
        ...words,
      };
}

/** Markups of cost kinds, overhead and contingency, in the order of the price's rows; all of our own invention. */
const MARKUPS = [0.32, 0.42, 0.25, 0.15, 0.15, 0.1, 0.12, 0.1];

export function shippedPricing(system: UnitSystem) {
  const us = system === "US";
  return {
    markups: MARKUPS,
    wantedMargin: 0.3,
    overheadBy: "share of cost" as const,
    overheadShare: 0.12,
    overheadPerHour: us ? 13.75 : 11.5,
    contingencyShare: 0.05,
    taxName: us ? "Sales tax" : "VAT",
    taxBase: us ? "materials with markup" : "whole price",
    taxRate: us ? 0.065 : 0.2,
    roundTo: 10,
    validDays: 30,
    tariff: us ? 0.174 : 0.342,
    ownYears: 8,
    stages: [
      { name: "On signing", share: 0.3 },
      { name: "Liner in and watertight", share: 0.35 },
      { name: "Stone set, water running", share: 0.25 },
      { name: "Walked through and handed over", share: 0.1 },
    ],
    ...invented,
  } satisfies Pricing;
}

/** Name, day, run and fall in ft or m, price, cost as estimated and as it came, hours as estimated and as they came. */
type PastRow = readonly [string, string, number, number, number, number, number, number, number];

const PAST: Readonly<Record<UnitSystem, readonly PastRow[]>> = {
  US: [
    ["Fern Gully (invented)", "2025-06-13", 22, 3, 12480, 8140, 8395, 96, 104],
    ["Old Orchard steps (invented)", "2025-09-26", 34, 5.5, 19760, 13020, 12745, 151, 146],
  ],
  SI: [
    ["Farnschlucht (invented)", "2025-06-13", 6.8, 0.9, 11350, 7420, 7655, 96, 104],
    ["Alter Obstgarten (invented)", "2025-09-26", 10.4, 1.7, 17980, 11830, 11580, 151, 146],
  ],
};

export function shippedPastJobs(system: UnitSystem): PastJob[] {
  return PAST[system].map(([name, day, run, fall, price, estimatedCost, cost, estimatedHours, hours]) => ({
    name,
    day,
    run: toInside("length", run, system),
    fall: toInside("length", fall, system),
    price,
    estimatedCost,
    cost,
    estimatedHours,
    hours,
    ...invented,
  }));
}
