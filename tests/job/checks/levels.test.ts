import { describe, expect, it } from "vitest";
import type { UnitSystem } from "../../../src/calc/quantity/unitSystem";
import { evaluate } from "../../../src/job/evaluate";
import { blankJob, type Job } from "../../../src/job/facts";
import { usedJob } from "../../../src/job/facts/standing";

const FOOT = 0.3048;

function levelsApart(system: UnitSystem, typed: Partial<Job>) {
  const { checks } = evaluate(usedJob({ ...blankJob(system), ...typed }, {}));
  const found = checks.find(({ label }) => label.startsWith("Levels apart"));
  if (!found) throw new Error("there is no such check");
  return found;
}

describe("levels that cannot belong to one job", () => {
  it("are named where nothing but benchmark and finished grade is known", () => {
    const { verdict, value, cure } = levelsApart("US", { benchmarkLevel: 100 * FOOT, gradeLevel: 3 * FOOT });
    // 100 - 3 = 97 ft.
    expect(Number(value) / FOOT).toBeCloseTo(97, 9);
    expect(verdict).toBe("FIX");
    expect(cure).toMatch(/^Finished grade 3.00; benchmark, berm and shots 100.00 to 100.00:/);
  });

  it("are named by the ground under the berm, without shots", () => {
    const levels = { benchmarkLevel: 50, gradeLevel: 49.8, fallTyped: 1.2, bermGround: 5.04 };
    const { verdict, value, cure } = levelsApart("SI", levels);
    // 50 - 5.04 - 1.2 = 43.76 m.
    expect(value).toBeCloseTo(43.76, 9);
    expect(verdict).toBe("FIX");
    expect(cure).toMatch(/^Finished grade 49.80; benchmark, berm and shots 5.04 to 50.00:/);
    expect(levelsApart("SI", { ...levels, bermGround: 50.4 }).verdict).toBe("OK");
  });

  it("are named by shots, whose levels follow from the benchmark", () => {
    const shots = [
      { point: "Benchmark", backsight: 1.4 },
      { point: "Top lip", intermediate: 1.1 },
    ];
    const job = { benchmarkLevel: 50, shotStart: "benchmark", gradeLevel: 500, shots } as unknown as Partial<Job>;
    const { verdict, cure } = levelsApart("SI", job);
    expect(verdict).toBe("FIX");
    // 50 + 1.4 - 1.1 = 50.3.
    expect(cure).toMatch(/benchmark, berm and shots 50.00 to 50.30:/);
  });

  it("may lie as far apart as the highest stream falls, and that fall besides", () => {
    const highest = { fallTyped: 18, gradeLevel: 50, bermGround: 68, benchmarkLevel: 49 };
    expect(levelsApart("SI", highest).verdict).toBe("OK");
    // The highest fall that may be typed is 18 m. 68 - 32.1 - 18 = 17.9 m, 68 - 31.9 - 18 = 18.1 m.
    expect(levelsApart("SI", { ...highest, benchmarkLevel: 32.1 }).verdict).toBe("OK");
    expect(levelsApart("SI", { ...highest, benchmarkLevel: 31.9 }).verdict).toBe("FIX");
  });
});
