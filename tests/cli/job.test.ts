import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { shippedBook } from "../../src/book/shipped";
import type { Book } from "../../src/book/types";
import { job } from "../../src/cli/job";
import { buildWorkbook } from "../../src/workbook/build";
import { buildCompanyBook } from "../../src/workbook/company/build";
import { readBook } from "../../src/workbook/company/readBook";
import { logoOf, readLogo } from "../../src/workbook/logo";
import { recalculate } from "../../src/workbook/recalculate";
import { readJob } from "../../src/workbook/jobCells/readJob";
import { Package } from "../../src/xlsx/package";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
const file = (name: string): string => path.join(folder, name);
afterAll(() => rmSync(folder, { recursive: true }));

const shipped = shippedBook("US");
const logo = readLogo(new Uint8Array(readFileSync("manifest/icons/icon-64.png")));
/** The shipped book a month later: the 3 in pipe is dearer, and asked for. */
const later: Book = {
  ...shipped,
  products: shipped.products.map((product) =>
    product.code === "PIPE 3 Sch 40 PVC" ? { ...product, price: 4.4, day: "2026-05-02", invented: false } : product,
  ),
};

beforeAll(async () => {
  const book = { ...shipped, company: { ...shipped.company, logo } };
  writeFileSync(file("book.xlsx"), await buildCompanyBook("US", book));
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

it("puts the book's logo over the quote, in a row that makes room for it", async () => {
  const made = new Uint8Array(readFileSync(file("job.xlsx")));
  expect(logoOf(made)?.bytes).toEqual(logo.bytes);
  const height = (bytes: Uint8Array): number => {
    const parts = new Package(bytes);
    const [, ht = ""] = /<row r="1"[^>]* ht="([\d.]+)"/.exec(parts.text(parts.sheets().get("Quote") ?? "")) ?? [];
    return Number(ht);
  };
  // 56 pixels of 1/96 in are 42 points.
  expect(height(made) - height(await buildWorkbook("US", "blank"))).toBe(42);
});

it("tells of answers that are none and of a currency that nobody knows, and takes another logo", async () => {
  const said = await job([
    ...["--book", file("book.xlsx"), "--out", file("wrong.xlsx")],
    ...["--answers", "Run=-5", "Currency=UDS", "--logo", "manifest/icons/icon-32.png"],
  ]);
  expect(said).toMatch(/^Site!B\d+ holds "-5", which does not answer: /m);
  // ISO 4217 has USD, and no UDS.
  expect(said).toContain("The currency UDS is not an ISO 4217 code; check it on Site.");
  const made = new Package(new Uint8Array(readFileSync(file("wrong.xlsx"))));
  expect(logoOf(new Uint8Array(readFileSync(file("wrong.xlsx"))))?.bytes).toEqual(
    new Uint8Array(readFileSync("manifest/icons/icon-32.png")),
  );
  expect(made.text(made.sheets().get("Site") ?? "")).toContain("UDS is not an ISO 4217 code");
});

it("takes no logo that is no picture", async () => {
  const asked = job(["--book", file("book.xlsx"), "--out", file("no.xlsx"), "--logo", "package.json"]);
  await expect(asked).rejects.toThrow("package.json is not a PNG, JPEG or SVG picture.");
});

it("never writes over a file", async () => {
  await expect(job(["--book", file("book.xlsx"), "--out", file("job.xlsx")])).rejects.toThrow(
    "job.xlsx is there already.",
  );
});

it("says how a job's prices differ from the book of today, and changes nothing", async () => {
  const before = readFileSync(file("job.xlsx"));
  expect(await job(["--book", file("later.xlsx"), "--refresh", file("job.xlsx")])).toContain(
    "1 line differs from the book; nothing was changed:\n" +
      "  PIPE 3 Sch 40 PVC: price 4.15 → 4.40, price of 2026-04-01 → 2026-05-02, mark invented → nothing",
  );
  expect(readFileSync(file("job.xlsx")).equals(before)).toBe(true);
  expect(await job(["--book", file("book.xlsx"), "--refresh", file("job.xlsx")])).toBe(
    "The job's prices are those of the book.",
  );
});

it("brings prices up to date in a new file, and only what is wanted", async () => {
  const args = ["--book", file("later.xlsx"), "--refresh", file("job.xlsx")];
  await expect(job([...args, "--only", "GRAVEL", "--out", file("none.xlsx")])).rejects.toThrow(
    'Nothing differs in "GRAVEL"',
  );
  expect(await job([...args, "--out", file("new-job.xlsx")])).toContain("1 line differs from the book; taken into");
  const { job: made } = readJob(await recalculate(readFileSync(file("new-job.xlsx"))));
  const pipe = made.prices.find(({ code }) => code === "PIPE 3 Sch 40 PVC");
  // 2 May 2026 is 31 days after 1 April, which is day 46,113.
  expect(pipe).toMatchObject({ cost: 4.4, day: 46_144 });
  expect(pipe?.mark).toBeUndefined();
  expect(await job(["--book", file("later.xlsx"), "--refresh", file("new-job.xlsx")])).toBe(
    "The job's prices are those of the book.",
  );
});

it("takes a finished job's news into a new book, and leaves the old one", async () => {
  // What the job has from the later book is news for the first.
  const args = ["--book", file("book.xlsx"), "--news", file("new-job.xlsx")];
  const words = "PIPE 3 Sch 40 PVC: price 4.15 → 4.40 by the ft, price of 2026-04-01 → 2026-05-02";
  expect(await job(args)).toBe(`1 row is news for the book; nothing was changed:\n  ${words}`);
  await job([...args, "--out", file("new-book.xlsx")]);
  const { book } = await readBook("Book.xlsx", readFileSync(file("new-book.xlsx")));
  expect(book.products.find(({ code }) => code === "PIPE 3 Sch 40 PVC")).toMatchObject({
    ...{ price: 4.4, day: "2026-05-02", invented: false },
  });
  expect(book.products).toHaveLength(shipped.products.length);
  expect(await job(["--book", file("new-book.xlsx"), "--news", file("new-job.xlsx")])).toBe(
    "The job has nothing that the book lacks.",
  );
});

it("takes a maker's curves into a new book, converted by their headings", async () => {
  writeFileSync(
    file("pumps.csv"),
    "Pump;Price;Shut-off head (m);Flow 1 (L/min);Head 1 (kPa)\nFern 40;412,50;6,1;100;39,2266\nBad;1;2",
  );
  const args = ["--book", file("book.xlsx"), "--pumps", file("pumps.csv")];
  const said = await job([...args, "--out", file("pump-book.xlsx")]);
  expect(said).toContain(
    "pumps.csv: 1 pumps read, decimal comma, from the columns Pump, Price, Shut-off head (m), Flow 1 (L/min), Head 1 (kPa).",
  );
  expect(said).toContain("Left out: row 3 (Bad): needs at least one point with a flow.");
  const { book } = await readBook("Book.xlsx", readFileSync(file("pump-book.xlsx")));
  const pump = book.pumps.find(({ name }) => name === "Fern 40");
  // 100 L/min are 0.1 m³ / 60 s; 39.2266 kPa are 39.2266 / 9.80665 = 4 m of water (NIST SP 811, appendix B).
  expect(pump).toMatchObject({ price: 412.5, invented: false });
  expect(pump?.curve.map(({ flow, head }) => [flow, head])).toEqual([
    [0, expect.closeTo(6.1, 6)],
    [expect.closeTo(0.1 / 60, 8), expect.closeTo(4, 6)],
  ]);
});

it("refuses what is no job, no book, and no list, in a sentence", async () => {
  const refused = async (...args: string[]): Promise<string> =>
    job(args).then(
      () => "",
      (error: unknown) => String((error as Error).message),
    );
  const book = ["--book", file("book.xlsx")];
  expect(await refused(...book, "--news", file("later.xlsx"))).toBe(
    "later.xlsx is a company book, not a job: it has no price list to compare.",
  );
  expect(await refused("--book", file("job.xlsx"), "--refresh", file("job.xlsx"))).toContain(
    "job.xlsx is a job, not a company book",
  );
  expect(await refused(...book, "--pumps", file("job.xlsx"))).toContain("the file is a workbook, not a CSV file");
  expect(await refused(...book, "--refresh", file("gone.xlsx"))).toContain("There is no file");
});

it("says how it is used", async () => {
  await expect(job(["--book", "x.xlsx"])).rejects.toThrow("Usage: npm run job");
  await expect(job(["--book", file("book.xlsx"), "--out", file("a.xlsx"), "--answers", "Nonsense=1"])).rejects.toThrow(
    '"Nonsense=1" names no fact of a job',
  );
});
