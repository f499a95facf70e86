import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import type { Book } from "../../../src/book/types";
import { madeJob } from "../../../src/company/files";
import { ownFacts } from "../../../src/workbook/company/newJob";
import { recalculate, type Recalculated } from "../../../src/workbook/recalculate";
import { readJob } from "../../../src/workbook/reckoning/readJob";
import { builtTemplates } from "../templates";

const shipped = shippedBook("SI");
/** A company that works in yen, with its own words and taxes. */
const ours: Book = {
  ...shipped,
  company: {
    ...shipped.company,
    ...{ name: "Own Name", license: "LIC-7", currency: "JPY", invented: false },
    ...{ scope: ["We carry the soil away."], exclusions: ["Lamps."], terms: ["Half on signing."] },
  },
  // One number is typed over, and the mark of the whole stays: the number is the company's all the same.
  pricing: { ...shipped.pricing, taxName: "Consumption tax", taxRate: 0.1, invented: true },
};

let made: Awaited<ReturnType<typeof madeJob>>;
let calculated: Recalculated;
beforeAll(async () => {
  const blank = (await builtTemplates()).find(({ file }) => file.includes("si-blank"));
  made = await madeJob(ours, blank?.bytes ?? new Uint8Array());
  calculated = await recalculate(made.bytes);
}, 60_000);

describe("a new job from a book", () => {
  it("speaks of the company as its book does", () => {
    const one = (name: string): unknown => calculated.named(name)?.[0]?.[0];
    expect(["CompanyName", "CompanyLicense", "Currency", "TaxName", "TaxRate"].map(one)).toEqual([
      ...["Own Name", "LIC-7", "¥", "Consumption tax", 0.1],
    ]);
    const { job } = readJob(calculated);
    expect([job.scope, job.exclusions, job.terms]).toEqual([
      [{ sentence: "We carry the soil away." }],
      [{ sentence: "Lamps." }],
      [{ sentence: "Half on signing." }],
    ]);
    const quote = (calculated.cells("Quote!A1:F99") ?? []).flat();
    expect(quote.some((cell) => String(cell).includes("License LIC-7"))).toBe(true);
    expect(quote).toContain("With tax (¥)");
  });

  it("shows yen without parts, and says how they are reckoned", () => {
    const styles = strFromU8(unzipSync(made.bytes)["xl/styles.xml"] ?? new Uint8Array());
    // ISO 4217 gives the yen no minor unit.
    expect(styles).toContain('formatCode="#,##0;-#,##0"');
    expect(styles).not.toContain("#,##0.00;-#,##0.00");
    expect(made.notes).toContain("JPY has no cents: amounts are reckoned to a hundredth and shown whole.");
  });

  it("takes nothing for the company's own that came with the tool", () => {
    expect(ownFacts(shipped)).toEqual([]);
    expect(new Map(ownFacts(ours)).get("taxRate")).toBe(0.1);
    expect(new Map(ownFacts(ours)).has("wantedMargin")).toBe(false);
  });
});
