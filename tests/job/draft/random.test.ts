import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draftOf } from "../../../src/job/draft/draft";
import { FACTS, type FactKey } from "../../../src/job/facts";
import { inSystem, toSi } from "../../../src/job/facts/units";
import { tries } from "../../effort";
import { sites, SYSTEMS, wishOf } from "./sites";

/** Sites that are tried; 1000 where asked for. */
const RUNS = Number(process.env.DRAFT_SITES ?? tries(60, 500));
const PATIENCE = { timeout: 60_000 + 500 * RUNS };

/**
 * Checks that stop a job and that the draft decides. It may fail one of them only where nothing in the book, the ground or
 * the way in allows better; then it says so. A site of these sizes can always be built but for its pump.
 */
const MAY_STOP = new Set(["Flow delivered", "Shut-off head above the lift", "Works on its curve"]);
/** Nothing in the book that lifts comes through less than this, m: 3 ft and 0.9 m, its stone cart. */
const NARROWEST = { US: 3 * 0.3048, SI: 0.9 } as const;

describe.each(SYSTEMS)("drafts of random sites in %s units", (system) => {
  it("price every site, and say what they cannot meet and what would help", PATIENCE, () => {
    fc.assert(
      fc.property(sites, (site) => {
        const wish = wishOf(site, system);
        const draft = draftOf(wish);
        expect(draft.state.price.quoted?.beforeTax ?? 0).toBeGreaterThan(1000);
        expect(draft.unclear).toEqual([]);
        for (const { help, label } of draft.shortfalls) expect(help.length, label).toBeGreaterThan(20);
        const stops = draft.shortfalls.filter(({ ofDesign, verdict }) => ofDesign && verdict !== "LOOK");
        const shut = (draft.job.accessWidth ?? Infinity) < NARROWEST[system];
        const mayStop = new Set([...MAY_STOP, ...(shut ? ["Heaviest stone for the machine"] : [])]);
        expect(stops.map(({ label }) => label).filter((label) => !mayStop.has(label))).toEqual([]);
        expect(stops.filter(({ verdict }) => verdict === "ERROR")).toEqual([]);
      }),
      { seed: 20261128, numRuns: RUNS },
    );
  });

  it("keep every number within what may be typed, and give a reason for each", PATIENCE, () => {
    fc.assert(
      fc.property(sites, (site) => {
        const wish = wishOf(site, system);
        const { job, facts } = draftOf(wish);
        for (const [key, { reason, source }] of facts) {
          expect(reason, key).toMatch(/\.$/);
          expect(source, key).not.toBe("");
          const fact = FACTS[key as FactKey];
          const value = job[key as FactKey];
          if (fact.type !== "number" || typeof value !== "number") continue;
          const [least, most] = inSystem(fact.range, system).map((end) => toSi(fact.kind, end, system));
          expect(value, key).toBeGreaterThanOrEqual((least ?? 0) - 1e-9);
          expect(value, key).toBeLessThanOrEqual((most ?? 0) + 1e-9);
        }
      }),
      { seed: 4, numRuns: Math.min(RUNS, 100) },
    );
  });

  it("leave alone what is typed", () => {
    fc.assert(
      fc.property(sites, (site) => {
        const wish = wishOf(site, system);
        const { job, facts } = draftOf(wish);
        for (const [key, value] of Object.entries(wish.typed)) {
          if (value === undefined || (Array.isArray(value) && value.length === 0)) continue;
          expect(job[key as FactKey], key).toEqual(value);
          expect(facts.has(key as FactKey), key).toBe(false);
        }
      }),
      { seed: 5, numRuns: Math.min(RUNS, 30) },
    );
  });
});
