import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { SOIL_NAMES } from "../../calc/earth/soil";
import { densityNames } from "../../calc/stone/density";
import { factsOf } from "./fact";

const { number, text, choice } = factsOf("Site");
const optional = { optional: true } as const;
const LEVEL = [-2000, 30000] as const;
/** The highest fall of a stream. */
const HIGHEST_FALL = { US: 60, SI: 18 } as const;
/** Where the fall is shot from. */
export const FALL_FROM = ["finished grade", "rim of the basin"] as const;

/** Whose job it is, what was measured on the visit, and what the site is like. */
export const site = {
  currency: text("Currency", "book", "In which money?"),
  companyName: text("CompanyName", "book", "What is your company called on the quote?"),
  companyAddress: text("CompanyAddress", "book", "Which address of yours appears on the quote?", optional),
  companyPhone: text("CompanyPhone", "book", "Which telephone number appears on the quote?", optional),
  companyEmail: text("CompanyEmail", "book", "Which e-mail address appears on the quote?", optional),
  companyLicense: text("CompanyLicense", "book", "Which license number does the law ask for on a quote?", optional),
  estimator: text("Estimator", "book", "Who makes this estimate?", optional),
  jobName: text("JobName", "visit", "What is the job called?"),
  clientName: text("ClientName", "visit", "Who is the client?"),
  siteAddress: text("SiteAddress", "visit", "Where is the work done?", optional),
  visitDate: number("VisitDate", "visit", "day", [36526, 73050], "On which day was the site measured?", optional),
  featureName: text("FeatureName", "visit", "What is the feature called?"),
  fallTyped: number(
    "FallTyped",
    "visit",
    "length",
    { US: [0.1, HIGHEST_FALL.US], SI: [0.1, HIGHEST_FALL.SI] },
    "How high does the highest lip stand over where the fall was measured from?",
  ),
  fallFrom: choice(
    "FallFrom",
    "visit",
    FALL_FROM,
    "Was the fall measured from finished grade or from the basin's rim?",
  ),
  run: number(
    "Run",
    "visit",
    "length",
    { US: [0.5, 1000], SI: [0.5, 300] },
    "How long is the stream on the level, from the highest lip to the basin?",
  ),
  dropCount: number("DropCount", "visit", "count", [1, 12], "Over how many drops does it fall?", { whole: true }),
  bedWidth: number(
    "BedWidth",
    "visit",
    "length",
    { US: [0.5, 40], SI: [0.15, 12] },
    "How wide is the bed between its banks?",
  ),
  bankHeight: number(
    "BankHeight",
    "visit",
    "length",
    { US: [0.1, 6], SI: [0.03, 2] },
    "How high do the banks stand above the bed?",
  ),
  benchmarkLevel: number("BenchmarkLevel", "visit", "length", LEVEL, "What level does the benchmark have?"),
  gradeLevel: number("GradeLevel", "visit", "length", LEVEL, "At what level is the finished grade at the basin?"),
  soil: choice("SoilKind", "visit", SOIL_NAMES, "What ground is dug?"),
  groundwaterDepth: number(
    "GroundWaterDepth",
    "visit",
    "length",
    { US: [0, 100], SI: [0, 30] },
    "How far below the finished grade does groundwater stand in the wet season?",
    optional,
  ),
  rock: choice("RockKind", "visit", densityNames("rock"), "Which rock are the boulders and lip stones?"),
  gravel: choice("GravelKind", "visit", densityNames("stone"), "Which gravel covers the bed and the basin?"),
  accessNote: text("AccessNote", "visit", "How does one get in: gates, slopes, overhead wires, hours?", optional),
  accessWidth: number(
    "AccessWidth",
    "visit",
    "length",
    { US: [1, 100], SI: [0.3, 30] },
    "How wide is the narrowest point of the way in?",
    optional,
  ),
  airTemperature: number(
    "AirTemp",
    "book",
    "temperature",
    { US: [20, 125], SI: [-5, 50] },
    "How warm is the air in a hot spell?",
  ),
  humidity: number("Humidity", "book", "share", [0, 1], "How humid is the air in a hot spell?"),
  wind: number("Wind", "book", "wind", { US: [0, 60], SI: [0, 100] }, "How strong is the wind over the water?"),
  latitude: number("Latitude", "book", "number", [-65, 65], "At which latitude is the site, in degrees?"),
} as const;

/**
 * How far levels of one job lie apart at most beyond the fall between them, in ft or m: as far as the highest stream falls.
 * Further off, one of them was mistyped or shot from another benchmark, and no earthwork comes of it.
 */
export function farthestApart(system: UnitSystem): number {
  return HIGHEST_FALL[system];
}
