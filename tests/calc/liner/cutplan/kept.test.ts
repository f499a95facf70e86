import { describe, expect, it } from "vitest";
import { cutPlan } from "../../../../src/calc/liner/cutplan/plan";
import type { PlanRequest } from "../../../../src/calc/liner/cutplan/request";
import { USUAL_EFFORT } from "../../../../src/calc/liner/cutplan/search";
import { inspect } from "./inspect";

const pieces = Array.from({ length: 24 }, (_, i) => ({
  name: `P${i}`,
  length: 1 + ((i * 7) % 11) / 3,
  width: 0.5 + ((i * 5) % 13) / 7,
}));
const request: PlanRequest = { pieces, rolls: [{ width: 4, price: 3, per: "length", longest: 30 }], turn: true };
/** So little that whatever is better comes from the plan handed over. */
const little = { ...USUAL_EFFORT, work: 50_000 };

describe("a plan that was kept", () => {
  it("is taken where it costs less than what is found, and is cut as well as any", () => {
    const good = cutPlan(request);
    const poor = cutPlan(request, little);
    expect(good.cost).toBeLessThan(poor.cost);
    const again = cutPlan({ ...request, kept: good.kept }, little);
    inspect(again, request);
    expect(again.cost).toBeLessThanOrEqual(good.cost);
  });

  it.each([
    ["no plan", "what?"],
    ["a piece twice", "(0 0)"],
    ["too few pieces", "0 1 2"],
    ["three in a bracket", "(0 1 2)"],
    ["a bracket too many", "(0 1))"],
    ["pieces that are not there", "(0 900)"],
  ])("is passed over when it is %s", (_, kept) => {
    expect(cutPlan({ ...request, kept }, little).cost).toBe(cutPlan(request, little).cost);
  });

  it("keeps how pieces were parted", () => {
    const seamed: PlanRequest = {
      ...request,
      pieces: [{ name: "Basin", length: 9, width: 7 }, ...pieces.slice(0, 14)],
      seamLap: 0.1,
      seamPrice: 1,
    };
    const good = cutPlan(seamed);
    expect(good.kept).toContain(":");
    expect(cutPlan({ ...seamed, kept: good.kept }, little).cost).toBeLessThanOrEqual(good.cost);
  });
});
