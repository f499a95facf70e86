import { invalid, requireRange } from "../../problem";
import { SHEET_RANGE } from "../liner";
import type { PlanRequest } from "./request";

/** Limits of a cut plan; SI. */
export const PLAN_RANGE = {
  mostPieces: 200,
  mostRolls: 20,
  rollWidth: { min: 0.05, max: 50 },
  longest: { min: 0.1, max: 5000 },
  price: { min: 0, max: 1_000_000 },
  seamLap: { min: 0.001, max: 1 },
  seamPrice: { min: 0, max: 100_000 },
} as const;

/** Throws the sentence for whatever of a request cannot be right; names pieces and rolls by their number. */
export function checkRequest({ pieces, rolls, seamLap, seamPrice }: PlanRequest): void {
  const { mostPieces, mostRolls } = PLAN_RANGE;
  if (pieces.length === 0) throw invalid("cuts is needed: at least one piece with its length and width");
  if (pieces.length > mostPieces) throw invalid(`cuts takes at most ${mostPieces} pieces; got ${pieces.length}`);
  if (rolls.length === 0) throw invalid("rolls is needed: at least one roll with its width and price");
  if (rolls.length > mostRolls) throw invalid(`rolls takes at most ${mostRolls} rolls; got ${rolls.length}`);
  pieces.forEach(({ length, width }, index) => {
    requireRange(`cuts ${index + 1}: length`, length, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
    requireRange(`cuts ${index + 1}: width`, width, SHEET_RANGE.side.min, SHEET_RANGE.side.max, "m");
  });
  const priced = rolls.some((roll) => roll.price > 0);
  rolls.forEach(({ width, longest, price, per, row }, index) => {
    const roll = `rolls row ${row ?? index + 1}`;
    requireRange(`${roll}: width`, width, PLAN_RANGE.rollWidth.min, PLAN_RANGE.rollWidth.max, "m");
    requireRange(`${roll}: price`, price, PLAN_RANGE.price.min, PLAN_RANGE.price.max);
    if (longest !== Infinity) {
      requireRange(`${roll}: longest length`, longest, PLAN_RANGE.longest.min, PLAN_RANGE.longest.max, "m");
    } else if (per === "roll") {
      throw invalid(`${roll}: longest length is needed when the price is for a full roll: the length of that roll`);
    }
    if (priced && price === 0) {
      throw invalid(`${roll}: price is needed; give every roll its price, or none to plan for the least area`);
    }
  });
  if (seamLap !== undefined) {
    if (seamPrice !== undefined) {
      requireRange("seam price", seamPrice, PLAN_RANGE.seamPrice.min, PLAN_RANGE.seamPrice.max);
    }
    requireRange("seam", seamLap, PLAN_RANGE.seamLap.min, PLAN_RANGE.seamLap.max, "m");
  }
}
