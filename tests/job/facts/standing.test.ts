import { describe, expect, it } from "vitest";
import { blankJob, FACTS, type FactKey, type Job } from "../../../src/job/facts";
import { standingsOf, usedJob, worstOf } from "../../../src/job/facts/standing";
import { SHIPPED_TABLES, USUAL } from "../../../src/job/facts/usual";
import { inSystem } from "../../../src/job/facts/units";

const FOOT = 0.3048;

describe("a job with nothing typed", () => {
  it("knows the usual values in SI, each with its state and a reason", () => {
    const standings = standingsOf(blankJob("US"));
    // 6 in of fabric lap is half a foot of 0.3048 m, by definition of the foot.
    expect(standings.fabricLap.value).toBeCloseTo(0.5 * FOOT, 12);
    expect(standings.fabricLap.state).toBe("assumed");
    expect(standings.taxRate).toMatchObject({ value: 0.065, state: "invented" });
    expect(standings.run).toEqual({ value: undefined, state: "unknown", reason: "" });
    for (const key of Object.keys(USUAL) as FactKey[]) expect(standings[key].reason, key).not.toBe("");
  });

  it("is calculated from them, and from nothing where nothing is known", () => {
    const used = usedJob(blankJob("SI"));
    expect(used.soil).toBe("loam");
    expect(used.benchmarkLevel).toBe(50);
    expect(used.run).toBeUndefined();
    expect(used.lips).toEqual([]);
  });
});

describe("what counts for a fact", () => {
  const typed: Job = { ...blankJob("US"), fabricLap: 0.2, lips: [{ width: 0.5 }] };

  it("is what was typed, then the company's book, then what is assumed", () => {
    const company = { fabricLap: 0.18, linerOverlap: 0.4 };
    expect(standingsOf(typed, { company }).fabricLap).toMatchObject({ value: 0.2, state: "yours" });
    expect(standingsOf(typed, { company }).linerOverlap).toMatchObject({ value: 0.4, state: "company" });
    expect(usedJob(typed, company)).toMatchObject({ fabricLap: 0.2, linerOverlap: 0.4, slackPerDrop: 0.25 * FOOT });
  });

  it("takes a table whole, and a drafted one only while no row is typed", () => {
    const drafted = { lips: { value: [{ width: 0.7 }, { width: 0.3 }], reason: "drafted" } };
    expect(usedJob(typed, {}, drafted).lips).toEqual([{ width: 0.5 }]);
    expect(usedJob(blankJob("US"), {}, drafted).lips).toHaveLength(2);
  });

  it("does not stand in for what was typed wrong", () => {
    const wrong = { fabricLap: 'Liner!B9 holds "six".' };
    expect(standingsOf(typed, { wrong }).fabricLap).toEqual({
      value: undefined,
      state: "wrong",
      reason: 'Liner!B9 holds "six".',
    });
  });

  it("is the company's once it stands behind what the tool invented", () => {
    const blank = blankJob("US");
    expect(standingsOf(blank, { confirmed: "all" }).wantedMargin.state).toBe("company");
    // A rule of thumb is no setting: only a fact's own confirmation makes it the company's.
    expect(standingsOf(blank, { confirmed: "all" }).fabricLap.state).toBe("assumed");
    expect(standingsOf(blank, { confirmed: new Set<FactKey>(["fabricLap"]) }).fabricLap.state).toBe("company");
    const shipped = { ...blank, wages: [{ role: "Lead", wage: 30 }] };
    expect(standingsOf(shipped).wages.state).toBe("invented");
    expect(standingsOf(shipped, { confirmed: "all" }).wages.state).toBe("company");
  });
});

it("carries the worst state of what is needed", () => {
  expect(worstOf(["yours", "invented", "assumed"])).toBe("invented");
  expect(worstOf(["company", "wrong", "unknown"])).toBe("wrong");
  expect(worstOf([])).toBe("yours");
});

describe.each(["US", "SI"] as const)("the usual values in %s", (system) => {
  it.each(Object.entries(USUAL))("%s may be typed into its cell", (key, { value }) => {
    const fact = FACTS[key as FactKey];
    const typed = inSystem<number | string>(value, system);
    if (fact.type === "number") {
      const [least, most] = inSystem(fact.range, system);
      expect(typed).toBeGreaterThanOrEqual(least);
      expect(typed).toBeLessThanOrEqual(most);
    } else if (fact.type === "choice") expect(inSystem<readonly string[]>(fact.choices, system)).toContain(typed);
    else expect(fact.type).toBe("text");
  });

  it.each(Object.keys(SHIPPED_TABLES))("%s is a table", (key) => {
    expect(FACTS[key as FactKey].type).toBe("table");
  });
});
