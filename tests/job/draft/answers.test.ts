import { describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import type { UnitSystem } from "../../../src/calc/quantity/unitSystem";
import { companyOf } from "../../../src/job/draft/company";
import { draftOf, type Draft } from "../../../src/job/draft/draft";
import { offersOfBook } from "../../../src/job/draft/offersOfBook";
import { blankJob, type Job } from "../../../src/job/facts";
import { usedJob } from "../../../src/job/facts/standing";

const FOOT = 0.3048;

function draft(system: UnitSystem, typed: Partial<Job>): Draft {
  const book = shippedBook(system);
  const usual = usedJob(blankJob(system), companyOf(book));
  return draftOf({ typed: { ...blankJob(system), ...typed }, offers: offersOfBook(book), usual });
}

const priceOf = ({ state }: Draft): number | undefined => state.price.quoted?.beforeTax;

describe("a level under the berm that is far off", () => {
  // The lip is 0.95 m above a grade of 50 m: 100.4 - 50.95 = 49.45 above it, and 50.95 - 10.4 = 40.55 below.
  it.each<[UnitSystem, Partial<Job>, RegExp]>([
    [
      "SI",
      { fallTyped: 0.95, bermGround: 100.4 },
      /^The ground under the berm at 100.4 m is 49.45 m above the top lip/,
    ],
    ["SI", { fallTyped: 0.95, bermGround: 10.4 }, /^The ground under the berm at 10.4 m is 40.55 m below the top lip/],
    ["SI", { bermGround: 0.4, gradeLevel: 100 }, /at 0.4 m is 99.6 m below the top lip, with finished grade at 100 m/],
    ["SI", { bermGround: 100.4, benchmarkLevel: 200 }, /99.6 m below the top lip, with finished grade at 200 m/],
    ["US", { bermGround: 10.4 * FOOT }, /at 10.4 ft is 89.6 ft below the top lip, with finished grade at 100 ft/],
  ])("is named and left out, and the rest is drafted: %s %o", (system, levels, sentence) => {
    const far = draft(system, { run: 4.2, soil: "clay", ...levels });
    expect(far.unclear.join(" ")).toMatch(sentence);
    const without = { ...levels };
    delete without.bermGround;
    expect(priceOf(far)).toBeGreaterThan(1000);
    expect(priceOf(far)).toBe(priceOf(draft(system, { run: 4.2, soil: "clay", ...without })));
  });

  it("is kept where both levels were shot from one benchmark, whatever its number", () => {
    for (const grade of [10, 50, 1300]) {
      const near = draft("SI", { fallTyped: 0.95, run: 4.2, gradeLevel: grade, bermGround: grade + 0.4 });
      expect(near.unclear).toEqual([]);
      expect(near.job.bermGround).toBe(grade + 0.4);
      expect(priceOf(near)).toBeGreaterThan(1000);
    }
  });

  it("comes to a price as far off as it is kept: 18 m from the lip, over the highest stream", () => {
    for (const off of [-17.9, 17.9]) {
      const far = draft("SI", { fallTyped: 18, run: 60, gradeLevel: 50, bermGround: 68 + off });
      expect(far.unclear).toEqual([]);
      expect(far.state.ground.cut).not.toBeInstanceOf(Error);
    }
  });
});
