import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FACTS, type FactKey } from "../../../src/job/facts";
import { standingsOf, type Known } from "../../../src/job/facts/standing";
import { yoursName } from "../../../src/workbook/yoursName";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import type { Recalculated, TypedCells } from "../../../src/workbook/recalculate";
import { TAPE_TEXTS } from "../../calc/quantity/tapeTexts";
import { jobIn } from "./jobs";
import { cellIn, demoOf, typedCells } from "./workbooks";

const KEYS = Object.keys(FACTS) as FactKey[];
function differing(workbook: Recalculated, more: Known = {}): string[] {
  const { job, company, confirmed } = readJob(workbook);
  const standings = standingsOf(job, { company, confirmed, ...more });
  const shown = workbook.named("FactStates") ?? [];
  return KEYS.flatMap((key, row) => {
    const [cells, ours] = [String(shown[row]?.[0]), standings[key].state];
    return cells === ours ? [] : [`${key} is ${cells} by the cells, ${ours} by the job`];
  });
}

const first = (workbook: Recalculated, name: string): unknown => workbook.named(name)?.[0]?.[0];
const stateOf = (workbook: Recalculated, key: FactKey): unknown =>
  workbook.named("FactStates")?.[KEYS.indexOf(key)]?.[0];

describe.each(["US", "SI"] as const)("the states of facts in %s", (system) => {
  it("are the same by the cells and by the job's functions", { timeout: 300_000 }, async () => {
    const workbook = await demoOf(system);
    fc.assert(
      fc.property(jobIn(system), (trial) => {
        expect(differing(workbook.recalculate(typedCells(workbook, trial)))).toEqual([]);
      }),
      { seed: 20_261_128, numRuns: 8 },
    );
  });

  it("have a row each, and a count", async () => {
    const workbook = (await demoOf(system)).recalculate();
    expect(workbook.named("FactNames")).toHaveLength(KEYS.length);
    expect((workbook.named("FactNames") ?? []).flat().filter((name) => name === "")).toEqual([]);
    const states = (workbook.named("FactStates") ?? []).flat();
    for (const [name, state] of [
      ["FactsYours", "yours"],
      ["FactsAssumed", "assumed"],
      ["FactsInvented", "invented"],
      ["FactsWrong", "wrong"],
    ] as const)
      expect(first(workbook, name), name).toBe(states.filter((one) => one === state).length);
    expect([first(workbook, "FactsUnknown"), first(workbook, "FactsNext")]).toEqual([0, ""]);
  });

  it("follow what is typed, confirmed, and taken from the company", async () => {
    const workbook = await demoOf(system);
    const cell = (name: string, row = 0): string => cellIn(workbook, name, row);
    const after = (...typed: [string, string | number][]): Recalculated =>
      workbook.recalculate(new Map(typed) as TypedCells);
    const company = (key: FactKey): string => cell("FactsCompanyValues", KEYS.indexOf(key));
    const margin = cell(yoursName("WantedMargin"));
    expect(stateOf(after(), "wantedMargin")).toBe("invented");
    expect(stateOf(after([margin, 0.4]), "wantedMargin")).toBe("yours");
    expect(stateOf(after([cell("FactsConfirmed"), 46_200]), "wantedMargin")).toBe("company");
    expect(stateOf(after([cell("FactsConfirmed"), 46_200]), "wages")).toBe("company");
    expect(stateOf(after([cell("FactsConfirmed"), 46_200]), "fabricLap")).toBe("assumed");
    expect(stateOf(after([cell("FactsConfirmedDays", KEYS.indexOf("fabricLap")), 46_200]), "fabricLap")).toBe(
      "company",
    );
    const taken = after([company("wantedMargin"), 0.35]);
    expect([stateOf(taken, "wantedMargin"), first(taken, "WantedMargin")]).toEqual(["company", 0.35]);
    expect(differing(taken)).toEqual([]);
    expect(first(after([company("wantedMargin"), 3]), "WantedMargin")).toBe("#N/A");
    const unknown = after([cell(yoursName("Run")), ""]);
    expect([stateOf(unknown, "run"), first(unknown, "FactsUnknown"), first(unknown, "Run")]).toEqual([
      "unknown",
      1,
      "",
    ]);
    expect(first(unknown, "FactsNext")).toBe(cell(yoursName("Run")));
  });

  it("are wrong for what cannot be read or taken, with a sentence and an error that travels", async () => {
    const workbook = await demoOf(system);
    const at = workbook.names.get(yoursName("Run"))?.replace(/\$/g, "") ?? "";
    const row = KEYS.indexOf("run");
    const lips = workbook.names.get("LipTable")?.replace(/\$|:.*/g, "") ?? "";
    for (const [typed, sentence] of [
      ["about nine", /^"about nine" is wrong: type 0\.\d+ to \d+ (ft|m), like /],
      [1e5, /^"100000" is wrong/],
      // What Excel makes of 3/4 and 9-4 in 2026: days, whose numbers are far from any run.
      [46_085, /^Excel made a date of it: type 0\.\d+ to/],
    ] as const) {
      const after = workbook.recalculate(new Map([[at, typed]]));
      expect(first(after, "Run")).toMatch(/^#(N\/A|VALUE!)$/);
      expect(stateOf(after, "run")).toBe("wrong");
      expect(after.named("FactReasons")?.[row]?.[0]).toMatch(sentence);
      expect([first(after, "FactsWrong"), first(after, "FactsNext")]).toEqual([1, at]);
    }
    const table = workbook.recalculate(new Map([[lips, "9' 4"]]));
    expect([stateOf(table, "lips"), first(table, "FactsNext")]).toEqual(["wrong", lips]);
    // A sum passes over a text without a word: the price does not.
    expect(first(table, "PriceTotal")).toBe(`wrong: ${lips}`);
    // The very cell is named, in the list of prices too, where nothing but what is asked for is read: a price below zero in it
    // would make the job cheaper.
    for (const [name, row, typed, letter] of [
      ["PoolTable", 2, "2 ft"],
      ["RateTable", 30, -5, "D"],
      ["RateTable", 30, "on request", "D"],
      ["BasinParts", 1, "modulse"],
      // "Taxable" and "Cost kind" of the lines that are typed on Takeoff: neither yes nor no, and no line of the price.
      ["OwnLines", 39, "maybe", "M"],
      ["OwnLines", 0, "stuff", "K"],
    ] as const) {
      const [, sheet = "", column = "", top = ""] = /^(.+)!\$(\w+)\$(\d+)/.exec(workbook.names.get(name) ?? "") ?? [];
      const cell = `${sheet}!${letter ?? column}${Number(top) + row}`;
      const wrong = workbook.recalculate(new Map([[cell, typed]]));
      expect([first(wrong, "FactsNext"), first(wrong, "PriceTotal")]).toEqual([cell, `wrong: ${cell}`]);
    }
  });

  it("name the first wrong cell of a long column, of a single cell, and say what Excel made a date of", async () => {
    const workbook = await demoOf(system);
    const cellsOf = (name: string, column: number): string[] => {
      const [, sheet = "", left = "", top = "", bottom = top] =
        /^(.+)!\$(\w)\$(\d+)(?::\$\w+\$(\d+))?/.exec(workbook.names.get(name) ?? "") ?? [];
      const letter = String.fromCharCode(left.charCodeAt(0) + column);
      return Array.from(
        { length: Number(bottom) - Number(top) + 1 },
        (_, row) => `${sheet}!${letter}${Number(top) + row}`,
      );
    };
    const [shots, lips, riser] = [cellsOf("Shots", 1), cellsOf("LipTable", 0), cellsOf("RiserTable", 13)];
    expect([shots.length, riser.length]).toEqual([60, 1]);
    // 46,085 is 4 March 2026, which a host makes of 3/4.
    for (const [key, cells, typed, cell, dated] of [
      ["shots", shots, shots.map(() => "x"), shots[0], false],
      ["shots", shots, [...shots.slice(1).map(() => 1), 46_085], shots[59], true],
      ["riser", riser, ["x"], riser[0], false],
      ["lips", lips.slice(1), ["x", 46_085], lips[1], false],
      ["lips", lips, [46_085, "x", "x"], lips[0], true],
    ] as const) {
      const wrong = workbook.recalculate(new Map(cells.map((at, row) => [at, typed[row] ?? ""])));
      expect(first(wrong, "FactsNext"), cell).toBe(cell);
      const sentence = String(wrong.named("FactReasons")?.[KEYS.indexOf(key)]?.[0]);
      expect(sentence, cell).toMatch(dated ? /^Excel made a date of it\. In its cells of "/ : /^In its cells of "/);
    }
  });
});

describe("what a tape says, typed into a cell of Excel", () => {
  it.each(["US", "SI"] as const)("is the same length in the cells as in the bench, %s", async (system) => {
    const workbook = await demoOf(system);
    const at = workbook.names.get(yoursName("BermGround"))?.replace(/\$/g, "") ?? "";
    for (const { text, feet, meters, refused } of TAPE_TEXTS) {
      const after = workbook.recalculate(new Map([[at, text]]));
      const used = first(after, "BermGround");
      const length = system === "US" ? feet : meters;
      if (length === undefined) expect(used, `${text}: ${refused?.join()}`).toMatch(/^#/);
      else expect(used, text).toBeCloseTo(length, 9);
      const { job } = readJob(after);
      const metersRead = length === undefined ? undefined : length * (system === "US" ? 0.3048 : 1);
      if (metersRead === undefined) expect(job.bermGround, text).toBeUndefined();
      else expect(job.bermGround, text).toBeCloseTo(metersRead, 9);
    }
  });
});
