import { beforeAll, describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import { blankBook } from "../../../src/book/types";
import { catalogue } from "../../../src/functions/catalogue";
import { COMPANY_BOOKS, shippedCompanyBook } from "../../../src/workbook/company/build";
import { readBook } from "../../../src/workbook/company/readBook";
import { lintWorkbook } from "../../../src/workbook/lint";
import { recalculate } from "../../../src/workbook/recalculate";
import { OFFICES, validate } from "../../bench/validate";

const functions = new Set(catalogue.map(({ name }) => name));
const built: { file: string; system: "US" | "SI"; filled: "demo" | "blank"; bytes: Uint8Array }[] = [];
beforeAll(async () => {
  for (const book of COMPANY_BOOKS) built.push({ ...book, bytes: await shippedCompanyBook(book) });
});

/** Numbers to 8 digits: what typing in units of the trade keeps; blank fields and rows of the sheet aside. */
function plain(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(8));
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== "object" || value === null) return value;
  const kept = Object.entries(value).filter(([key, inner]) => key !== "row" && inner !== undefined);
  return Object.fromEntries(kept.map(([key, inner]) => [key, plain(inner)]));
}

describe("the company books", () => {
  it.each(OFFICES)("open clean in the Open XML validator for %s", (office) => {
    for (const { file, bytes } of built) expect(validate(bytes, office), file).toEqual([]);
  });

  it("pass the lint, and show no error", async () => {
    for (const { file, bytes } of built) {
      expect(lintWorkbook(bytes, { functions }), file).toEqual([]);
      const { results } = await recalculate(bytes);
      const errors = [...results].filter(([, value]) => /^#/.test(String(value)));
      expect(errors, file).toEqual([]);
    }
  });

  it("are read back as they were written", async () => {
    for (const { file, system, filled, bytes } of built) {
      const { book, problems } = await readBook(file, bytes, system);
      expect(problems, file).toEqual([]);
      const written = filled === "demo" ? shippedBook(system) : blankBook(system);
      const markups = filled === "demo" ? {} : { pricing: { ...written.pricing, markups: Array(8).fill(undefined) } };
      expect(plain(book), file).toEqual(plain({ ...written, ...markups }));
    }
  });
});
