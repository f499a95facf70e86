import { describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import type { Book } from "../../../src/book/types";
import { companyOf } from "../../../src/job/draft/company";
import { draftOf } from "../../../src/job/draft/draft";
import { offersOfBook } from "../../../src/job/draft/offersOfBook";
import { blankJob } from "../../../src/job/facts";
import { usedJob } from "../../../src/job/facts/standing";
import { rangeOf } from "../../../src/job/range/range";
import { wishOf } from "./sites";

describe("a draft by a company's book", () => {
  const shipped = shippedBook("US");
  const own = { invented: false } as const;
  const { labor, pricing } = shipped;
  const book: Book = {
    ...shipped,
    labor: {
      ...labor,
      wages: [
        { role: "Lead", wage: 48, people: 1, ...own },
        { role: "Hand", wage: 32, people: 1, ...own },
      ],
      burden: [{ line: "All of it", share: 0.5, ...own }],
      rates: labor.rates.map((rate) => (rate.task === "Pipe" ? { ...rate, hours: 0.2, ...own } : rate)),
    },
    pricing: { ...pricing, markups: pricing.markups.map(() => 0.2), ...own },
  };
  const { typed } = wishOf({ fall: 0.85, run: 3.6, lip: 0.6, soil: "loam", accessWidth: 2.4 }, "US");
  const drafted = (of: Book) => {
    const wish = { typed, offers: offersOfBook(of), usual: usedJob(blankJob("US"), companyOf(of)) };
    const draft = draftOf(wish);
    return { ...draft, range: rangeOf(wish, draft) };
  };
  const [ours, theirs] = [drafted(book), drafted(shipped)];

  it("takes its wages with their burden: (48 + 32) / 2 x 1.5 = 60 an hour, on a crew of 2", () => {
    expect(ours.state.labor.laborRate).toBe(60);
    expect(ours.state.labor.crewSize).toBe(2);
    expect(theirs.state.labor.laborRate).toBe(41.73);
  });

  it("takes its production rates: 0.2 h a foot of pipe in place of 0.11", () => {
    const { tasks, pipeTimes } = ours.state.labor;
    const feet = Number(tasks[7]?.quantity);
    expect(tasks[7]?.hours).toBeCloseTo(feet * 0.2 * Number(pipeTimes) * (ours.job.difficulty ?? NaN), 9);
  });

  it("takes its markups, in the price and in its range", () => {
    // Every cost kind is marked up by a fifth, overhead and contingency on top of cost as well: the price is 1.2 times all
    // of it, to the next 10.
    const { quoted } = ours.state.price;
    expect(ours.range?.likely).toBe(quoted?.beforeTax);
    expect(ours.range?.low).not.toBe(theirs.range?.low);
    expect(ours.range?.high).not.toBe(theirs.range?.high);
  });
});
