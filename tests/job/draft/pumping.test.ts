import { expect, it } from "vitest";
import type { OfferedPump } from "../../../src/job/draft/offers";
import { bestPumping, type PumpWish } from "../../../src/job/draft/pumping";
import { pumpSets } from "../../../src/job/draft/pumpSets";

/** 2 L/s over 1 m, a short and wide pipe that takes next to nothing, one pump, and no electricity to pay. */
const WISH: PumpWish = {
  ...{ flow: 0.002, lift: 1, sinks: 0, routeLength: 1, riserLength: 0, fastest: 5, checkValve: false },
  ...{ basinVolume: 0, drainBack: 0, running: { hoursPerDay: 0, daysPerYear: 0, tariff: 0 }, years: 0, setPump: 0 },
  ...{ method: "Hazen-Williams", count: 1 },
};
const PIPE = { size: 0.1016, type: "Sch 40 PVC", price: 0 };

const pump = (name: string, price: number, most: number): OfferedPump => ({
  ...{ name, price, watts: 1 },
  points: [
    { flow: 0, head: 3 },
    { flow: 0.8 * most, head: 2 },
    { flow: most, head: 1 },
  ],
});

/**
 * Delivered at 1 m: 2.6 and 6 L/s, less what little the pipe takes, which is 1.3 and about 3 times the wanted. Half as much again
 * is free; three times over costs its price once and a half more, by the rule of the draft: 100 + 150 = 250, 60 + 90 = 150.
 */
it.each([
  [100, "fits"],
  [60, "far over"],
])(
  "weighs flow far over the wanted as money: of a pump for 200 and one for %i it takes the one that %s",
  (price, taken) => {
    const pumps = pumpSets(WISH, [pump("fits", 200, 0.0026), pump("far over", price, 0.006)]);
    const best = bestPumping(WISH, pumps, [PIPE]);
    expect(best?.pump.name).toBe(taken);
    expect(best?.faults).toBe(0);
  },
);
