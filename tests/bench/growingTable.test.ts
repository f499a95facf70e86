import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { Locks } from "../../src/bench/reading/locks";
import { parseArea } from "../../src/xlsx/address";
import { openWorkbook, type OpenedWorkbook } from "../../src/bench/reading/openWorkbook";
import { toGrid } from "../../src/bench/reading/toGrid";
import { saveWorkbook } from "../../src/bench/saving/saveWorkbook";
import { assemble } from "../../src/workbook/assemble";
import { COLOR } from "../../src/workbook/layout/style";
import { defineSheet } from "../../src/workbook/layout";
import { writeWorkbook } from "../../src/workbook/write";

const ROWS = 20_000;
const prices = defineSheet({
  name: "Prices",
  order: 1,
  build(s) {
    s.title("Prices", "A list that grows.");
    s.table({
      name: "List",
      rows: 3,
      open: { rows: ROWS, from: 3 },
      columns: [
        { key: "code", title: "Code", kind: "text", input: { max: 20, message: "Code." } },
        { key: "cost", title: "Cost", kind: "money", input: { min: 0, max: 1000, message: "Cost." } },
      ],
      demo: [
        ["A", 1],
        ["B", 2],
      ],
    });
  },
});

let opened: OpenedWorkbook;
/** Row of the list's first line, counted from 0. */
let top: number;
beforeAll(async () => {
  const model = assemble([prices], "US", "demo");
  top = (model.names.find(({ name }) => name === "List")?.area.top ?? 0) - 1;
  opened = await openWorkbook("prices.xlsx", await writeWorkbook(model));
});

const sheetOf = (bytes: Uint8Array): string =>
  strFromU8(unzipSync(bytes)["xl/worksheets/sheet1.xml"] ?? new Uint8Array());

describe("a table that may grow", () => {
  it("has no cells and no print area below its last line, but a look for them", () => {
    const xml = sheetOf(opened.bytes);
    const rows = [...xml.matchAll(/<row r="(\d+)"/g)].map(([, row]) => Number(row));
    expect(Math.max(...rows)).toBe(top + 3);
    expect(xml).toMatch(/<col min="1"[^>]*style="\d+"/);
    const book = strFromU8(unzipSync(opened.bytes)["xl/workbook.xml"] ?? new Uint8Array());
    expect(book).not.toContain("Print_Area");
    expect(book).toContain(`$B$${top + ROWS}</definedName>`);
  });

  it("has room for its free rows in the grid, with the look and the height that the file gives them", () => {
    const grid = toGrid(opened);
    const sheet = Object.values(grid.sheets)[0];
    expect(sheet?.rowCount).toBeGreaterThanOrEqual(top + ROWS);
    const look = (column: number) => grid.styles[String(sheet?.columnData?.[column]?.custom?.look)];
    expect(look(0)?.bg).toEqual({ rgb: `#${COLOR.input}` });
    expect(look(1)?.n).toEqual({ pattern: "#,##0.00;-#,##0.00" });
    // The columns themselves stay plain: they would show in cells of the file that have no fill.
    expect(sheet?.columnData?.[0]?.s).toBeUndefined();
    // As many points as the file says, at 96 pixels to 72 points.
    const points = Number(/defaultRowHeight="([\d.]+)"/.exec(sheetOf(opened.bytes))?.[1]);
    expect(sheet?.defaultRowHeight).toBe(Math.round((points * 96) / 72));
  });

  it.each(["us-blank", "us-demo", "si-blank", "si-demo"])(
    "reaches as far as its names in the template %s",
    async (name) => {
      const { workbook, ...rest } = await openWorkbook(name, readFileSync(`templates/rillwright-${name}.xlsx`));
      const sheets = Object.values(toGrid({ workbook, ...rest }).sheets);
      const short = (workbook.namedRanges ?? []).flatMap(({ name: cells, range }) => {
        const area = parseArea(range);
        const rows = sheets.find((sheet) => sheet.name === area?.sheet)?.rowCount ?? Infinity;
        return area && area.bottom >= rows ? [`${cells} ends at row ${area.bottom + 1} of ${rows}`] : [];
      });
      expect(short).toEqual([]);
    },
  );

  it("lets its free rows be typed into, and nothing else", () => {
    const locks = new Locks(opened.workbook);
    const at = (row: number, column: number) => ({
      sheet: "Prices",
      top: row,
      left: column,
      bottom: row,
      right: column,
    });
    expect([locks.isLocked(at(top, 0)), locks.isLocked(at(top + 15_000, 1))]).toEqual([false, false]);
    expect([0, 1, 2, 3].map((row) => locks.isLocked(at(row, 0)))).toEqual([true, true, true, true]);
    expect(locks.isLocked(at(top + 15_000, 9))).toBe(true);
  });

  it("saves a line typed far below with the look of its column, for the next program", () => {
    const edit = { sheet: "Prices", row: top + 9_000, column: 1, content: 7.5 };
    const xml = sheetOf(saveWorkbook(opened.bytes, { edits: [edit], results: [], pictures: [] }));
    const style = /<col min="2"[^>]*style="(\d+)"/.exec(xml)?.[1];
    expect(style).toBeDefined();
    expect(xml).toContain(`<row r="${top + 9_001}"><c r="B${top + 9_001}" s="${style}"><v>7.5</v></c></row>`);
  });
});
