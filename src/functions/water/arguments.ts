import { invalid, plain } from "../../calc/problem";
import { BED_RANGE, findRoughness, USUAL_BED } from "../../calc/water/bed";
import { findLipShape, LIP_RANGE, ownLip, type Lip } from "../../calc/water/lip";
import { CREST_RANGE, type SharpCrest } from "../../calc/water/sharpCrest";
import { BED_KINDS, OWN_ROUGHNESS } from "../../calc/tables/beds";
import { COEFFICIENT_FROM_US, LIP_SHAPES, OWN_COEFFICIENT } from "../../calc/tables/lips";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import { aboveZero, type Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { number, quantity, text } from "../contract/scalars";

/** Width of a lip along its edge. */
export const LIP_WIDTH: Range = LIP_RANGE.width;
/** Depth of the sheet over a lip. */
export const SHEET_DEPTH: Range = aboveZero(LIP_RANGE.depth);
/** Width of a stream's bottom. */
export const BED_WIDTH: Range = aboveZero(BED_RANGE.width);
/** Fall of a bed in percent of its length. */
export const SLOPE_PERCENT: Range = { min: 0.001, max: 100 };

export const lipWidth = quantity("size", "Width of the lip along its edge", LIP_WIDTH);

const shapeText = text("Lip shape by name, or weir coefficient C", { longest: 60 });
const shapeNames = LIP_SHAPES.map((shape) => shape.name);

/** C in the unit of the system: ft^½/s as American books print it, or m^½/s. */
const perUnit = (system: UnitSystem): number => (system === "US" ? COEFFICIENT_FROM_US : 1);
const coefficientRange = (system: UnitSystem): string =>
  `${plain(round2(OWN_COEFFICIENT.min / perUnit(system)))} to ${plain(round2(OWN_COEFFICIENT.max / perUnit(system)))} ` +
  (system === "US" ? "ft^½/s" : "m^½/s");

function round2(value: number): number {
  return Math.round(value * 100) / 100;
}

/** A lip shape by its name, or its own coefficient as a number in the unit of the system. */
export const neededLipShape: Argument<Lip> = {
  ...shapeText,
  choices: shapeNames,
  dimensioned: true,
  rule: (system) => `one of: ${shapeNames.join("; ")}; or a coefficient, ${coefficientRange(system)}`,
  // Some hosts pass a blank as 0.
  blank: (raw) => isBlank(raw) || raw === 0,
  read(raw, label, system) {
    const written = shapeText.read(raw, label, system);
    const coefficient = Number(written);
    if (Number.isNaN(coefficient)) return findLipShape(written, label);
    const inside = coefficient * perUnit(system);
    if (inside >= OWN_COEFFICIENT.min * (1 - 1e-9) && inside <= OWN_COEFFICIENT.max * (1 + 1e-9)) {
      return ownLip(Math.min(Math.max(inside, OWN_COEFFICIENT.min), OWN_COEFFICIENT.max));
    }
    throw invalid(`${label} as a coefficient must be ${coefficientRange(system)}; got ${written}`);
  },
};

/** The lip shape: a flat stone when left out. */
export const lipShape: Argument<Lip> = optional(neededLipShape, '"broad"', "broad");

const THIN = LIP_SHAPES.filter(({ thin }) => thin).map(({ name }) => `"${name}"`);

/** What is asked of a thin crest in its pool; both are left out for every other lip. */
export const crestArguments = {
  crest_height: optional(
    quantity("size", "Height of a sharp lip above the bottom of its pool", CREST_RANGE.height),
    "not known: Francis",
  ),
  pool_width: optional(
    quantity("size", "Width of the pool before a sharp lip that is narrower", CREST_RANGE.poolWidth),
    "as wide as the lip",
  ),
};

/** The thin crest that the arguments describe; undefined where its height is not given. */
export function sharpCrest(
  lip: Lip,
  width: number,
  crestHeight: number | undefined,
  poolWidth: number | undefined,
): SharpCrest | undefined {
  if (crestHeight === undefined) {
    if (poolWidth === undefined) return undefined;
    throw invalid("crest height is needed where a pool width is given: the height of the lip above the pool's bottom");
  }
  if (!lip.thin) {
    throw invalid(`crest height counts for lip shape ${THIN.join(" or ")} only; leave it out, or choose one of these`);
  }
  if (lip.endContractions > 0 && poolWidth === undefined) {
    throw invalid("pool width is needed with a crest height for a narrowed lip: the width of the pool before it");
  }
  return { width, crestHeight, poolWidth };
}

const roughnessText = text("Bed kind by name, or Manning's n", { longest: 60 });
const bedNames = BED_KINDS.map((kind) => kind.name);

/** A bed kind by its name, or Manning's n as a number. */
const neededRoughness: Argument<number> = {
  ...roughnessText,
  choices: bedNames,
  rule: () => `one of: ${bedNames.join("; ")}; or Manning's n from ${OWN_ROUGHNESS.min} to ${OWN_ROUGHNESS.max}`,
  // Some hosts pass a blank cell of a range as 0.
  blank: (raw) => isBlank(raw) || raw === 0,
  read(raw, label, system) {
    const written = roughnessText.read(raw, label, system);
    const n = Number(written);
    if (Number.isNaN(n)) return findRoughness(written, label);
    if (n >= OWN_ROUGHNESS.min && n <= OWN_ROUGHNESS.max) return n;
    throw invalid(`${label} as Manning's n must be ${OWN_ROUGHNESS.min} to ${OWN_ROUGHNESS.max}; got ${written}`);
  },
};

/** The roughness of a bed: cobbles and boulders when left out. */
export const roughness: Argument<number> = optional(neededRoughness, `"${USUAL_BED}"`, USUAL_BED);

/** How far a side goes out for each 1 it goes up. */
export const sideSlope: Argument<number> = optional(
  number("Side slope: out per 1 up", { min: 0, max: 10 }),
  "0, upright",
  0,
);

/** What BEDDEPTH and BEDSPEED are asked. */
export const bedArguments = {
  bed_width: quantity("length", "Width of the bottom", BED_WIDTH),
  slope_percent: number("Fall in percent of the length", SLOPE_PERCENT),
  roughness,
  side_slope: sideSlope,
};

/** How far to trust an even flow over stones. */
export const BED_LIMITS =
  "Even flow. Tables of n hold for water much deeper than its stones; in a cascade n is nearer 0.06 to 0.15, so expect " +
  "1.1 to 1.9 times the depth and that much less speed. Over a Froude number of 1 (steep, smooth beds) the water " +
  "shoots and jumps, and no even flow settles.";

/** How far to trust a weir equation on a cascade. */
export const LIP_LIMITS =
  "Weir standards begin at a sheet of 0.2 ft (60 mm) and end at a third of the lip's width. Cascade sheets of 0.5 to 2 in " +
  "(12 to 50 mm) lie below that: expect ±10 to 20% (common practice, no source), more where the lip is rough or not level.";
