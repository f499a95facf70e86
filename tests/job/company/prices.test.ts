import { describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import { blankBook, type Book } from "../../../src/book/types";
import { blankJob, type Job } from "../../../src/job/facts";
import { priceLine, refreshed, takeUpdates } from "../../../src/job/company/refresh";
import { newsForBook, takeNews } from "../../../src/job/company/takeBack";
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
  it("shows every difference, and changes only what is taken", () => {
    const [gravel = {}, tape = {}] = book.products.map(priceLine);
    // 1 April 2026 is 46,113: 46,023 on 1 January, and 31 + 28 + 31 days more.
    const prices = [
      { ...gravel, cost: 57.5, day: 46_113 },
      { ...tape, pack: 25 },
      { code: "OWN", cost: 3 },
    ];
    const updates = refreshed(prices, book);
    expect(updates.map(({ code, changes }) => [code, changes.map(({ field, from, to }) => [field, from, to])])).toEqual(
      [
        [
          "GRAVEL",
          [
            ["cost", 57.5, 60],
            ["day", 46_113, 46_143],
          ],
        ],
        ["TAPE", [["pack", 25, 1]]],
      ],
    );
    const taken = takeUpdates(prices, updates.slice(0, 1));
    expect(taken).toEqual([{ ...gravel, cost: 60, day: 46_143 }, prices[1], prices[2]]);
    expect(refreshed(taken, book).map(({ code }) => code)).toEqual(["TAPE"]);
  });

  it("has nothing to say of the book's own prices, and leaves a price alone that the book lacks", () => {
    expect(refreshed(shippedBook("SI").products.map(priceLine), shippedBook("SI"))).toEqual([]);
    expect(refreshed([{ code: "ASKED", cost: 4 }], book)).toEqual([]);
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
    const taken = takeNews(book, news);
    // 46,200 is 87 days after 1 April 2026: 27 June.
    expect(taken.products[0]).toMatchObject({ code: "GRAVEL", price: 63, day: "2026-06-27", kind: "gravel" });
    expect(taken.products.map(({ code }) => code)).toEqual(["GRAVEL", "TAPE", "ASKED", "LAMP", "Mulch"]);
    expect(takeNews(book, [])).toEqual(book);
  });
});
