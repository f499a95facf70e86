import { beforeAll, describe, expect, it } from "vitest";
import { estimate } from "../../../src/cli/estimate";
import type { PriceRange } from "../../../src/job/range/range";
import { assemble } from "../../../src/workbook/assemble";
import { openWorkbook, type OpenedWorkbook } from "../../../src/workbook/recalculate";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";
import { answerCell } from "../../../src/workbook/yoursName";

const FOOT = 0.3048;

describe("the six questions on Start", () => {
  let book: OpenedWorkbook;
  beforeAll(async () => void (book = await openWorkbook(await writeWorkbook(assemble(sheets, "US", "blank")))));

  const typed = (cells: Readonly<Record<string, string | number>>) =>
    book.recalculate(
      new Map(
        Object.entries(cells).map(([name, value]) => [
          name.includes("!") ? name : (answerCell(name, book.names) ?? ""),
          value,
        ]),
      ),
    );

  it("are worth no price while none is answered", () => {
    const blank = typed({});
    expect(blank.named("StartAnswered")).toEqual([[0]]);
    expect(blank.named("DraftTable")?.flat().join("")).toBe("");
  });

  it("stand for the facts of Site in both calculations, and give way to what is typed there", () => {
    const cells = { FallAsked: "3'2", RunAsked: "14 ft", SoilAsked: "clay", WayInAsked: "7 ft" };
    const answered = typed(cells);
    const { used } = readJob(answered);
    // 3 ft 2 in = 38/12 ft
    expect(answered.named("FallTyped")?.[0]?.[0]).toBeCloseTo(38 / 12, 12);
    expect(used.fallTyped).toBeCloseTo((38 / 12) * FOOT, 12);
    expect([answered.named("SoilKind"), used.soil]).toEqual([[["clay"]], "clay"]);
    expect(used.accessWidth).toBeCloseTo(7 * FOOT, 12);
    const table = answered.named("DraftTable") ?? [];
    const [low, likely, high] = table.slice(0, 3).map((row) => Number(row[1]));
    expect(low).toBeGreaterThan(1000);
    expect(likely).toBeGreaterThan(low ?? 0);
    expect(high).toBeGreaterThan(likely ?? 0);

    const measured = typed({ ...cells, FallTyped: 4, SoilKind: "sand" });
    expect(measured.named("FallTyped")).toEqual([[4]]);
    expect(readJob(measured).used.soil).toBe("sand");
    // A higher fall in softer ground is another job: the draft heard of it.
    expect(Number(measured.named("DraftTable")?.[1]?.[1])).not.toBe(likely);
  });

  it("come to the price, the range and the next measures that the command prints for the same answers", async () => {
    const cells = { FallAsked: "3'2", RunAsked: "14 ft", LipAsked: 30, SoilAsked: "clay", WayInAsked: "34 in" };
    const args = ["--fall", "3'2", "--run", "14 ft", "--lip", "30 in", "--soil", "clay", "--gate", "34 in", "--json"];
    const { price } = JSON.parse((await estimate(args)).text) as { price: PriceRange };
    const table = typed(cells).named("DraftTable") ?? [];
    expect(table.slice(0, 3).map(([, amount]) => amount)).toEqual(
      [price.low, price.likely, price.high].map((amount) => Math.round(100 * amount) / 100),
    );
    const shares = table.slice(12).flatMap(([, , , , , share]) => (typeof share === "number" ? [share] : []));
    expect(shares).toEqual(price.next.slice(0, shares.length).map(({ share }) => share));
  });

  it("say beneath what to measure next what the function remarks on the range", async () => {
    // The likely design is the last before two pumps: as the command says of the same answers.
    const metric = await openWorkbook(await writeWorkbook(assemble(sheets, "SI", "blank")));
    const cells = { FallAsked: 0.35, RunAsked: 2.343, WaterCharacter: "loud", WayInAsked: 1.61, GroundWaterDepth: 3.5 };
    const shown = metric.recalculate(
      new Map(Object.entries(cells).map(([name, value]) => [answerCell(name, metric.names) ?? "", value])),
    );
    const table = shown.named("DraftTable") ?? [];
    const remarks = table.filter(([what]) => what === "Remark").map(([, said]) => [said]);
    expect(remarks).toEqual([[expect.stringMatching(/at an edge/)], [""]]);
    expect(shown.named("DraftRemarks")).toEqual(remarks);
    // The row after the remarks is the first to be measured.
    expect(String(shown.named("DraftNext")?.[0]?.[0]).startsWith(String(table[12]?.[0]))).toBe(true);
    expect(typed({}).named("DraftRemarks")).toEqual([[""], [""]]);
  });

  it("are priced by the workbook's own wages, markups and contingency, and by lips typed on Water", () => {
    const likely = (cells: Readonly<Record<string, string | number>>): number =>
      Number(typed({ RunAsked: "14 ft", ...cells }).named("DraftTable")?.[1]?.[1]);
    const first = (name: string): string => (book.names.get(name) ?? "").replace(/\$/g, "").replace(/:.*/, "");
    const below = (cell: string, down: number, right = 0): string =>
      cell.replace(
        /([A-Z])(\d+)$/,
        (_, column: string, row: string) =>
          String.fromCharCode(column.charCodeAt(0) + right) + String(Number(row) + down),
      );
    const markups = (markup: number): Record<string, number> =>
      Object.fromEntries(Array.from({ length: 8 }, (_, row) => [below(first("Markups"), row), markup]));
    // Everything marked up by 100 % is twice what it costs; the price is raised to tens.
    const cost = likely({ ...markups(0), RoundTo: 0 });
    expect(likely({ ...markups(1), RoundTo: 0 })).toBeCloseTo(2 * cost, 1);
    expect(likely({ ...markups(0), RoundTo: 0, ContingencyShare: 0 })).toBeLessThan(cost);
    expect(likely({ ...markups(0), RoundTo: 0, [below(first("WageTable"), 0, 1)]: 75 })).toBeGreaterThan(cost);
    expect(likely({ ...markups(0), RoundTo: 0, [first("LipTable")]: 60 })).toBe(
      likely({ ...markups(0), RoundTo: 0, LipAsked: 60 }),
    );
  });

  it.each<[string, Readonly<Record<string, string | number>>, RegExp]>([
    ["no number", { FallAsked: "three" }, /^Fix Start: Fall.*; this price leaves it out/],
    ["a run of nothing", { RunAsked: 0, FallAsked: 3 }, /^Fix Start: Run.*; this price leaves it out/],
  ])("say what is wrong where one is %s, and draft the rest", (_, wrong, sentence) => {
    const rest: Readonly<Record<string, string | number>> = { LipAsked: 30, WayInAsked: 7 };
    const shown = typed({ ...rest, ...wrong });
    expect(shown.named("StartFault")?.[0]?.[0]).toMatch(sentence);
    // What is left out is as if it had never been said.
    const kept = Object.entries(wrong).filter(([name, value]) => name === "FallAsked" && value === 3);
    expect(shown.named("DraftTable")).toEqual(typed({ ...rest, ...Object.fromEntries(kept) }).named("DraftTable"));
    expect(Number(shown.named("DraftTable")?.[1]?.[1])).toBeGreaterThan(1000);
  });

  it("say that a fall over the run is a wall, and draft it all the same", () => {
    const wall = typed({ FallAsked: 9, RunAsked: 3 });
    expect(wall.named("StartFault")?.[0]?.[0]).toMatch(/^The fall is more than the run/);
    expect(Number(wall.named("DraftTable")?.[1]?.[1])).toBeGreaterThan(1000);
    expect(typed({ FallAsked: 3 }).named("StartFault")).toEqual([[""]]);
  });

  it("say that ground far off finished grade is one of two levels mistyped, and draft the rest", () => {
    const six = { FallAsked: "3'2", RunAsked: "14 ft" };
    // With the benchmark at its usual 100 ft, ground at 10.4 ft lies some 93 ft below the lip; at 100.4 it is near.
    const far = typed({ ...six, BermGround: 10.4 });
    expect(far.named("StartFault")?.[0]?.[0]).toMatch(/^Ground under the berm is far off finished grade/);
    expect(far.named("DraftTable")).toEqual(typed(six).named("DraftTable"));
    expect(typed({ ...six, BermGround: 100.4 }).named("StartFault")).toEqual([[""]]);
  });

  it("draw the section of the draft while the sheets hold no design, and no line without an answer", () => {
    const blank = typed({});
    expect(blank.named("SectionSays")?.[0]?.[0]).toMatch(/^Nothing to draw yet/);
    const flat = (shown: ReturnType<typeof typed>, name: string): unknown[] => (shown.named(name) ?? []).flat();
    const names = ["SectionBed", "SectionBasin"];
    for (const name of names) expect(new Set(flat(blank, name)), name).toEqual(new Set([0]));

    const six = typed({ FallAsked: "3'2", RunAsked: "14 ft", LipAsked: "30 in", SoilAsked: "clay" });
    expect(six.named("SectionSays")?.[0]?.[0]).toMatch(/is drafted/);
    const table = new Map((six.cells("Facts!AI17:AJ160") ?? []).map(([name, value]) => [name, Number(value)]));
    const [drops = 0, grade = 0, long = 0, deep = 0] = [
      "DropCount",
      "GradeLevel",
      "BasinLength",
      "BasinWaterDepth",
    ].map((name) => table.get(name));
    // 38 in in five drops of 7.6 in, 6 to 8 in each and nearest to 7; the rim lies 3 in below grade as it does where nobody says.
    expect(drops).toBe(5);
    const bed = six.named("SectionBed") ?? [];
    expect(bed[0]).toEqual([0, expect.closeTo(grade + 38 / 12, 9)]);
    expect(bed[3]).toEqual([expect.closeTo(1 + 14 / 5, 9), expect.closeTo(grade + 38 / 12 - 7.6 / 12, 9)]);
    expect(bed.at(-1)).toEqual([expect.closeTo(15, 9), expect.closeTo(grade, 9)]);
    const far = [expect.closeTo(15 + long, 9), expect.closeTo(grade - 0.25 - deep, 9)];
    expect(six.named("SectionBasin")?.[2]).toEqual(far);
    // Nobody knows yet how far the level sinks: both points in one place.
    expect(six.named("SectionBasin")?.[7]).toEqual(six.named("SectionBasin")?.[6]);
    expect(six.named("SectionBasin")?.[6]?.[0]).toBeCloseTo(15, 9);
    // What is typed on a sheet is drawn as typed, a wrong answer as if it were none.
    const typedToo = typed({ FallAsked: 3, RunAsked: 14, BasinLength: 6, DropCount: 4 });
    expect(typedToo.named("SectionBasin")?.[2]?.[0]).toBeCloseTo(21, 9);
    expect(typedToo.named("SectionBed")?.[3]?.[0]).toBeCloseTo(4.5, 9);
    const wrong = typed({ FallAsked: "three", RunAsked: 14, FallFrom: "somewhere" });
    expect(
      [...names, "SectionSays"].flatMap((name) => flat(wrong, name)).filter((one) => /^#/.test(String(one))),
    ).toEqual([]);
  });
});
