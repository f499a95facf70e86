import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draftOf, type DraftWish } from "../../../src/job/draft/draft";
import type { FactKey } from "../../../src/job/facts";
import { generator, inverseNormal } from "../../../src/job/range/normals";
import { rangeOf, type PriceRange } from "../../../src/job/range/range";
import { commonOf } from "../../../src/job/range/together";
import { tries } from "../../effort";
import { sites, SYSTEMS, wishOf } from "../draft/sites";

/** Jobs, and plain draws of each: RANGE_JOBS=20 RANGE_DRAWS=100000 for the whole of it, which takes hours. */
const JOBS = Number(process.env.RANGE_JOBS ?? tries(2, 5));
const DRAWS = Number(process.env.RANGE_DRAWS ?? tries(150, 3000));

function ranged(wish: DraftWish): PriceRange {
  const range = rangeOf(wish);
  if (!range) throw new Error("a site without a price");
  return range;
}

/** Places of the facts in doubt in one plain draw: those that go together share a part. */
function drawn(doubtful: readonly FactKey[], random: () => number): Map<FactKey, number> {
  const shared = new Map<string, number>();
  return new Map(
    doubtful.map((fact) => {
      const own = inverseNormal(random());
      const common = commonOf(fact);
      if (!common) return [fact, own];
      const part = shared.get(common.name) ?? inverseNormal(random());
      shared.set(common.name, part);
      return [fact, Math.sqrt(common.share) * part + Math.sqrt(1 - common.share) * own];
    }),
  );
}

describe("the range of a price", () => {
  it(
    "keeps about the share that it states, held against plain draws of the whole draft",
    { timeout: 60_000 + 20 * JOBS * DRAWS },
    () => {
      const kept = fc.sample(sites, { seed: 77, numRuns: JOBS }).map((site, index) => {
        const wish = wishOf(site, SYSTEMS[index % 2] ?? "US");
        const { low, high } = ranged(wish);
        const random = generator(`plain ${index}`);
        const { doubtful } = draftOf(wish);
        let inside = 0;
        for (let draw = 0; draw < DRAWS; draw++) {
          const price = draftOf({ ...wish, places: drawn(doubtful, random) }).state.price.quoted?.beforeTax ?? 0;
          if (price >= low && price <= high) inside++;
        }
        return inside / DRAWS;
      });
      // Two standard errors of a share counted in so many draws come on top of what the range may be off by.
      const noise = 2 * Math.sqrt((0.8 * 0.2) / DRAWS);
      const told = kept.map((share) => share.toFixed(3)).join(", ");
      for (const share of kept) expect(Math.abs(share - 0.8), told).toBeLessThan(OFF + noise);
      const mean = kept.reduce((sum, share) => sum + share, 0) / kept.length;
      expect(Math.abs(mean - 0.8), told).toBeLessThan(0.02 + noise / Math.sqrt(JOBS));
    },
  );

  it("is the price itself where the one fact in doubt stands at its tenths", () => {
    const wish = wishOf(
      { fall: 0.9, run: 3.6, lip: 0.6, soil: "loam", accessWidth: 2.5, character: "clear sheet" },
      "US",
    );
    const { job, doubtful } = draftOf(wish);
    const [one] = ["trenchLength"] as const;
    const known = Object.fromEntries(doubtful.filter((fact) => fact !== one).map((fact) => [fact, job[fact]]));
    const { low, likely, high, next } = ranged({ ...wish, typed: { ...wish.typed, ...known } });
    const at = (place: number): number =>
      draftOf({ ...wish, typed: { ...wish.typed, ...known }, places: new Map([[one, place]]) }).state.price.quoted
        ?.beforeTax ?? 0;
    expect(next.map(({ fact }) => fact)).toEqual([one]);
    // Prices are raised to 10.
    expect(Math.abs(low - at(-1.28155))).toBeLessThanOrEqual(10);
    expect(Math.abs(high - at(1.28155))).toBeLessThanOrEqual(10);
    expect(likely).toBe(at(0));
  });

  it("is never wider when more is known of what was assumed right", { timeout: 120_000 }, () => {
    for (const [index, site] of fc.sample(sites, { seed: 5, numRuns: 2 }).entries()) {
      const wish = wishOf(site, SYSTEMS[index % 2] ?? "US");
      const { job, doubtful } = draftOf(wish);
      const before = ranged(wish);
      let typed = wish.typed;
      let width = before.high - before.low;
      // The facts become known one by one, those to measure next first.
      for (const { fact } of before.next.slice(0, 5)) {
        expect(doubtful).toContain(fact);
        typed = { ...typed, [fact]: job[fact] };
        const { low, likely, high } = ranged({ ...wish, typed });
        expect(likely, fact).toBe(before.likely);
        expect(high - low, `${fact}: ${high - low} after ${width}`).toBeLessThanOrEqual(width);
        width = high - low;
      }
      expect(width).toBeLessThan(0.7 * (before.high - before.low));
    }
  });

  it("says what to measure next, together all of it", () => {
    const { next } = ranged(wishOf({ fall: 1.1 }, "SI"));
    expect(next.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
    const shares = next.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });
});

/** How far the share kept by one job may be off: the draft chooses pumps and stones in steps, which are looked at in places only. */
const OFF = 0.05;
