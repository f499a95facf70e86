import { describe, expect, it } from "vitest";
import { draftOf } from "../../../src/job/draft/draft";
import { wishOf } from "./sites";

describe("the price list of a draft", () => {
  it("has freight that a product costs, on a line of its own", () => {
    const wish = wishOf({ fall: 1.2782869613688101, lip: 0.9209095926854965 }, "SI");
    const { state } = draftOf(wish);
    const tub = wish.offers.products?.find(({ kind, freight }) => kind === "tub" && freight > 0);
    const line = state.takeoff.lines.find(({ code }) => code === "FREIGHT");
    expect(line).toMatchObject({ order: 1, cost: tub?.freight, kind: "hauling", look: "" });
    expect(state.price.standing.words).toBe("");
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
