import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import type { Book } from "../../../src/book/types";
import { madeJob } from "../../../src/company/files";
import { ownFacts } from "../../../src/workbook/company/newJob";
import { priceUpdates } from "../../../src/workbook/company/priceUpdates";
import { recalculate, type Recalculated } from "../../../src/workbook/recalculate";
import { readJob } from "../../../src/workbook/jobCells/readJob";
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
});

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

  it("shows yen without parts, and rounds to whole ones", () => {
    const styles = strFromU8(unzipSync(made.bytes)["xl/styles.xml"] ?? new Uint8Array());
    // ISO 4217 gives the yen no minor unit.
    expect(styles).toContain('formatCode="#,##0;-#,##0"');
    expect(styles).not.toContain("#,##0.00;-#,##0.00");
    expect(calculated.named("MoneyDigits")).toEqual([[0]]);
  });

  it("is brought up to date with the book, rates and all, each difference shown", () => {
    expect(priceUpdates(ours, calculated).differences).toEqual([]);
    const { labor, machines, pricing, company } = ours;
    const own = <R extends object>(row: R, change: Partial<R>): R => ({ ...row, ...change, invented: false });
    const first = <R extends object>(rows: readonly R[], change: Partial<R>): R[] =>
      rows.map((row, at) => (at === 0 ? own(row, change) : row));
    const later: Book = {
      ...ours,
      company: { ...company, currency: "CAD" },
      labor: {
        ...labor,
        dayHours: 7.5,
        burden: first(labor.burden, { share: 0.125 }),
        wages: first(labor.wages, { wage: 41 }),
        rates: first(labor.rates, { hours: 1.25 }),
        sizes: first(labor.sizes, { pipeTimes: 3 }),
      },
      machines: [...first(machines, { fuel: 9.5, width: 1.5 }), own(machines[0]!, { name: "Barrow" })],
      pricing: { ...pricing, taxRate: 0.12, markups: [0.5, ...pricing.markups.slice(1)] },
    };
    const { differences, left } = priceUpdates(later, calculated);
    const words = new Map(differences.map(({ name, words }) => [name, words]));
    const money = (value: number | undefined): string => (value ?? NaN).toFixed(2);
    const percent = (value: number | undefined): string => `${Number((100 * (value ?? NaN)).toPrecision(6))}%`;
    const [wage, burden, machine, rate] = [labor.wages[0], labor.burden[0], machines[0], labor.rates[0]];
    expect(words.get(`Wage: ${wage?.role}`)).toBe(`wage ${money(wage?.wage)} → 41.00`);
    expect(words.get(`Burden: ${burden?.line}`)).toBe(`share ${percent(burden?.share)} → 12.5%`);
    expect(words.get(`Machine: ${machine?.name}`)).toBe(
      `fuel ${money(machine?.fuel)} → 9.50, way in ${machine?.width} m → 1.5 m`,
    );
    expect(words.get(`Task: ${rate?.task}`)).toBe(`hours ${rate?.hours} → 1.25`);
    expect(words.get("Markup: material")).toBe(`share ${percent(pricing.markups[0])} → 50%`);
    expect(words.get("Tax rate")).toBe("10% → 12%");
    expect(words.get("Currency")).toBe("¥ → CA$");
    expect(differences).toHaveLength(9);
    expect(left).toEqual(["Machine: Barrow stands in the book and not in the job."]);
    // Every cell of the preview holds what the preview says.
    for (const { cells } of differences) {
      for (const { cell, from } of cells) expect(calculated.cells(cell)?.[0]?.[0] ?? "").toBe(from);
    }
  });

  it("takes nothing for the company's own that came with the tool", () => {
    expect(ownFacts(shipped)).toEqual([]);
    expect(new Map(ownFacts(ours)).get("taxRate")).toBe(0.1);
    expect(new Map(ownFacts(ours)).has("wantedMargin")).toBe(false);
  });
});
