import { beforeAll, describe, expect, it } from "vitest";
import { estimate } from "../../../src/cli/estimate";
import type { PriceRange } from "../../../src/job/range/range";
import { assemble } from "../../../src/workbook/assemble";
import { openWorkbook, type OpenedWorkbook } from "../../../src/workbook/recalculate";
import { readJob } from "../../../src/workbook/reckoning/readJob";
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

  it("stand for the facts of Site in both reckonings, and give way to what is typed there", () => {
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
    const shares = table.slice(10).flatMap(([, , , , , share]) => (typeof share === "number" ? [share] : []));
    expect(shares).toEqual(price.next.slice(0, shares.length).map(({ share }) => share));
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
});
