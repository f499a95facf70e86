import { factsOf } from "./fact";

const { number, choice } = factsOf("Earth");
const MARGIN = { US: [0, 10], SI: [0, 3] } as const;

/** What is dug, what the berm takes, and what is hauled. */
export const earth = {
  machineWidth: number(
    "MachineWidth",
    "book",
    "length",
    { US: [1, 20], SI: [0.3, 6] },
    "How wide is the widest machine that must get in?",
    { optional: true },
  ),
  machineLift: number(
    "MachineLift",
    "book",
    "weight",
    { US: [20, 60_000], SI: [10, 27_000] },
    "What does the machine lift at full reach?",
    { optional: true },
  ),
  setReach: number(
    "SetReach",
    "visit",
    "length",
    { US: [1, 60], SI: [0.3, 20] },
    "How far from the middle of the machine is the farthest stone set?",
    { optional: true },
  ),
  pitMargin: number("PitMargin", "book", "length", MARGIN, "How much wider than the basin is the pit, on each side?"),
  beddingDepth: number(
    "BeddingDepth",
    "book",
    "size",
    { US: [0, 24], SI: [0, 600] },
    "How deep is the bedding under the basin?",
  ),
  trenchLength: number(
    "TrenchLength",
    "visit",
    "length",
    { US: [0, 3000], SI: [0, 900] },
    "How long is the trench for pipe and cable?",
  ),
  trenchWidth: number("TrenchWidth", "book", "length", MARGIN, "How wide is the trench?"),
  trenchDepth: number("TrenchDepth", "book", "length", { US: [0, 8], SI: [0, 2.4] }, "How deep is the trench?"),
  shelfDepth: number(
    "ShelfDepth",
    "book",
    "length",
    { US: [0, 6], SI: [0, 2] },
    "How deep is the bed dug below its finished level?",
  ),
  shelfMargin: number("ShelfMargin", "book", "length", MARGIN, "How much wider than the bed is it dug, on each side?"),
  bermLength: number(
    "BermLength",
    "office",
    "length",
    { US: [0, 300], SI: [0, 90] },
    "How long is the crest of the berm?",
  ),
  bermWidth: number("BermWidth", "office", "length", { US: [0, 100], SI: [0, 30] }, "How wide is its crest?"),
  bermGround: number("BermGround", "visit", "length", [-2000, 30000], "At what level is the ground it will stand on?"),
  bermSlope: number("BermSlope", "book", "factor", [0.5, 6], "How far do its sides run out for each 1 of height?"),
  bermEnds: choice("BermEnds", "visit", ["sloped", "square"], "Do its ends slope, or run into a bank or wall?"),
  ownSwell: number("OwnSwell", "book", "share", [0, 1], "By what share does your soil grow when dug, if you know?", {
    optional: true,
  }),
  ownShrink: number("OwnShrink", "book", "share", [-0.6, 0.4], "By what share does it shrink when compacted?", {
    optional: true,
  }),
  spoilTruck: number(
    "SpoilTruck",
    "book",
    "earth",
    { US: [0.5, 40], SI: [0.5, 30] },
    "What does one spoil truck take?",
  ),
} as const;
