import { CENT_DIGITS, lineCents } from "../cents";
import { clean } from "./stoneUnits";

/** A quantity at one price; both in the order's unit. */
export interface Tier {
  readonly price: number;
  readonly quantity: number;
}

/**
 * What an order comes to per price, cheapest first. A cut takes from the quantity of its own price, and what that does
 * not hold from the dearest.
 */
export function tiersOf(lines: readonly Tier[]): Tier[] {
  const [only, ...others] = lines;
  if (only && others.length === 0 && only.quantity >= 0) return [only];
  const quantities = new Map<number, number>();
  for (const { price, quantity } of lines) quantities.set(price, clean((quantities.get(price) ?? 0) + quantity));
  const tiers = [...quantities].map(([price, quantity]) => ({ price, quantity })).sort((a, b) => a.price - b.price);
  let cut = 0;
  for (const tier of tiers) {
    if (tier.quantity >= 0) continue;
    cut -= tier.quantity;
    tier.quantity = 0;
  }
  for (const tier of cut > 0 ? [...tiers].reverse() : []) {
    const taken = Math.min(cut, tier.quantity);
    tier.quantity = clean(tier.quantity - taken);
    cut = clean(cut - taken);
  }
  return tiers;
}

/** Cents of some quantities, each rounded as a line of its own. */
export function worthOf(tiers: readonly Tier[], digits = CENT_DIGITS): number {
  return tiers.reduce((cents, { quantity, price }) => cents + lineCents(quantity, price, undefined, digits), 0);
}

/** The cheapest part of some quantities that makes up `most`; what was credited counts first. */
export function cheapestOf(tiers: readonly Tier[], most: number): Tier[] {
  const credited = tiers.filter(({ quantity }) => quantity < 0);
  const stock = new TierStock(tiers.filter(({ quantity }) => quantity > 0).sort((a, b) => a.price - b.price));
  const wanted = clean(credited.reduce((sum, { quantity }) => sum - quantity, most));
  return [...credited, ...stock.takeCheapest(wanted)];
}

/** The ordered quantities per price, from which invoices and deliveries take. */
export class TierStock {
  private readonly free: { readonly price: number; quantity: number }[];

  /** @param tiers cheapest first, one for each price */
  constructor(tiers: readonly Tier[]) {
    this.free = tiers.map((tier) => ({ ...tier }));
  }

  /** The free quantity of a price. */
  left(price: number): number {
    return this.free.find((tier) => tier.price === price)?.quantity ?? 0;
  }

  /** Takes a quantity at one price, as far as it is there; a credit gives it back. */
  takeAt(price: number, quantity: number): void {
    const tier = this.free.find((each) => each.price === price);
    if (tier) tier.quantity = Math.max(0, clean(tier.quantity - quantity));
  }

  /** Takes a quantity from the cheapest prices that are free; what goes beyond them all has the cheapest price. */
  takeCheapest(quantity: number): Tier[] {
    const taken: Tier[] = [];
    let wanted = quantity;
    for (const tier of this.free) {
      const part = Math.min(wanted, tier.quantity);
      if (part <= 0) continue;
      tier.quantity = clean(tier.quantity - part);
      taken.push({ price: tier.price, quantity: part });
      wanted = clean(wanted - part);
    }
    const [cheapest] = this.free;
    if (wanted <= 0 || cheapest === undefined) return taken;
    // The cheapest price is taken first, so its part stands first, if it has one.
    const [first, ...others] = taken;
    return first?.price === cheapest.price
      ? [{ price: first.price, quantity: clean(first.quantity + wanted) }, ...others]
      : [{ price: cheapest.price, quantity: wanted }, ...taken];
  }

  /** Takes a quantity of what is left, dearest first; what goes beyond has the price `otherwise`. */
  takeDearest(quantity: number, otherwise: number): Tier[] {
    const taken: Tier[] = [];
    let wanted = quantity;
    for (const { price, quantity: free } of [...this.free].reverse()) {
      const part = Math.min(wanted, free);
      if (part <= 0) continue;
      taken.push({ price, quantity: part });
      wanted = clean(wanted - part);
    }
    return wanted > 0 ? [...taken, { price: otherwise, quantity: wanted }] : taken;
  }
}
