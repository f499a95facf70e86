import type { PriceRange } from "./range";

/**
 * What must be known to read a range, in sentences: trials that came to no price, and a likely price at one of its ends.
 * That is no fault: pumps, pipes and rolls come in sizes, and the likely design may be the last before the next size. One
 * pump that costs least to own, electricity included, may be cheaper to buy than the two smaller ones for a little less flow.
 */
export function remarksOf({ low, likely, high, trials, priceless }: Omit<PriceRange, "next">): string[] {
  const edge = (rare: "less" | "more"): string =>
    `The likely design is at an edge: the next pump, pipe or roll changes the price, and few nearby designs cost ${rare}.`;
  return [
    ...(priceless > 0 ? [`${priceless} of ${trials} trial designs came to no price and were left out.`] : []),
    // Where nothing moves the price there is no range, and no edge to it.
    ...(low === likely && high > likely ? [edge("less")] : []),
    ...(high === likely && low < likely ? [edge("more")] : []),
  ];
}
