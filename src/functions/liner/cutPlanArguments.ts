import { PLAN_RANGE } from "../../calc/liner/cutplan/check";
import { PRICE_BASES, type Piece, type PriceBasis, type Roll } from "../../calc/liner/cutplan/request";
import { toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import { isBlank } from "../contract/raw";
import { choice, number, quantity, text } from "../contract/scalars";
import { table } from "../contract/tables";
import { SIDE } from "./arguments";

/** A piece as a row asks for it, with the number of that row in the range. */
export interface CutRow extends Piece {
  readonly count: number;
  readonly row: number;
}

/** A roll with the number of its row in the range, by which the plan names it. */
export interface RollRow extends Roll {
  readonly row: number;
}

const { mostPieces, mostRolls, price } = PLAN_RANGE;

/** Some hosts pass a blank cell of a range as 0, which is no word. */
export function zeroIsBlank<T>(argument: Argument<T>): Argument<T> {
  return { ...argument, blank: (raw) => isBlank(raw) || raw === 0 };
}

const cutRows = table(
  "Pieces: name, length, width, count",
  {
    name: optional(zeroIsBlank(text("Piece", { longest: 40 })), "its row"),
    length: quantity("length", "Length", SIDE),
    width: quantity("length", "Width", SIDE),
    count: optional(number("How many", { above: 0, max: mostPieces }, { whole: true }), "1", 1),
  },
  { mostRows: 1000 },
);

export const cuts: Argument<CutRow[]> = {
  ...cutRows,
  read: (raw, label, system) =>
    cutRows.read(raw, label, system).map(({ name, length, width, count, row }) => ({
      name: name ?? `Piece ${row}`,
      length,
      width,
      count,
      row,
    })),
};

const rollRows = table(
  "Rolls: width, price, price per length, area or roll, longest length",
  {
    width: quantity("length", "Width of the roll", PLAN_RANGE.rollWidth),
    price: optional(number("Price", price), "0, on every roll: plan for the least area", 0),
    per: optional(zeroIsBlank(choice<PriceBasis>("What the price is for", PRICE_BASES)), "length", "length"),
    longest: optional(quantity("length", "Longest length", PLAN_RANGE.longest), "no limit"),
  },
  { mostRows: mostRolls },
);

/** Rolls in SI, money included: a price per ft or ft² becomes one per m or m². */
export const rolls: Argument<RollRow[]> = {
  ...rollRows,
  read: (raw, label, system) =>
    rollRows.read(raw, label, system).map(({ width, price, per, longest, row }) => ({
      width,
      price: price / priceUnit(per, system),
      per,
      longest: longest ?? Infinity,
      row,
    })),
};

/** m, m² or rolls that a price is for. */
function priceUnit(per: PriceBasis, system: UnitSystem): number {
  if (per === "roll") return 1;
  return per === "area" ? toInside("area", 1, system) : toInside("length", 1, system);
}
