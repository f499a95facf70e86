import { expect, it } from "vitest";
import { measuredCells } from "../../../src/bench/typing/measured";
import { FACTS } from "../../../src/job/facts";
import type { TableFact } from "../../../src/job/facts/fact";

const drops: TableFact = FACTS.drops;
/** Names as a workbook might have them, on a sheet that a person renamed and on another. */
const names = new Map([
  ["RunYours", "'Site, front'!$C$7"],
  ["Drops", "Water!$B$40:$B$51"],
  ["Treads", "Water!$C$40:$C$51"],
]);

it("knows what each cell measures: a fact's own, and a table's from its first row to its last", () => {
  const measures = measuredCells(names);
  expect(measures("Site, front", 6, 2)).toBe(FACTS.run);
  // Twelve rows, as many as the names span: 40 to 51, which are 39 to 50 counted from 0.
  expect(drops.rows).toBe(12);
  for (const row of [39, 45, 50]) {
    expect(measures("Water", row, 1), `${row}`).toBe(drops.columns.drop);
    expect(measures("Water", row, 2), `${row}`).toBe(drops.columns.tread);
  }
});

it("knows nothing of the cells around them, nor of a workbook without the names", () => {
  const around: [string, number, number][] = [
    ["Site, front", 5, 2],
    ["Site, front", 7, 2],
    ["Site, front", 6, 1],
    ["Site", 6, 2],
    ["Water", 38, 1],
    ["Water", 51, 1],
    ["Water", 40, 3],
  ];
  for (const [sheet, row, column] of around)
    expect(measuredCells(names)(sheet, row, column), `${sheet} ${row} ${column}`).toBeUndefined();
  expect(measuredCells(new Map([["Drops", "Water!$B$40"]]))("Water", 39, 1)).toBeUndefined();
});
