import { BOULDER_RANGE, BOULDER_SHAPE_NAMES, USUAL_SHAPE, WEIGHT_ERROR } from "../../calc/stone/boulder";
import { BULK_RANGE } from "../../calc/stone/bulk";
import { densityNames, readDensityRange, type Density, type DensityKind } from "../../calc/stone/density";
import { MIX_RANGE } from "../../calc/stone/mix";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import { aboveZero, type Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { choice, share, text } from "../contract/scalars";

/** The caution that stands wherever a boulder's weight is read. */
export const LIFTING_CAUTION =
  "Heavy stone crushes. Over the hand-lift limit use a machine and rigging rated for the most the stone can weigh, and keep people out from under and downhill of the load. " +
  `The weight is an estimate, good to ${WEIGHT_ERROR}.`;

/** Area to cover with gravel. */
export const AREA: Range = BULK_RANGE.area;
/** Depth of a layer, and how far stones reach back. */
export const THICKNESS: Range = BULK_RANGE.depth;
/** A side of one stone. */
export const STONE_SIDE: Range = aboveZero(BOULDER_RANGE.size);
/** Tons of stone. */
export const TONS: Range = MIX_RANGE.total;

const written = text("Name or figure", { longest: 60 });

/** A material by its name, or the user's own figure: a density with its unit, or a number in the default unit. */
function densityRange(kind: DensityKind, about: string): Argument<Density> {
  return {
    ...written,
    about,
    dimensioned: true,
    measure: "density",
    choices: densityNames(kind),
    rule: (system) => (system === "US" ? "name, or lb/ft³" : "name, or t/m³"),
    // No stone weighs nothing: some hosts pass a blank cell as 0.
    blank: (raw) => isBlank(raw) || raw === 0,
    read: (raw, label, system) => readDensityRange(kind, written.read(raw, label, system), system, label),
  };
}

/** Its usual figure alone. */
function density(kind: DensityKind, about: string): Argument<number> {
  const range = densityRange(kind, about);
  return { ...range, read: (raw, label, system) => range.read(raw, label, system).usual };
}

/** The loose stone: washed gravel when left out. */
export const stone = optional(
  density("stone", 'Loose stone or its own figure, "1.35 ton/yd3"'),
  "washed gravel",
  "washed gravel",
);

const ABOUT_ROCK = 'Rock or its own figure, "165 lb/ft3"';
/** The solid rock: fieldstone when left out. */
export const rock = optional(density("rock", ABOUT_ROCK), "fieldstone", "fieldstone");
/** The same, with the least and the most that rock weighs. */
export const rockRange = optional(densityRange("rock", ABOUT_ROCK), "fieldstone", "fieldstone");

/** How much of its box a stone fills. */
export const shape = optional(choice("Shape", BOULDER_SHAPE_NAMES), USUAL_SHAPE, USUAL_SHAPE);

/** What is added to the order for loss, spill and settling. */
export const waste = optional(share("Added for waste"), "0", 0);
