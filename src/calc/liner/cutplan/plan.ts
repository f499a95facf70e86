import { fromCents, lineCents, toCents } from "../../money/cents";
import { invalid, plain } from "../../problem";
import { checkRequest, PLAN_RANGE } from "./check";
import { lowerBound } from "./bound";
import { quickPlan } from "./exact";
import { readKept, regroup, writeKept } from "./kept";
import { layOut, roundDown } from "./layOut";
import { makeOffers } from "./purchase";
import type { Piece, Plan, PlanRequest, Roll } from "./request";
import { leastOrBest } from "./least";
import { type Effort, USUAL_EFFORT } from "./search";
import { fewestParts } from "./partings";
import { fits } from "./seams";
import { planSeams } from "./seamPlan";
import { toSteps } from "./steps";

/**
 * Cuts pieces from rolls with edge-to-edge cuts for the least cost, then the least length to buy.
 * Up to eleven different pieces (and any set no larger to look through, such as many equal ones) every plan is covered
 * and the least cost is proven; beyond that the best plan that a search finds is returned with a bound below which no
 * plan can be. Where seams are allowed, a piece that some roll does not hold may be put together from parts, if that
 * costs less with its seams; then a proven plan is the least over the partings looked at (see partingsOf), while the
 * bound holds for any parting.
 *
 * @param request pieces 0.01 to 500 m a side, 1 to 200 of them; rolls 0.05 to 50 m wide, 1 to 20 of them, longest
 *   length 0.1 to 5000 m or Infinity; prices 0 or more, all of them or none; seam lap 0.001 to 1 m
 * @returns the plan; the same for the same request, on every machine
 * @throws Problem outside these ranges, and for a piece that fits no roll while no seam is allowed
 * @example cutPlan({ pieces: [{ name: "Bed", length: 10, width: 2 }], rolls: [{ width: 2, price: 5, per: "length",
 *   longest: Infinity }], turn: false }).cost => 50; 10 m at 5
 *
 * Source: see exactPlan, searchPlan and lowerBound.
 */
export function cutPlan(request: PlanRequest, effort: Effort = USUAL_EFFORT): Plan {
  checkRequest(request);
  const { pieces, rolls, turn, seamLap } = request;
  const holds = (piece: Piece) => (roll: Roll) => fits(piece, roll, turn);
  if (seamLap !== undefined && !pieces.every((piece) => rolls.every(holds(piece)))) {
    return planSeamed(request, seamLap, effort);
  }
  const oversize = pieces.find((piece) => !rolls.some(holds(piece)));
  if (oversize) throw invalid(`cuts: ${misfit(oversize, request, (metres) => `${plain(metres)} m`)}`);
  return planWhole(request, effort);
}

function planSeamed(request: PlanRequest, lap: number, effort: Effort): Plan {
  const { pieces, rolls, turn, seamPrice = 0, kept = "", digits } = request;
  // Looking for partings takes its time with their number, so too many are refused before.
  const parts = pieces.reduce((sum, piece) => sum + fewestParts(piece, rolls, turn, lap), 0);
  if (parts > PLAN_RANGE.mostPieces && parts < Infinity) {
    throw invalid(
      `cuts need at least ${parts} parts with seams ${plain(lap)} m wide; a plan takes at most ${PLAN_RANGE.mostPieces}`,
    );
  }
  const offers = makeOffers(rolls);
  const priced = rolls.some((roll) => roll.price > 0);
  // Where no roll has a price, area stands in for money, and a seam has none either.
  const price = priced ? seamPrice : 0;
  const seamed = planSeams(pieces, rolls, offers, turn, { lap, price }, effort, kept);
  if (!seamed) throw invalid("seam must be narrower than every roll");
  checkRequest({ ...request, pieces: seamed.pieces });
  const { seamLength, proven, bound } = seamed;
  const plan = layOut(seamed.pieces, rolls, seamed.groups, offers, proven, bound, digits);
  const seamCents = lineCents(seamLength, price, undefined, digits);
  const cost = fromCents(toCents(plan.rollCost, undefined, digits) + seamCents, digits);
  return {
    ...plan,
    cost,
    seamLength,
    mayPart: true,
    kept: writeKept(seamed.partings, seamed.groups),
    lowerBound: priced ? Math.min(cost, roundDown(bound, digits)) : cost,
  };
}

function planWhole({ pieces, rolls, turn, kept = "", digits }: PlanRequest, effort: Effort): Plan {
  const offers = makeOffers(rolls);
  const blanks = pieces.map(({ length, width }) => ({ length: toSteps(length), width: toSteps(width) }));
  const few = quickPlan(blanks, offers, turn);
  if (few) return layOut(pieces, rolls, few, offers, true, 0, digits);
  const grouping = readKept(kept);
  const keptGroups = grouping && regroup(grouping.grouping, blanks, offers, turn);
  const bound = lowerBound(blanks, offers, turn);
  const { groups, proven } = leastOrBest(blanks, offers, turn, bound, effort, keptGroups);
  return layOut(pieces, rolls, groups, offers, proven, bound, digits);
}

/**
 * The sentence for a piece that fits no roll: which, why, the roll it was held against, and the cure.
 *
 * @param say writes a length in the reader's units
 * @example misfit({ name: "Bed", length: 10, width: 3 }, { pieces: [], rolls: [{ width: 2, price: 5, per: "length",
 *   longest: Infinity }], turn: false }, String).includes("Bed") => true; it names the piece
 */
export function misfit(piece: Piece, { rolls, turn }: PlanRequest, say: (metres: number) => string): string {
  const which = `${piece.name}, ${say(piece.length)} by ${say(piece.width)}, is`;
  const cure = "use a larger roll, or allow a seam by giving its lap";
  const widest = Math.max(...rolls.map((roll) => roll.width));
  const across = turn ? Math.min(piece.length, piece.width) : piece.width;
  if (across > widest * (1 + 1e-12)) {
    const ways = turn ? "wider both ways than" : "not to be turned and wider than";
    return `${which} ${ways} the widest roll of ${say(widest)}; ${cure}`;
  }
  const longest = Math.max(...rolls.filter((roll) => roll.width >= across).map((roll) => roll.longest));
  return `${which} longer than the longest length of ${say(longest)} of the rolls wide enough for it; ${cure}`;
}
