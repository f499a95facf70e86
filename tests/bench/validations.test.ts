import { writeXlsx } from "hucre/xlsx";
import { expect, it } from "vitest";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { validationRules } from "../../src/bench/reading/validations";

it("lets the list of a merged cell reach over all of it, and no further", async () => {
  const bytes = await writeXlsx({
    sheets: [
      {
        name: "One",
        merges: [
          { startRow: 1, startCol: 1, endRow: 2, endCol: 3 },
          { startRow: 1, startCol: 5, endRow: 1, endCol: 6 },
        ],
        dataValidations: ["B2", "B5"].map((range) => ({ range, type: "list", values: ["yes", "no"] })),
      },
    ],
  });
  const { workbook } = await openWorkbook("own.xlsx", bytes);
  const [first] = workbook.sheets;
  if (!first) throw new Error("no sheet");
  const ranges = validationRules(first).flatMap((rule) => rule.ranges);
  const reached = (row: number, column: number): boolean =>
    ranges.some(
      ({ startRow, endRow, startColumn, endColumn }) =>
        row >= startRow && row <= endRow && column >= startColumn && column <= endColumn,
    );
  const cells = Array.from({ length: 7 }, (_, row) => Array.from({ length: 8 }, (_, column) => [row, column] as const));
  const names = cells.flat().filter(([row, column]) => reached(row, column));
  // B2:D3, and B5 by itself.
  expect(names).toEqual([
    [1, 1],
    [1, 2],
    [1, 3],
    [2, 1],
    [2, 2],
    [2, 3],
    [4, 1],
  ]);
});
