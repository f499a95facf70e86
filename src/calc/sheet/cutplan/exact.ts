import { cutFrom, type Spot } from "./cutting";
import { emptyFront, type Front, join, pieceFront } from "./front";
import { cheapestPurchase, isCheaper, type Offer, type Purchase } from "./purchase";

/** A piece as the search sees it; steps. */
export interface Blank {
  readonly length: number;
  readonly width: number;
}

/** A length to buy and what is cut from it. */
export interface Section {
  readonly purchase: Purchase;
  readonly spots: readonly Spot[];
}

/** Ways to part sets that are still looked at one by one: those of eleven different pieces, a third of a second. */
const MOST_SPLITS = 3 ** 11;

interface Kind extends Blank {
  readonly members: number[];
}

/** Equal pieces are one kind: which of them is cut where makes no difference. */
function kindsOf(pieces: readonly Blank[], turn: boolean): Kind[] {
  const kinds: Kind[] = [];
  pieces.forEach(({ length, width }, index) => {
    const same = kinds.find(
      (k) => (k.length === length && k.width === width) || (turn && k.length === width && k.width === length),
    );
    if (same) same.members.push(index);
    else kinds.push({ length, width, members: [index] });
  });
  return kinds;
}

/** Whether a set of pieces is small enough to look at every plan. */
export function canProve(pieces: readonly Blank[], turn: boolean): boolean {
  let splits = 1;
  for (const { members } of kindsOf(pieces, turn)) splits *= ((members.length + 1) * (members.length + 2)) / 2;
  return splits <= MOST_SPLITS;
}

/**
 * The cheapest plan of all plans with edge-to-edge cuts. For every set of pieces, from the small to the large, it
 * keeps every smallest box the set can be cut from (joining those of every two parts of the set, stacked and beside
 * each other) and the cheapest way to buy it (as one length, or as the cheapest of every two parts). What no set's
 * boxes can beat is never built upon; nothing else is left out, so the last set's cost is the least there is.
 *
 * Source: the dynamic program over all guillotine cuts of P. C. Gilmore and R. E. Gomory, "Multistage cutting stock
 * problems of two and more dimensions", Operations Research 13 (1965) 94-120, here over sets of given pieces.
 */
export function exactPlan(pieces: readonly Blank[], offers: readonly Offer[], turn: boolean): Section[] {
  const kinds = kindsOf(pieces, turn);
  const places: number[] = [];
  let sets = 1;
  for (const { members } of kinds) {
    places.push(sets);
    sets *= members.length + 1;
  }
  const limit = {
    across: Math.max(...offers.map((o) => o.width)),
    along: Math.max(...offers.map((o) => o.longest)),
    area: Infinity,
  };

  const fronts: Front[] = [emptyFront()];
  const best: Best[] = [{ cost: 0, bought: 0 }];
  for (let set = 1; set < sets; set++) {
    const single = places.indexOf(set);
    const kind = kinds[single];
    const front = kind ? pieceFront(kind.length, kind.width, turn) : emptyFront();
    const splits = splitsOf(set, kinds, places);
    for (const [a, b] of splits) join(front, fronts[a] as Front, fronts[b] as Front, limit);
    const purchase = cheapestPurchase(front, offers);
    let found: Best = purchase ? { cost: purchase.cost, bought: purchase.bought, purchase } : NOT_BOUGHT;
    for (const split of splits) {
      const [a, b] = [best[split[0]] as Best, best[split[1]] as Best];
      const apart = { cost: a.cost + b.cost, bought: a.bought + b.bought, split };
      if (found === NOT_BOUGHT || isCheaper(apart, found)) found = apart;
    }
    fronts.push(front);
    best.push(found);
  }

  const taken = kinds.map(() => 0);
  const parting = {
    front: (set: number) => fronts[set] as Front,
    splits: (set: number) => splitsOf(set, kinds, places),
    piece: (set: number) => {
      const index = places.indexOf(set);
      const next = taken[index] ?? 0;
      taken[index] = next + 1;
      return kinds[index]?.members[next] ?? 0;
    },
  };
  const collect = (set: number): Section[] => {
    const { purchase, split } = best[set] as Best;
    if (split) return [...collect(split[0]), ...collect(split[1])];
    if (!purchase) return [];
    const box = { along: 0, across: 0, length: purchase.used, width: purchase.offer.width };
    return [{ purchase, spots: cutFrom(box, set, parting) }];
  };
  return collect(sets - 1);
}

/** The cheapest way to a set: bought as one length, or as two parts of it. */
interface Best {
  readonly cost: number;
  readonly bought: number;
  readonly purchase?: Purchase;
  readonly split?: readonly [number, number];
}

const NOT_BOUGHT: Best = { cost: Infinity, bought: Infinity };

/** Every way to part a set in two, each once. A set is a number whose digits count the pieces of each kind. */
function splitsOf(set: number, kinds: readonly Kind[], places: readonly number[]): [number, number][] {
  let parts = [0];
  kinds.forEach(({ members }, index) => {
    const place = places[index] ?? 1;
    const digit = Math.floor(set / place) % (members.length + 1);
    const more: number[] = [];
    for (let count = 0; count <= digit; count++) for (const part of parts) more.push(part + count * place);
    parts = more;
  });
  return parts.filter((part) => part > 0 && 2 * part <= set).map((part) => [part, set - part]);
}
