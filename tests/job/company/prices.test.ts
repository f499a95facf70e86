import { describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import { blankBook, type Book } from "../../../src/book/types";
import { blankJob, type Job } from "../../../src/job/facts";
import { bookOfLines } from "../../../src/job/company/bookOfLines";
import { offersOfJob } from "../../../src/job/draft/offersOfJob";
import { offersOfBook } from "../../../src/job/draft/offersOfBook";
import { newPrices } from "../../../src/job/company/newPrices";
import { refreshed } from "../../../src/job/company/refresh";
import { newsForBook } from "../../../src/job/company/takeBack";
import { product } from "../../book/products";

const book: Book = {
  ...blankBook("US"),
  products: [
    product({ code: "GRAVEL", kind: "gravel", unit: "ton", price: 60, day: "2026-05-01" }),
    product({ code: "TAPE", kind: "seam tape", unit: "ft", price: 2, day: "2026-05-01" }),
    product({ code: "ASKED", kind: "other", price: undefined }),
  ],
};

describe("bringing a job's prices up to date", () => {
  it("shows every difference, and says what cannot be compared", () => {
    const [gravel = {}, tape = {}] = newPrices(book).lines;
    // 1 April 2026 is 46,113: 46,023 on 1 January, and 31 + 28 + 31 days more.
    const prices = [
      { ...gravel, cost: 57.5, day: 46_113 },
      { ...tape, pack: 25, mark: "invented" },
      { code: "OWN", cost: 3 },
      { ...tape, unit: "roll", cost: 190 },
    ];
    const { updates, left } = refreshed(prices, book);
    expect(updates.map(({ code, at, changes }) => [code, at, changes])).toEqual([
      [
        "GRAVEL",
        0,
        [
          { field: "cost", from: 57.5, to: 60 },
          { field: "day", from: 46_113, to: 46_143 },
        ],
      ],
      [
        "SEAMTAPE",
        1,
        [
          { field: "pack", from: 25, to: 1 },
          { field: "mark", from: "invented", to: undefined },
        ],
      ],
    ]);
    expect(left).toEqual([{ name: "SEAMTAPE", reason: "is priced by the roll in the job and by the ft in the book" }]);
  });

  it("has nothing to say of the book's own prices, and leaves a price alone that the book lacks", () => {
    const shipped = shippedBook("SI");
    expect(refreshed(newPrices(shipped).lines, shipped)).toEqual({ updates: [], left: [] });
    expect(refreshed([{ code: "ASKED", cost: 4 }], book).updates).toEqual([]);
  });

  it("prices by the unit of the takeoff what the book buys by another", () => {
    const roll = product({ code: "R", kind: "fabric", size: 4, length: 50, unit: "roll", price: 300 });
    const metric: Book = { ...blankBook("SI"), products: [roll] };
    const [line = {}] = newPrices(metric).lines;
    // A roll of 4 m by 50 m holds 200 m²: 300 / 200 = 1.50 a m².
    expect([line.unit, line.cost]).toEqual(["m²", 1.5]);
    expect(refreshed([{ ...line, cost: 1.4 }], metric).updates[0]?.changes).toEqual([
      { field: "cost", from: 1.4, to: 1.5 },
    ]);
    // Back again: 1.65 a m² are 330 a roll.
    const job = { ...blankJob("SI"), prices: [{ ...line, cost: 1.65, day: 46_500 }] };
    expect(newsForBook(job, metric).news.map(({ to }) => [to.code, to.unit, to.price])).toEqual([["R", "roll", 330]]);
  });
});

describe("what a job's own price list offers a draft", () => {
  it("is what the book offers, size by size", () => {
    const shipped = shippedBook("US");
    const made = bookOfLines(newPrices(shipped).lines, shipped);
    const [held, listed] = [shipped, made ?? blankBook("US")].map(offersOfBook);
    for (const kind of ["pipes", "modules", "tubs", "boxes", "boulders", "rolls", "machines"] as const) {
      expect(held?.[kind].length, kind).toBeGreaterThan(0);
      expect(listed?.[kind].length, kind).toBe(held?.[kind].length);
    }
    // The largest tub: 460 gal in a box of 96 x 66 x 26 in, at 1,090 and 60 of freight.
    const inch = 0.0254;
    for (const offers of [listed, offersOfJob({ system: "US", prices: newPrices(shipped).lines })]) {
      const largest = offers?.tubs[3];
      expect([largest?.length, largest?.width, largest?.height]).toEqual([96 * inch, 66 * inch, 26 * inch]);
      expect(largest?.volume).toBeCloseTo(460 * 231 * inch ** 3, 9);
      expect(largest?.price).toBe(1150);
    }
    expect(bookOfLines([{ code: "PIPE-1", unit: "ft", cost: 4 }], shipped)).toBeUndefined();
  });

  it("asks for gravel and basin stone each by its own grade", () => {
    const prices = [
      ["GRAVEL 3/8 in", 60],
      ["GRAVEL 4 in", 20],
      ["BASINSTONE 4 in", 90],
      ["BASINSTONE 3/8 in", 30],
    ].map(([code, cost]) => ({ code: String(code), cost: Number(cost) }));
    const offers = offersOfJob({ system: "US", gravel: "3/8 in", basinStone: "4 in", prices });
    // A short ton is 907.18474 kg (NIST SP 811, appendix B).
    expect([offers.price("gravel") * 907.18474, offers.price("basin stone") * 907.18474]).toEqual([
      expect.closeTo(60, 9),
      expect.closeTo(90, 9),
    ]);
  });
});

describe("from a finished job back into the book", () => {
  const job = (some: Partial<Job>): Job => ({ ...blankJob("US"), ...some });

  it("offers newer prices and new products, and takes what is chosen", () => {
    const { news, left } = newsForBook(
      job({
        prices: [
          { code: "gravel", unit: "ton", cost: 63, day: 46_200 },
          { code: "TAPE", unit: "ft", cost: 1.8, day: 46_100 },
          { code: "LAMP", description: "Lamp", unit: "each", cost: 44, supplier: "Light yard" },
        ],
        ownLines: [
          { description: "Mulch", unit: "yd³", need: 2, price: 38, kind: "material" },
          { description: "Crane day", unit: "day", need: 1, price: 900 },
          { code: "LAMP", need: 3, price: 44 },
        ],
      }),
      book,
    );
    expect(news.map(({ what, to }) => [what, to.code, to.price, to.invented])).toEqual([
      ["price", "GRAVEL", 63, false],
      ["product", "LAMP", 44, false],
      ["product", "Mulch", 38, false],
    ]);
    expect(left).toEqual([
      { name: "TAPE", reason: "its price in the book is newer (2026-05-01)" },
      { name: "Crane day", reason: 'the unit "day" is no unit of sale of the book' },
    ]);
    // 46,200 is 87 days after 1 April 2026: 27 June.
    expect(news[0]?.to).toMatchObject({ code: "GRAVEL", day: "2026-06-27", kind: "gravel" });
  });

  it("learns kind and size from the takeoff's own code, and nothing from what is invented", () => {
    const prices = [
      { code: "PIPE 3 Sch 40 PVC", unit: "ft", cost: 4.4 },
      { code: "LAMP", unit: "each", cost: 44, mark: "invented" },
    ];
    const ownLines = [{ code: "LAMP", need: 3, price: 44 }];
    expect(newsForBook(job({ prices, ownLines }), book).news.map(({ to }) => to)).toEqual([
      expect.objectContaining({ kind: "pipe", type: "Sch 40 PVC", unit: "ft", price: 4.4, invented: false }),
    ]);
  });
});
