import { BALANCE_RANGE } from "../../calc/earth/soilBalance";
import { EARTH_RANGE } from "../../calc/earth/earthworks";
import { readSoil, SOIL_NAMES, type Soil } from "../../calc/earth/soil";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import type { Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { number, text } from "../contract/scalars";

/** The caution that stands wherever a digging quantity is read. Source: 29 CFR 1926.651(c)(2), .652(a)(1). */
export const DIGGING_CAUTION =
  "Have buried utilities located before any digging. Slope, shore or shield the sides from 5 ft (1.5 m) deep, and shallower ones too " +
  "unless a competent person sees no danger of cave-in; set a ladder from 4 ft (1.2 m). Local rules come first.";

/** A side of a pit or the length of a berm. */
export const SIDE: Range = EARTH_RANGE.length;
/** Depth of a pit, height of a berm. */
export const DEPTH: Range = EARTH_RANGE.depth;
/** Volume of soil. */
export const EARTH: Range = BALANCE_RANGE.volume;

/** Slope of a pit's sides; upright when left out. */
export const pitSlope = optional(
  number("Slope of the sides, run per 1 of depth", { min: 0, max: 10 }),
  "0, upright",
  0,
);

/** Slope of a berm's sides: earth does not stand upright, so a blank cell that arrives as 0 is 2 to 1. */
export const bermSlope = optional(number("Slope of the sides, run per 1 of height", { above: 0, max: 10 }), "2", 2);

const written = text("Soil", { longest: 60 });

/** A soil by its name or by the user's own swell and shrink: loam when left out. */
export const soil: Argument<Soil> = optional(
  {
    ...written,
    about: 'Soil, or own figures as "swell 30% shrink 10%"',
    choices: SOIL_NAMES,
    rule: () => "name or figures",
    // Some hosts pass a blank cell as 0.
    blank: (raw) => isBlank(raw) || raw === 0,
    read: (raw, label, system) => readSoil(written.read(raw, label, system), label),
  } satisfies Argument<Soil>,
  "loam",
  "loam",
);
