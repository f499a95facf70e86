import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { estimate } from "../../src/cli/estimate";
import { buildCompanyBook } from "../../src/workbook/company/build";
import { FACTS, type FactKey } from "../../src/job/facts";
import { standingsOf } from "../../src/job/facts/standing";
import { openWorkbook, type Recalculated } from "../../src/workbook/recalculate";
import { readJob } from "../../src/workbook/jobCells/readJob";

const folder = mkdtempSync(path.join(tmpdir(), "rillwright-draft-"));
afterAll(() => rmSync(folder, { recursive: true }));

const SIX = [
  "--fall",
  "3'2",
  "--run",
  "14 ft",
  "--lip",
  "30 in",
  "--sound",
  "clear",
  "--soil",
  "clay",
  "--gate",
  "34 in",
];
const text = async (args: readonly string[]): Promise<string> => (await estimate(args)).text;

interface Printed {
  readonly answers: Readonly<Record<string, unknown>>;
  readonly price: {
    readonly low: number;
    readonly likely: number;
    readonly high: number;
    readonly remarks: readonly string[];
  } | null;
  readonly complete: Readonly<Record<string, number>>;
  readonly problems: readonly string[];
  readonly facts: Readonly<Record<string, { readonly value: unknown; readonly reason: string }>>;
}

const json = async (args: readonly string[]): Promise<Printed> =>
  JSON.parse(await text([...args, "--json"])) as Printed;

/** Facts of which the cells say another state than the job's own functions. */
function standingsDiffer(workbook: Recalculated): string[] {
  const { job, company, confirmed, drafted } = readJob(workbook);
  const standings = standingsOf(job, { company, confirmed, drafted });
  const shown = (workbook.named("FactStates") ?? []).flat();
  return (Object.keys(FACTS) as FactKey[]).filter((key, row) => standings[key].state !== shown[row]);
}

