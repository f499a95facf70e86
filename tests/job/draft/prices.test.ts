import { describe, expect, it } from "vitest";
import { draftOf } from "../../../src/job/draft/draft";
import type { Offers } from "../../../src/job/draft/offers";
import { wishOf } from "./sites";

/** An offer in which no gravel and no modules compete with a tub. */
function onlyTubs(offers: Offers): Offers {
  const price: Offers["price"] = (kind) => (kind === "basin stone" ? 100 : 1) * offers.price(kind);
  return { ...offers, modules: [], price };
}

describe("the price list of a draft", () => {
  it("has freight that a product costs, on a line of its own", () => {
    const wish = wishOf({ fall: 1, run: 4, lip: 0.6, soil: "loam", accessWidth: 2.4 }, "SI");
    // Of tubs alone the one of 1,100 L is the smallest that holds enough.
    const { job, state } = draftOf({ ...wish, offers: onlyTubs(wish.offers) });
    const tub = wish.offers.products?.find(({ kind, size }) => kind === "tub" && size === 1.1);
    expect(job.basinParts).toMatchObject([{ kind: "tub", length: 1.8, width: 1.5, depth: 0.6 }]);
    expect(state.takeoff.lines.find(({ code }) => code === "TUB")).toMatchObject({ order: 1, cost: 678 });
    const line = state.takeoff.lines.find(({ code }) => code === "FREIGHT");
    expect(line).toMatchObject({ order: 1, cost: tub?.freight, kind: "hauling", look: "" });
    expect(state.price.standing.words).toBe("");
  });

  it("has a tub's hours by what it holds: 3.2 h, 0.8 times up to 680 L and without a machine", () => {
    const wish = wishOf({ fall: 0.7, run: 2.8, lip: 0.5, soil: "loam", accessWidth: 2.4 }, "SI");
    const { job, state } = draftOf({ ...wish, offers: onlyTubs(wish.offers) });
    // 1,500 x 1,200 x 500 mm are 900 L of box, of which the tub holds 650.
    expect(job.basinParts[0]?.voids).toBeCloseTo(650 / 900, 12);
    expect(state.labor.tasks[6]).toMatchObject({ quantity: 1, machineHours: 0 });
    expect(state.labor.tasks[6]?.hours).toBeCloseTo(3.2 * 0.8 * (job.difficulty ?? NaN), 9);
    expect(state.price.standing.words).toBe("");
  });

  it("covers a lip with one slab of the book where it is long enough, else with several", () => {
    const wish = wishOf({ fall: 0.8, run: 3, lip: 0.6, soil: "loam", accessWidth: 2.4 }, "SI");
    const slabs = (length: number) => {
      const lipStones = [{ length, width: 0.3, height: 0.08, price: 40 }];
      return draftOf({ ...wish, offers: { ...wish.offers, lipStones } }).facts.get("lipStonesPerDrop");
    };
    // The lip of 0.6 m with 6 in (0.152 m) of overlap is 0.752 m: one of 0.8 m, two of 0.4 m.
    expect(slabs(0.8)).toMatchObject({ value: 1, reason: expect.stringMatching(/^One slab of the book over /) });
    expect(slabs(0.4)).toMatchObject({ value: 2, reason: expect.stringMatching(/^2 slabs of the book over /) });
  });

  it("has cable by the gauge that is typed", () => {
    const wish = wishOf({ fall: 1.1 }, "SI");
    const cable = wish.offers.products?.find(({ kind }) => kind === "cable");
    // 12 m and 5 % of waste are 12.6 m, sold by whole meters: 13.
    expect(cable).toMatchObject({ unit: "m", pack: 1, waste: 0.05 });
    const { state } = draftOf({ ...wish, typed: { ...wish.typed, cableLength: 12, cableGauge: cable?.type } });
    const line = state.takeoff.lines.find(({ code }) => code === "CABLE");
    expect(line).toMatchObject({ order: 13, look: "" });
    expect(line?.cost).toBeCloseTo(13 * (cable?.price ?? 0), 6);
    expect(state.price.standing.words).toBe("");
  });
});
