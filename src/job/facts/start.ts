import { SOIL_NAMES } from "../../calc/earth/soil";
import { factsOf } from "./fact";

const { number, choice } = factsOf("Start");
const optional = { optional: true } as const;

/** How the water should look and sound. */
export const CHARACTERS = ["trickle", "clear sheet", "loud"] as const;

/** The six questions that a draft is made from; each may stay blank. */
export const start = {
  runAsked: number(
    "RunAsked",
    "visit",
    "length",
    { US: [0.5, 1000], SI: [0.5, 300] },
    "How long is the stream, taped on the level from the top lip to the basin?",
    optional,
  ),
  fallAsked: number(
    "FallAsked",
    "visit",
    "length",
    { US: [0.1, 60], SI: [0.1, 18] },
    "How high does the top lip stand over the finished grade at the basin?",
    optional,
  ),
  lipAsked: number(
    "LipAsked",
    "visit",
    "size",
    { US: [1, 480], SI: [25, 12_000] },
    "How wide is the top lip, along its edge?",
    optional,
  ),
  waterCharacter: choice(
    "WaterCharacter",
    "visit",
    CHARACTERS,
    "Should the water trickle, fall as a clear sheet, or be loud?",
    optional,
  ),
  soilAsked: choice("SoilAsked", "visit", SOIL_NAMES, "What ground will be dug?", optional),
  wayInAsked: number(
    "WayInAsked",
    "visit",
    "length",
    { US: [1, 100], SI: [0.3, 30] },
    "How wide is the narrowest gate or passage on the way in?",
    optional,
  ),
} as const;
