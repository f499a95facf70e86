import { toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { PLAN_RANGE } from "../../calc/liner/cutplan/check";
import type { Piece, PlanRequest } from "../../calc/liner/cutplan/request";
import type { Values } from "../contract/argument";
import { inWords, type Argument } from "../contract/argument";
import { optional, unitsArgument } from "../contract/optional";
import { currency, digitsOf } from "../money/arguments";
import { flag, number, quantity, text } from "../contract/scalars";
import { cuts, rolls, zeroIsBlank } from "./cutPlanArguments";

/** Letters of a kept plan: two hundred pieces with all their brackets take two thousand. */
const LONGEST_KEPT = 5000;

/** The arguments of CUTPLAN. */
export const CUTPLAN_ARGUMENTS = {
  cuts,
  rolls,
  turn: optional(flag("Whether pieces may be turned across the roll"), "TRUE", true),
  seam: optional(quantity("size", "Lap of a seam; blank: no seams", PLAN_RANGE.seamLap), "no piece is seamed"),
  seam_price: optional(
    number("Price of a ft (m) of seam, tape and work", PLAN_RANGE.seamPrice),
    "seams count for nothing when plans are compared",
  ),
  kept_plan: optional(
    zeroIsBlank(text("A plan that a longer search found, as the pane wrote it", { longest: LONGEST_KEPT })),
    "none",
  ),
  currency,
};

/** What CUTPLAN's arguments ask for, in SI. */
export function requestOf(
  { cuts, rolls, turn, seam, seam_price, kept_plan, currency: said }: Values<typeof CUTPLAN_ARGUMENTS>,
  system: UnitSystem,
): PlanRequest {
  return {
    pieces: cuts.flatMap(({ count, ...piece }): Piece[] => Array.from({ length: count }, () => piece)),
    rolls,
    turn,
    ...(seam === undefined ? {} : { seamLap: seam }),
    ...(seam_price === undefined ? {} : { seamPrice: seam_price / toInside("length", 1, system) }),
    ...(kept_plan === undefined ? {} : { kept: kept_plan }),
    digits: digitsOf(said),
  };
}

/** Reads the values of a call of CUTPLAN, units last, as the function itself does. */
export function readRequest(raw: readonly unknown[]): PlanRequest {
  const readers = Object.entries<Argument<unknown>>(CUTPLAN_ARGUMENTS);
  const system = unitsArgument.read(raw[readers.length], "units", "US") as UnitSystem;
  const values = Object.fromEntries(
    readers.map(([name, argument], index) => [name, argument.read(raw[index], inWords(name), system)]),
  );
  return requestOf(values as Values<typeof CUTPLAN_ARGUMENTS>, system);
}
