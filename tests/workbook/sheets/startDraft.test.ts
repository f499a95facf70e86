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

  it("show no draft while an answer is wrong", () => {
    const wrong = typed({ FallAsked: "about three", RunAsked: "14 ft" });
    expect(wrong.named("DraftTable")?.flat().join("")).toBe("");
    expect(wrong.named("FactsWrong")?.[0]?.[0]).toBeGreaterThan(0);
  });
});
