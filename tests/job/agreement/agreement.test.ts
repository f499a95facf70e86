import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { evaluate } from "../../../src/job/evaluate";
import { RESULTS, type Topic } from "../../../src/job/results";
import { compareCalculations } from "../../../src/workbook/jobCells/compare";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import type { OpenedWorkbook } from "../../../src/workbook/recalculate";
import { tries } from "../../effort";
import { jobIn, sameJob, type TrialJob } from "./jobs";
import { demoOf, calculateBoth, typedCells } from "./workbooks";

/** Jobs of each run, half of them in either system; `npm run agree` tries 300. */
const RUNS = Number(process.env.AGREE_RUNS ?? tries(20, 60));
const SEED = Number(process.env.AGREE_SEED ?? 20_261_128);

/** What a job differs in, and what was typed, for whoever has to find out why. */
function disagreement(workbook: OpenedWorkbook, trial: TrialJob): string[] {
  const both = calculateBoth(workbook, trial);
  const found = compareCalculations(both.workbook, both.state, both.job);
  if (found.length === 0) return [];
  const typed = [...typedCells(workbook, trial)].filter(([, value]) => value !== "");
  return [
    ...found.map(
      ({ topic, name, workbook: cell, job }) => `${topic}: ${name} is ${cell} by the cells, ${job} by the job`,
    ),
    `typed into the ${trial.system} demo: ${typed.map(([cell, value]) => `${cell}=${value}`).join(" ")}`,
  ];
}

describe.each(["US", "SI"] as const)("random jobs in %s", (system) => {
  it("are calculated alike by the cells and by the job's functions", { timeout: 600_000 }, async () => {
    const workbook = await demoOf(system);
    fc.assert(
      fc.property(jobIn(system), (trial) => {
        expect(disagreement(workbook, trial)).toEqual([]);
      }),
      { seed: SEED, numRuns: Math.ceil(RUNS / 2), interruptAfterTimeLimit: 540_000, markInterruptAsFailure: true },
    );
  });

  it.each(["JPY", "KWD"])(
    "are calculated alike in a currency without cents, or with thousandths, %s",
    async (currency) => {
      expect(disagreement(await demoOf(system), { system, facts: { currency } })).toEqual([]);
    },
  );
});

describe("the same job typed in US and in SI units", () => {
  /** Topics without money, whose prices are for a unit of the system. */
  const topics: readonly Topic[] = ["water", "pump", "basin", "liner", "stone", "ground", "earth", "levels"];

  it("agrees in every quantity", { timeout: 600_000 }, async () => {
    const books = { US: await demoOf("US"), SI: await demoOf("SI") };
    fc.assert(
      fc.property(sameJob, (facts) => {
        const [american, metric] = (["US", "SI"] as const).map((system) => {
          const typed = typedCells(books[system], { system, facts }, "all");
          const { used: job } = readJob(books[system].recalculate(typed));
          const state = evaluate(job);
          // Inside the job, where both are in SI.
          return topics.flatMap((topic) =>
            RESULTS[topic].flatMap(({ name, kind, values }) =>
              kind === "money" ? [] : values(state, job).map((value) => ({ name, value })),
            ),
          );
        });
        const differing = american?.filter(({ value }, index) => !same(value, metric?.[index]?.value));
        expect(differing).toEqual([]);
        expect(american).toHaveLength(metric?.length ?? 0);
      }),
      { seed: SEED, numRuns: Math.ceil(RUNS / 10) },
    );
  });
});

/** Numbers within a billionth; whatever else, of one kind. */
function same(a: unknown, b: unknown): boolean {
  if (typeof a !== "number" || typeof b !== "number") return typeof a === typeof b;
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));
}
