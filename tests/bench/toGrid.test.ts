import { beforeAll, describe, expect, it } from "vitest";
import type { IWorkbookData } from "@univerjs/core";
import { Locks } from "../../src/bench/reading/locks";
import { openWorkbook, type OpenedWorkbook } from "../../src/bench/reading/openWorkbook";
import { StyleTable } from "../../src/bench/reading/styles";
import { contentOf } from "../../src/bench/work/fileContent";
import { toGrid } from "../../src/bench/reading/toGrid";
import { smallTemplate } from "../host/smallTemplate";

let opened: OpenedWorkbook;
let data: IWorkbookData;
beforeAll(async () => {
  opened = await openWorkbook("job.xlsx", await smallTemplate());
  data = toGrid(opened);
});

const cell = (sheet: string, row: number, column: number) => data.sheets[sheet]?.cellData?.[row]?.[column];
const style = (sheet: string, row: number, column: number) => data.styles[String(cell(sheet, row, column)?.s)];

describe("what the grid shows of a file", () => {
  it("has its formulas as a person types them, with the stored results", () => {
    expect(cell("sheet2", 1, 1)).toMatchObject({ f: "=Fall+2", v: 4.75 });
    expect(cell("sheet2", 2, 1)).toMatchObject({ f: "=RILL.FTIN(StaticLift,16,Units)", v: "4'-9\"" });
  });

  it("leaves the cells of a spill to the engine", () => {
    expect(cell("sheet2", 5, 0)).toMatchObject({ f: "=SEQUENCE(ROUND(Fall,0),2)" });
    for (const [row, column] of [
      [5, 1],
      [6, 0],
      [7, 1],
    ] as const)
      expect(cell("sheet2", row, column)?.v).toBeUndefined();
  });

  it("has dates as serial numbers with their format", () => {
    // 14 April 2026: 46,126 days after 31 December 1899 in the 1900 date system (45,000 is 15 March 2023, plus 1,126 days).
    expect(cell("sheet1", 4, 1)?.v).toBe(46_126);
    expect(style("sheet1", 4, 1)).toMatchObject({ n: { pattern: "d mmm yyyy" } });
  });

  it("keeps percent formats, fills, bold, sizes, merges, widths, heights and frozen rows", () => {
    expect(style("sheet1", 5, 1)).toMatchObject({ n: { pattern: "0%" }, bg: { rgb: "#FFF3D9" } });
    expect(style("sheet1", 0, 0)).toMatchObject({ bl: 1, fs: 16 });
    const sheet = data.sheets.sheet1;
    expect(sheet?.mergeData).toEqual([{ startRow: 7, endRow: 7, startColumn: 0, endColumn: 2 }]);
    // 28 characters of 7 pixels and 5 of margin; 45 points at 96 pixels an inch.
    expect(sheet?.columnData?.[0]).toEqual({ w: 201 });
    expect(sheet?.rowData?.[5]).toMatchObject({ h: 60 });
    expect(sheet?.freeze).toMatchObject({ ySplit: 2, startRow: 2 });
  });

  it("knows the names of cells and of constants", () => {
    const names = Object.values(
      JSON.parse(data.resources?.find(({ name }) => name === "SHEET_DEFINED_NAME_PLUGIN")?.data ?? "{}") as object,
    );
    expect(names).toContainEqual(expect.objectContaining({ name: "Fall", formulaOrRefString: "Site!$B$4" }));
    expect(names).toContainEqual(expect.objectContaining({ name: "TaxRate", formulaOrRefString: "=0.0825" }));
  });

  it("offers the choices of a list", () => {
    const rules = JSON.parse(
      data.resources?.find(({ name }) => name === "SHEET_DATA_VALIDATION_PLUGIN")?.data ?? "{}",
    ) as Record<string, object[]>;
    expect(rules.sheet1).toMatchObject([
      { type: "list", formula1: "US,SI", ranges: [{ startRow: 2, startColumn: 1 }] },
    ]);
  });
});

describe("locked cells", () => {
  it("are all of a protected sheet but the unlocked ones", () => {
    const locks = new Locks(opened.workbook);
    const at = (sheet: string, row: number, column: number) => ({
      sheet,
      top: row,
      left: column,
      bottom: row,
      right: column,
    });
    expect(locks.isLocked(at("Site", 3, 1))).toBe(false);
    expect(locks.isLocked(at("Site", 3, 0))).toBe(true);
    expect(locks.isLocked(at("Site", 90, 20))).toBe(true);
    expect(locks.isLocked({ ...at("Site", 3, 1), bottom: 6 })).toBe(true);
    expect(locks.isLocked(at("Notes", 0, 0))).toBe(false);
  });
});

describe("colours", () => {
  it("of a theme count light before dark, as the format does", () => {
    // ECMA-376 part 1, 18.8.3: theme index 0 is the light 1 colour, 1 is dark 1.
    const styles = new StyleTable(["111111", "EEEEEE", "222222", "DDDDDD"]);
    expect([0, 1, 2, 3].map((theme) => styles.rgb({ theme }))).toEqual(["#EEEEEE", "#111111", "#DDDDDD", "#222222"]);
  });
});

describe("the content of a file's cell", () => {
  it("is its formula, else its value, else nothing", () => {
    const [site, pump] = opened.workbook.sheets;
    expect(contentOf(pump, 1, 1, false)).toBe("=Fall+2");
    expect(contentOf(site, 3, 1, false)).toBe(2.75);
    expect(contentOf(site, 4, 1, false)).toBe(46_126);
    expect(contentOf(site, 60, 1, false)).toBe("");
  });
});
