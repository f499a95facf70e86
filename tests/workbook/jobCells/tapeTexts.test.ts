import { describe, expect, it } from "vitest";
import type { Change, Host } from "../../../src/host/port";
import { turnTexts } from "../../../src/taskpane/tapeTexts";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import { tapeTexts } from "../../../src/workbook/jobCells/tapeTexts";
import type { CellValue } from "../../../src/workbook/model";
import type { Recalculated } from "../../../src/workbook/recalculate";
import { demoOf } from "../../job/agreement/workbooks";

/** What is typed into the first row of a table's column, and the number it means there. By hand: 1 ft = 12 in = 0.3048 m. */
const TYPED = {
  US: [
    ["LipTable", 0, "2' 2", 26],
    ["BedTable", 0, "2'-3 3/4\"", 2.3125],
    ["Drops", 0, "8 1/4 in", 0.6875],
    ["PoolTable", 1, "2.5 ft", 30],
  ],
  SI: [
    ["LipTable", 0, "0.65 m", 650],
    ["BedTable", 0, "75 cm", 0.75],
    ["Drops", 0, "21 cm", 0.21],
    ["PoolTable", 1, "30 in", 762],
  ],
} as const;

describe.each(["US", "SI"] as const)("what a tape says in a column of a table, %s", (system) => {
  const at = (workbook: { names: ReadonlyMap<string, string> }, name: string, across: number): string => {
    const [, sheet = "", column = "", row = ""] = /^(.+)!\$(\w+)\$(\d+)/.exec(workbook.names.get(name) ?? "") ?? [];
    return `${sheet}!${String.fromCharCode(column.charCodeAt(0) + across)}${row}`;
  };
  const found = (workbook: Recalculated) =>
    tapeTexts((name) => workbook.named(name), { system, names: workbook.names });

  it("is the same number as typed by hand", { timeout: 60_000 }, async () => {
    const opened = await demoOf(system);
    const cells = TYPED[system].map(
      ([name, across, text, number]) => [at(opened, name, across), text, number] as const,
    );
    const texts = opened.recalculate(new Map(cells.map(([cell, text]) => [cell, text])));
    expect(texts.named("FactsWrong")).toEqual([[4]]);
    const taken = found(texts);
    expect(new Map(taken.map(({ cell, value }) => [cell, value]))).toEqual(
      new Map(cells.map(([cell, , number]) => [cell, number])),
    );
    expect(taken.find(({ cell }) => cell === cells[0]?.[0])?.said).toBe(
      system === "US" ? `${cells[0]?.[0]}: 2' 2 taken as 26 in` : `${cells[0]?.[0]}: 0.65 m taken as 650 mm`,
    );
    const after = opened.recalculate(new Map(taken.map(({ cell, value }) => [cell, value])));
    expect(after.named("FactsWrong")).toEqual([[0]]);
    expect(readJob(after).wrong).toEqual([]);
  });

  it(
    "is left alone where no tape says it, or the cell takes no such length; the fact says what to type",
    { timeout: 60_000 },
    async () => {
      const opened = await demoOf(system);
      const lips = at(opened, "LipTable", 0);
      const reasons = (typed: CellValue): string[] => {
        const workbook = opened.recalculate(new Map([[lips, typed]]));
        expect(found(workbook), String(typed)).toEqual([]);
        return (workbook.named("FactReasons") ?? []).flat().map(String);
      };
      const asks =
        system === "US"
          ? /type 1 to 480 in; for .+ type =RILL\.QTY\(".+","in"\)$/
          : /type 25 to 12000 mm; for .+ type =RILL\.QTY\(".+","mm"\)$/;
      for (const typed of ["about nine", "9-4", "200 ft"])
        expect(reasons(typed).filter((reason) => asks.test(reason))).toHaveLength(1);
      // What Excel makes of 9-4 in 2026: a day, whose number is far from any lip.
      expect(reasons(46_121).filter((reason) => /^Excel made a date of it\. In its cells/.test(reason))).toHaveLength(
        1,
      );
    },
  );

  it("is written by the pane in one step, and put back as it was typed; a formula of one's own stays", async () => {
    const opened = await demoOf(system);
    const lips = at(opened, "LipTable", 0);
    const text = system === "US" ? "2' 2" : "0.65 m";
    const own = at(opened, "BedTable", 0);
    const workbook = opened.recalculate(
      new Map([
        [lips, text],
        [own, "2 ft"],
      ]),
    );
    const written: (readonly Change[])[] = [];
    const host = {
      kind: "excel",
      read: async (places: readonly string[]) => places.map((place) => workbook.named(place)),
      names: async () => [...workbook.names].map(([name, address]) => ({ name, address, broken: false })),
      formulas: async (places: readonly string[]) => places.map((place) => [[place === own ? '="2 ft"' : ""]]),
      write: async (changes: readonly Change[]) => void written.push(changes),
    } as unknown as Host;
    const { said, back } = await turnTexts(host);
    expect(written).toEqual([[{ place: lips, values: [[system === "US" ? 26 : 650]] }]]);
    expect(said).toMatch(
      / taken as (26 in|650 mm)\. Your own formula in Water!\w+ gives text: put RILL.QTY\(…\) around it\.$/,
    );
    // An apostrophe keeps Excel from making a date of a text.
    expect(back).toEqual([{ place: lips, values: [[`'${text}`]] }]);
  });
});
