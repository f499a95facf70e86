import { beforeAll, describe, expect, it } from "vitest";
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
      new Map(Object.entries(cells).map(([name, value]) => [answerCell(name, book.names) ?? "", value])),
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
});
