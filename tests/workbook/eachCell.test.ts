import { beforeAll, describe, expect, it } from "vitest";
import { EachCell, type Harm, type Outcome, type Target } from "./eachCell";

/** Every so many inputs of each system are tried; EACH_CELL=1 tries all, which takes some minutes. */
const STEP = Number(process.env.EACH_CELL ?? 25);

/** A price that changed downwards while nothing says that anything is amiss. */
function silent(price: number, { price: now, flagged }: Outcome): boolean {
  return typeof now === "number" && now < price - 0.005 && !flagged;
}

describe.each(["US", "SI"] as const)("the price of the demo, %s", (system) => {
  let each: EachCell;
  beforeAll(async () => {
    each = await EachCell.of(system);
  }, 120_000);

  const harmed = (targets: readonly Target[], harm: Harm): Outcome[] =>
    targets.map((target) => each.harm(target, harm)).filter((outcome) => silent(each.price, outcome));

  it("is never lower without a word when one of our functions fails", { timeout: 300_000 }, () => {
    const functions = each.functions();
    expect(functions.length).toBeGreaterThan(25);
    expect(harmed(functions, "an error")).toEqual([]);
  });

  it("says which cell is wrong, by its address and by sheet and label, when a fact holds garbage", () => {
    const facts = each.facts().filter((_, index) => process.env.EACH_CELL !== undefined || index % 6 === 0);
    expect(facts.length).toBeGreaterThan(10);
    for (const fact of facts) {
      const { cell, wrong, toFix, price } = each.harm(fact, "garbage");
      expect([wrong, toFix], cell).toEqual([cell, [fact.called]]);
      expect(price).toBe(`wrong: ${cell}`);
    }
  });

  it.each(["an error", "garbage", "nothing"] as const)(
    "is never lower without a word when an input holds %s",
    { timeout: 600_000 },
    (harm) => {
      const inputs = each.inputs().filter((_, index) => index % STEP === 0);
      expect(inputs.length).toBeGreaterThan(20);
      expect(harmed(inputs, harm)).toEqual([]);
    },
  );
});
