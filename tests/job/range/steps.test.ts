import { describe, expect, it } from "vitest";
import { correctedBy } from "../../../src/job/range/corrected";
import { drawsOf, type Effect, type Look } from "../../../src/job/range/draws";
import { placesToLook } from "../../../src/job/range/looks";
import { stepsOf } from "../../../src/job/range/steps";
import { TENTH } from "./tenth";

const effects = ["flow", "fall"].map((name): Effect => ({
  name,
  points: [
    [-TENTH, -100],
    [TENTH, 100],
  ],
  jumps: false,
}));
/** A second pump for 600 once the flow, which goes with both facts, is over 0.7. */
const flow = ([a = 0, b = 0]: readonly number[]): number => a + b;
const whole = (places: readonly number[]): number => (100 / TENTH) * flow(places) + (flow(places) > 0.7 ? 600 : 0);
const looks = placesToLook(effects).map((places): Look => ({ places, whole: whole(places), measures: [flow(places)] }));

describe("steps in what a pump is chosen by", () => {
  it("step once from below to above, later the larger the measure", () => {
    const { columns, write } = stepsOf(looks);
    const at = (a: number): number[] => {
      const row = new Float64Array(columns);
      write(() => a, row, 0);
      return [...row];
    };
    expect(columns).toBeGreaterThan(10);
    expect(new Set(at(-9))).toEqual(new Set([-0.5]));
    expect(new Set(at(9))).toEqual(new Set([0.5]));
    // Half of a flow that is as often below 0 as above.
    const above = at(0).filter((step) => step > 0).length / columns;
    expect(Math.abs(above - 0.5), `${above}`).toBeLessThan(0.1);
  });

  it("are none where nothing is measured, or it never differs", () => {
    expect(stepsOf(looks.map(({ places }) => ({ places, whole: 1 }))).columns).toBe(0);
    expect(stepsOf(looks.map((look) => ({ ...look, measures: [5] }))).columns).toBe(0);
  });

  it("tell most of a jump that a plane cannot follow", () => {
    const draws = drawsOf(effects, 2000);
    // Each draw's own price, as the rule above says it.
    const off = (told: Float64Array | undefined): number => {
      if (!told) throw new Error("nothing was told");
      const misses = told.map((price, draw) => price - whole(draws.places.map((places) => places[draw] ?? 0)));
      return Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / misses.length);
    };
    const plane = off(
      correctedBy(
        effects,
        looks.map(({ places, whole: price }) => ({ places, whole: price })),
        draws,
      )?.told,
    );
    const stepped = off(correctedBy(effects, looks, draws)?.told);
    expect(stepped, `${stepped} and ${plane}`).toBeLessThan(0.5 * plane);
  });
});
