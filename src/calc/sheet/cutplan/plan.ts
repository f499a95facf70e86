import { invalid, plain } from "../../problem";
import { checkRequest } from "./check";
import { lowerBound } from "./bound";
import { layOut, roundDown } from "./layOut";
import { makeOffers } from "./purchase";
import type { Piece, Plan, PlanRequest, Roll } from "./request";
import { leastOrBest } from "./least";
import { type Effort, USUAL_EFFORT } from "./search";
import { fits, partPiece, type Sharing } from "./seams";
import { toSteps } from "./steps";

/**
 * Cuts pieces from rolls with edge-to-edge cuts for the least cost, then the least length to buy.
 * Up to eleven different pieces (and any set no larger to look through, such as many equal ones) every plan is covered
 * and the least cost is proven; beyond that the best plan a long search finds is returned with a bound below which no
 * plan can be. A piece that fits no roll is parted only when a seam is allowed; a plan with seams is never called
 * proven, because the ways to part a piece are not all tried.
 *
 * @param request pieces 0.01 to 500 m a side, 1 to 200 of them; rolls 0.05 to 50 m wide, 1 to 20 of them, longest
 *   length 0.1 to 5000 m or Infinity; prices 0 or more, all of them or none; seam lap 0.001 to 1 m
 * @returns the plan; the same for the same request, on every machine
 * @throws Problem outside these ranges, and for a piece that fits no roll while no seam is allowed
 *
 * Source: see exactPlan, searchPlan and lowerBound.
 */
export function cutPlan(request: PlanRequest, effort: Effort = USUAL_EFFORT): Plan {
  checkRequest(request);
  const { pieces, rolls, turn, seamLap } = request;
  const oversize = pieces.find((piece) => !rolls.some((roll) => fits(piece, roll, turn)));
  if (!oversize) return planWhole(pieces, rolls, turn, effort);
  if (seamLap === undefined) throw invalid(`cuts: ${misfit(oversize, request, (metres) => `${plain(metres)} m`)}`);
  const plans = (["equal", "full widths"] as const).map((sharing) => planSeamed(request, seamLap, sharing, effort));
  return plans.reduce((best, plan) => (plan.cost < best.cost ? plan : best));
}

function planSeamed(request: PlanRequest, lap: number, sharing: Sharing, effort: Effort): Plan {
  const { pieces, rolls, turn } = request;
  let seamLength = 0;
  const parts = pieces.flatMap((piece): readonly Piece[] => {
    if (rolls.some((roll) => fits(piece, roll, turn))) return [piece];
    const seamed = partPiece(piece, rolls, turn, lap, sharing);
    if (!seamed) throw invalid("seam must be narrower than every roll");
    seamLength += seamed.seamLength;
    return seamed.parts;
  });
  checkRequest({ ...request, pieces: parts });
  const plan = planWhole(parts, rolls, turn, effort);
  // The parts could have been chosen otherwise; only the pieces' own area is sure to be paid for.
  const rate = Math.min(...makeOffers(rolls).map((offer) => offer.areaRate));
  const own = pieces.reduce((sum, { length, width }) => sum + toSteps(length) * toSteps(width), 0);
  const sure = rolls.every((roll) => roll.price === 0) ? 0 : roundDown(rate * own);
  return { ...plan, seamLength, proven: false, lowerBound: Math.min(plan.cost, sure) };
}

function planWhole(pieces: readonly Piece[], rolls: readonly Roll[], turn: boolean, effort: Effort): Plan {
  const offers = makeOffers(rolls);
  const blanks = pieces.map(({ length, width }) => ({ length: toSteps(length), width: toSteps(width) }));
  const bound = lowerBound(blanks, offers, turn);
  const { groups, proven } = leastOrBest(blanks, offers, turn, bound, effort);
  return layOut(pieces, rolls, groups, offers, proven, bound);
}

/**
 * The sentence for a piece that fits no roll: which, why, the roll it was held against, and the cure.
 *
 * @param say writes a length in the reader's units
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
