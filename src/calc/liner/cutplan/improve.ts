import { type Group, leastWaste, MOST_BOXES } from "./group";
import { cheapestOf } from "./program";
import { cheapestPurchase, type Offer } from "./purchase";
import type { Work } from "./work";

/** Groups that one program takes. */
export const FEW = 8;

/** What the groups of a plan cost when each is bought as one length; Infinity when one fits no roll. */
export function costOf(plan: readonly Group[], offers: readonly Offer[]): number {
  return plan.reduce((sum, { front }) => sum + (cheapestPurchase(front, offers)?.cost ?? Infinity), 0);
}

/** One step: takes some lengths of a plan apart into few groups, and puts these together for the least cost. */
export function improve(
  plan: readonly Group[],
  offers: readonly Offer[],
  random: () => number,
  work: Work,
  few = FEW,
): Group[] {
  const chosen = new Set<number>();
  const want = Math.min(plan.length, 1 + Math.floor(random() * 4));
  while (chosen.size < want) chosen.add(Math.floor(random() * plan.length));
  const items = plan.filter((_, index) => chosen.has(index));
  const rest = plan.filter((_, index) => !chosen.has(index));
  const before = costOf(items, offers);
  while (items.length < few) {
    // The next to come apart: by chance, those that waste the most first.
    let most = -1;
    let at = -1;
    items.forEach((group, index) => {
      if (!group.parts) return;
      const weight = (leastWaste(group.front, group.area) + 0.02 * group.area) * random();
      if (weight > most) {
        most = weight;
        at = index;
      }
    });
    if (at < 0) break;
    const [a, b] = (items[at] as Group).parts as readonly [Group, Group];
    items.splice(at, 1, a, b);
  }
  const found = cheapestOf(
    items.map((group) => ({ members: [group] })),
    offers,
    before,
    work,
    MOST_BOXES,
  );
  return found ? [...rest, ...found] : [...plan];
}
