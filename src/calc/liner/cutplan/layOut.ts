import { CENT_DIGITS, fromCents, lineCents } from "../../money/cents";
import { cutFrom, type Spot } from "./cutting";
import type { Group } from "./group";
import { writeKept } from "./kept";
import { cheapestPurchase, type Offer, type Purchase } from "./purchase";
import type { Bought, Piece, Placement, Plan, Roll } from "./request";
import { toMetres } from "./steps";

/** A length to buy and what is cut from it. */
interface Section {
  readonly purchase: Purchase;
  readonly spots: readonly Spot[];
}

/** Sections that share one length bought of a roll, end to end. */
interface Length {
  readonly roll: number;
  readonly sections: Section[];
  used: number;
}

/**
 * Lays groups end to end on as few lengths of each roll as the longest length allows, in the order of their size,
 * and counts up what is bought.
 *
 * @param bound money no plan can undercut, before rounding
 * @param digits behind the point of amounts
 */
export function layOut(
  pieces: readonly Piece[],
  rolls: readonly Roll[],
  groups: readonly Group[],
  offers: readonly Offer[],
  proven: boolean,
  bound: number,
  digits = CENT_DIGITS,
): Plan {
  const sections = groups.flatMap((group) => sectionOf(group, offers));
  const placements: Placement[] = [];
  const bought: Bought[] = [];
  let cents = 0;
  let area = 0;
  rolls.forEach((roll, index) => {
    let start = 0;
    let length = 0;
    for (const { sections: own, used } of lengthsOf(index, sections)) {
      const paid = roll.per === "roll" && roll.price > 0 ? roll.longest : toMetres(used);
      let offset = start;
      for (const { spots, purchase } of own) {
        for (const spot of spots) placements.push(place(spot, index, offset, pieces[spot.piece]));
        offset += toMetres(purchase.used);
      }
      bought.push({ roll: index, start, length: paid, used: toMetres(used) });
      start += paid;
      length += paid;
    }
    area += length * roll.width;
    cents +=
      roll.per === "roll"
        ? lineCents(length / roll.longest, roll.price, undefined, digits)
        : lineCents(length, perLength(roll), undefined, digits);
  });
  placements.sort((a, b) => a.roll - b.roll || a.along - b.along || a.across - b.across);
  const covered = pieces.reduce((sum, { length, width }) => sum + length * width, 0);
  const cost = fromCents(cents, digits);
  const priced = rolls.some((roll) => roll.price > 0);
  return {
    placements,
    bought,
    cost,
    rollCost: cost,
    kept: writeKept([], groups),
    mayPart: false,
    lowerBound: proven || !priced ? cost : Math.min(cost, roundDown(bound, digits)),
    proven,
    area,
    waste: Math.max(0, area - covered),
    seamLength: 0,
  };
}

function sectionOf(group: Group, offers: readonly Offer[]): Section[] {
  const purchase = cheapestPurchase(group.front, offers);
  if (!purchase) return [];
  return [{ purchase, spots: cutFrom(group, { length: purchase.used, width: purchase.offer.width }) }];
}

/** Money to the cent below, or to the smallest unit of its currency; a bound that is a whole number of cents on paper loses none. */
export function roundDown(money: number, digits = CENT_DIGITS): number {
  return fromCents(Math.floor(money * 10 ** digits + 1e-6), digits);
}

function perLength({ per, price, width }: Roll): number {
  return per === "area" ? price * width : price;
}

/** First fit, the longest section first. */
function lengthsOf(roll: number, sections: readonly Section[]): Length[] {
  const own = sections.filter(({ purchase }) => purchase.offer.roll === roll);
  own.sort((a, b) => b.purchase.used - a.purchase.used);
  const lengths: Length[] = [];
  for (const section of own) {
    const { used, offer } = section.purchase;
    const room = lengths.find((length) => length.used + used <= offer.longest);
    if (room) {
      room.sections.push(section);
      room.used += used;
    } else lengths.push({ roll, sections: [section], used });
  }
  return lengths;
}

function place(spot: Spot, roll: number, offset: number, piece: Piece | undefined): Placement {
  const length = toMetres(spot.length);
  return {
    name: piece?.name ?? "",
    roll,
    along: offset + toMetres(spot.along),
    across: toMetres(spot.across),
    length,
    width: toMetres(spot.width),
    turned: piece !== undefined && Math.abs(length - piece.length) > 1e-9,
  };
}
