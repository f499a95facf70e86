import { writeXlsx } from "hucre/xlsx";
import { expect, it } from "vitest";
import { answers } from "../../../src/bench/calculation/answers";
import type { Answer, Asked } from "../../../src/bench/calculation/messages";
import type { CellValue } from "../../../src/workbook/model";

it("tells what came of what was typed, and not what was typed", async () => {
  const told: ((answer: Answer) => void)[] = [];
  const asked = answers((answer) => told.shift()?.(answer));
  const ask = (question: Asked): Promise<Answer> =>
    new Promise((resolve) => {
      told.push(resolve);
      asked(question);
    });
  const type = async (...cells: [row: number, column: number, content: CellValue][]): Promise<unknown[]> => {
    const typed = cells.map(([row, column, content]) => ({ sheet: "One", row, column, content }));
    const { changes } = await ask({ typed });
    return changes.map(({ row, column, value }) => [row - 1, column - 1, value]);
  };
  const cells = new Map([["0,1", { value: 20, formula: "A1*10" }]]);
  await ask({ open: await writeXlsx({ sheets: [{ name: "One", cells }] }), typed: [] });

  expect(await type([0, 0, 3], [5, 0, "pipe"])).toEqual([[0, 1, 30]]);
  // Typed twice at once, the last stands; a formula is told what it comes to.
  expect(await type([0, 0, 4], [0, 0, 5], [0, 2, "=A1+1"])).toEqual(
    expect.arrayContaining([
      [0, 1, 50],
      [0, 2, 6],
    ]),
  );
  // A spill fills D1:D2. What is cleared from it comes back, what is typed over it stands, and the formula says so.
  await type([0, 3, "=A1:A2*2"]);
  expect(await type([1, 3, ""])).toEqual([[1, 3, 0]]);
  expect(await type([1, 3, "mine"])).toEqual([[0, 3, "#SPILL!"]]);
  expect(await type([1, 3, ""])).toEqual(
    expect.arrayContaining([
      [0, 3, 10],
      [1, 3, 0],
    ]),
  );
});
