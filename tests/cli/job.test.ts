import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { shippedBook } from "../../src/book/shipped";
import type { Book } from "../../src/book/types";
import { job } from "../../src/cli/job";
import { buildCompanyBook } from "../../src/workbook/company/build";
import { recalculate } from "../../src/workbook/recalculate";
import { readJob } from "../../src/workbook/reckoning/readJob";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
const file = (name: string): string => path.join(folder, name);
afterAll(() => rmSync(folder, { recursive: true }));

const shipped = shippedBook("US");
/** The shipped book a month later: the 3 in pipe is dearer, and asked for. */
const later: Book = {
  ...shipped,
  products: shipped.products.map((product) =>
    product.code === "PIPE 3 Sch 40 PVC" ? { ...product, price: 4.4, day: "2026-05-02", invented: false } : product,
  ),
};

beforeAll(async () => {
  writeFileSync(file("book.xlsx"), await buildCompanyBook("US", shipped));
  writeFileSync(file("later.xlsx"), await buildCompanyBook("US", later));
  await job(["--book", file("book.xlsx"), "--out", file("job.xlsx"), "--answers", "Run=31", "JobName=Fern Gully"]);
}, 120_000);

it("makes a job with its own copy of the book's prices, their days and their marks", async () => {
  const calculated = await recalculate(readFileSync(file("job.xlsx")));
  const { job: made, wrong } = readJob(calculated);
  expect(wrong).toEqual([]);
  // 31 ft are 9.4488 m.
  expect([made.run, made.jobName]).toEqual([expect.closeTo(9.4488, 9), "Fern Gully"]);
  // 1 April 2026 is day 46,113.
  expect(made.prices.find(({ code }) => code === "PIPE 3 Sch 40 PVC")).toMatchObject({
    ...{ cost: 4.15, unit: "ft", pack: 10, day: 46_113, mark: "invented" },
  });
  expect(made.prices.find(({ code }) => code === "PUMPWELL")).toMatchObject({
    cost: 187,
    supplier: "Pond yard (demo)",
  });
  expect(calculated.named("RateRepeats")?.[0]?.[0]).toBe(0);
  expect(made.wages.map(({ wage }) => wage)).toEqual([37.5, 31.25, 23.4, 33.8]);
  expect(made.pumps).toHaveLength(6);
});

it("never writes over a file", async () => {
  await expect(job(["--book", file("book.xlsx"), "--out", file("job.xlsx")])).rejects.toThrow("EEXIST");
});

it("says how a job's prices differ from the book of today, and changes nothing", async () => {
  const before = readFileSync(file("job.xlsx"));
  expect(await job(["--book", file("later.xlsx"), "--refresh", file("job.xlsx")])).toContain(
    "1 line differs from the book; nothing was changed:\n  PIPE 3 Sch 40 PVC: cost 4.15 → 4.4, day 46113 → 46144",
  );
  expect(readFileSync(file("job.xlsx")).equals(before)).toBe(true);
  expect(await job(["--book", file("book.xlsx"), "--refresh", file("job.xlsx")])).toBe(
    "The job's prices are those of the book.",
  );
});

it("says how it is used", async () => {
  await expect(job(["--book", "x.xlsx"])).rejects.toThrow("Usage: npm run job");
  await expect(job(["--book", file("book.xlsx"), "--out", file("a.xlsx"), "--answers", "Nonsense=1"])).rejects.toThrow(
    '"Nonsense=1" names no fact of a job',
  );
});
