import { describe, expect, it } from "vitest";
import type { ReconciledLine, State } from "../../../../src/calc/money/reconcile/lines";
import { totalsOf } from "../../../../src/calc/money/reconcile/totals";

const amounts = { ordered: 100, billed: 90, priceDifference: 5, toCome: 10, atStake: 0 };
const line = (state: State, atStake = 0): ReconciledLine => ({
  order: "1",
  supplier: "Yard",
  item: "A",
  unit: "ton",
  quantities: undefined,
  amounts: { ...amounts, atStake },
  state,
  verdict: "",
});

describe("a total", () => {
  it.each<[State[], State, string]>([
    [["Agrees", "Agrees"], "Agrees", "2 agree"],
    [["Agrees", "Open"], "Open", "1 open, 1 agree"],
    [["Open", "Query", "Agrees"], "Query", "1 to query, 1 open, 1 agree"],
  ])("of %j is %s: %s", (states, state, verdict) => {
    const totals = totalsOf(states.map((each) => line(each)));
    expect(totals.length).toBeGreaterThan(1);
    for (const total of totals) expect(total).toMatchObject({ state, verdict });
  });

  it("says what is at stake, and adds up every amount", () => {
    const [total] = totalsOf([line("Query", 7), line("Query", 1243)]);
    expect(total?.verdict).toBe("2 to query; 12.50 at stake");
    expect(total?.amounts).toEqual({ ordered: 200, billed: 180, priceDifference: 10, toCome: 20, atStake: 1250 });
  });
});