describe("an estimate from answers", () => {
  it("prints price, range, design, reasons and what to measure next", async () => {
    const page = await text(SIX);
    expect(page).toMatch(/^DRAFT \(US units\)/);
    expect(page).toMatch(/\$[\d,]+, four times in five between \$[\d,]+ and \$[\d,]+/);
    expect(page).toMatch(
      /Invented in the book: prices, wages, burden, production rates, machines, markups\. Sign nothing/,
    );
    expect(page).toMatch(/5 drops of 7 1\/2 in/);
    expect(page).toMatch(/Measure next/);
  });

  it("says where the likely design is the last before the next pump", async () => {
    // One pump of 600 W; with a little less flow two of 215 W each cost less to own, electricity included, and more to buy.
    const { price } = await json(
      ["units=SI", "sound=loud", "fall=0.35 m", "run=2.343 m", "gate=1.61 m", "groundwater=3.5 m"].map(
        (one) => `--${one}`,
      ),
    );
    expect(price?.low, JSON.stringify(price?.remarks)).toBe(price?.likely);
    expect(price?.remarks).toEqual([expect.stringMatching(/at an edge.*few nearby designs cost less\.$/)]);
  });

  it("takes answers in tape language: 3'2 is 38 in, 14 ft 168, 34 in the gate", async () => {
    const { answers, problems } = await json(SIX);
    expect(problems).toEqual([]);
    expect(answers.fallTyped).toBeCloseTo(38 * 0.0254, 12);
    expect(answers.run).toBeCloseTo(168 * 0.0254, 12);
    expect(answers.lips).toEqual([{ width: 30 * 0.0254 }]);
    expect(answers.accessWidth).toBeCloseTo(34 * 0.0254, 12);
    expect(answers).toMatchObject({ soil: "clay", waterCharacter: "clear sheet" });
  });

  it("comes to the same from notes", async () => {
    const [answered, noted] = [
      await json(SIX),
      await json(["--notes", "falls 3'2, 14 ft long, 30 in lip, clay, gate 34, clear sheet"]),
    ];
    expect(noted.answers).toEqual(answered.answers);
    expect(noted.price).toEqual(answered.price);
  });

  it("drafts everything where nothing is known", async () => {
    const { price } = await json(["--fall", "don't know"]);
    expect(price?.likely).toBeGreaterThan(1000);
    expect(price?.low).toBeLessThan(price?.likely ?? 0);
    expect(price?.high).toBeGreaterThan(price?.likely ?? 0);
  });

  it.each<[string, string[], RegExp]>([
    ["no length", ["--fall", "high", "--run", "14 ft"], /--fall: .*"high"/],
    [
      "a length below zero",
      ["--fall", "-3 ft", "--run", "14 ft"],
      /^A fall of -3 ft cannot be: it must be above 0, from 0.1 to 60 ft/,
    ],
    ["a run of nothing", ["--run", "0", "--fall", "3 ft"], /^A run of 0 ft cannot be: it must be above 0/],
    [
      "a lip wider than any",
      ["--lip", "900 in", "--fall", "3 ft"],
      /^A lip of 900 in cannot be: it must be from 1 to 480 in/,
    ],
    ["more fall than run", ["--run", "3 ft", "--fall", "9 ft"], /a wall, not a stream/],
    ["no answer", ["--run", "--fall", "3 ft"], /^--run: no answer stands behind it/],
    ["a soil that is none", ["--soil", "moon", "--run", "14 ft"], /--soil: "moon" is none of loam/],
    ["a sound that is none", ["--sound", "pink", "--run", "14 ft"], /--sound: "pink" is none of/],
    ["notes that say nothing", ["--notes", "dog bites"], /Notes, "dog bites"/],
  ])("says what is wrong with %s, and drafts the rest", async (_, args, sentence) => {
    const { problems, price } = await json(args);
    expect(problems.join(" ")).toMatch(sentence);
    expect(price?.likely).toBeGreaterThan(500);
  });

  it.each<[string, string[], RegExp]>([
    ["an option that is none", ["--fall", "3 ft", "--color", "red"], /Usage: npm run estimate/],
    ["units that are none", ["--fall", "3 ft", "--units", "cubits"], /--units is US or SI/],
    ["a book that is not there", ["--fall", "3 ft", "--book", path.join(folder, "none.xlsx")], /There is no book/],
    ["a file that is no workbook", ["--fall", "3 ft", "--out", path.join(folder, "job.txt")], /must end in \.xlsx/],
  ])("refuses %s", async (_, args, sentence) => {
    await expect(estimate(args)).rejects.toThrow(sentence);
  });

  it(
    "writes a job workbook that holds the draft, marked as assumed, at the price it prints",
    { timeout: 180_000 },
    async () => {
      const file = path.join(folder, "job.xlsx");
      const printed = await text([...SIX, "--out", file]);
      const opened = await openWorkbook(readFileSync(file));
      const workbook = opened.recalculate();
      // The command says how complete the job is as the workbook it writes does.
      const counts = ["Yours", "Company", "Assumed", "Invented", "Unknown", "Wrong"].map((state) =>
        Number(workbook.named(`Facts${state}`)?.[0]?.[0]),
      );
      const { complete } = await json(SIX);
      expect(Object.values(complete)).toEqual(counts);
      expect(printed).toContain(`Facts: ${complete.yours} typed for this job`);
      const price = Number(workbook.named("PriceBeforeTax")?.[0]?.[0]);
      expect(price).toBeGreaterThan(1000);
      expect(printed).toContain(`$${price.toLocaleString("en")}, four times in five`);
      const { job, wrong, drafted } = readJob(workbook);
      expect(wrong).toEqual([]);
      // The answers stand on Start: 38 in, 168 in, 30 in.
      expect(job.fallAsked).toBeCloseTo(38 * 0.0254, 5);
      expect(job.runAsked).toBeCloseTo(168 * 0.0254, 5);
      expect(job.lipAsked).toBeCloseTo(30 * 0.0254, 5);
      expect(job.soilAsked).toBe("clay");
      const stateOf = (shown: Recalculated, name: string): unknown => {
        const row = (shown.named("FactKeys") ?? []).findIndex(([key]) => key === name);
        return shown.named("FactStates")?.[row]?.[0];
      };
      const marked = ["BedWidth", "DropCount", "PoolTable", "RouteTable", "BasinLength"];
      expect(marked.map((name) => stateOf(workbook, name))).toEqual(marked.map(() => "assumed"));
      expect([FACTS.run, FACTS.soil, FACTS.lips].map(({ name }) => stateOf(workbook, name))).toEqual([
        "yours",
        "yours",
        "yours",
      ]);
      expect(drafted.has("bedWidth") && drafted.has("pools")).toBe(true);
      // Both the range and the reasons still take it for a draft.
      expect(workbook.named("DraftWanted")).toEqual([["yes"]]);

      const at = (name: string): string => (opened.names.get(name) ?? "").replace(/\$/g, "").replace(/:.*/, "");
      const changed = opened.recalculate(
        new Map([
          [at("BedWidthYours"), 4],
          [at("PoolTable"), 9],
        ]),
      );
      expect(["BedWidth", "PoolTable", "DropCount"].map((name) => stateOf(changed, name))).toEqual([
        "yours",
        "yours",
        "assumed",
      ]);
      expect(standingsDiffer(changed)).toEqual([]);
    },
  );

  it("takes prices from a company's book", async () => {
    const file = path.join(folder, "book.xlsx");
    writeFileSync(file, await buildCompanyBook("SI"));
    const { price, problems } = await json(["--fall", "0,95 m", "--run", "3.4 m", "--book", file]);
    expect(problems.filter((line) => !/price|day/.test(line))).toEqual([]);
    expect(price === null || price.likely > 0).toBe(true);
  });
});
