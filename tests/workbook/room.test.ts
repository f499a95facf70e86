import { format } from "numfmt";
import { describe, expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { TEMPLATES } from "../../src/workbook/build";
import { cellAddress } from "../../src/workbook/layout/address";
import { COLUMN, FACTS_SHEET } from "../../src/workbook/layout/factCells";
import { DEFAULT_HEIGHT, FONT_SIZE } from "../../src/workbook/layout/style";
import { columnRoom, heightOfLines, linesOf, textWidth } from "../../src/workbook/layout/textRoom";
import { cellAt, type SheetModel, type WorkbookModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";
import { calculate } from "./calculated";
import { biggestJob } from "./jobs";

/** Points a level of indent takes. */
const INDENT = 7;

/** What each cell of a sheet shows as text, spilled cells included. */
function textsOf(sheet: SheetModel): Map<string, { row: number; column: number; text: string }> {
  const texts = new Map<string, { row: number; column: number; text: string }>();
  for (const [row, cells] of sheet.rows) {
    for (const [column, { value, formula, result }] of cells) {
      const table = formula === undefined ? [[value]] : Array.isArray(result) ? result : [[result]];
      table.forEach((line, down) =>
        line.forEach((one, across) => {
          if (typeof one !== "string" || one === "") return;
          const at = { row: row + down, column: column + across, text: one };
          texts.set(`${at.row},${at.column}`, at);
        }),
      );
    }
  }
  return texts;
}

/** Texts that would be cut off or run into their neighbours. */
function cutOff(sheet: SheetModel): string[] {
  const texts = textsOf(sheet);
  const filled = (row: number, column: number): boolean => {
    const cell = cellAt(sheet, row, column);
    return texts.has(`${row},${column}`) || cell?.value !== undefined || cell?.formula !== undefined;
  };
  return [...texts.values()].flatMap(({ row, column, text }) => {
    const style = cellAt(sheet, row, column)?.style ?? {};
    const { size = FONT_SIZE, bold = false, wrap = false, align = "left" } = style;
    const merge = sheet.merges.find((area) => area.top === row && area.left === column);
    let right = merge?.right ?? column;
    // Text that does not wrap runs on over empty cells.
    if (!wrap && !merge && align === "left") while (right < sheet.widths.length && !filled(row, right + 1)) right++;
    const characters = sheet.widths.slice(column - 1, right).reduce((sum, width) => sum + width, 0);
    const room = columnRoom(characters) - INDENT * (style.indent ?? 0);
    // The sheet of facts shows the beginning of a long text; its own sheet shows it whole.
    const begun: readonly number[] = [COLUMN.yours, COLUMN.used, COLUMN.said, COLUMN.held];
    if (sheet.name === FACTS_SHEET && !wrap && align === "left" && begun.includes(column)) return [];
    // So does the list of what was issued, of words that the quote shows whole.
    if (sheet.name === "Issued" && !wrap && align === "left" && (column === 2 || column === 3)) return [];
    const where = `${sheet.name}!${cellAddress(row, column)} "${text.slice(0, 60)}"`;
    if (!wrap) return textWidth(text, size, bold) > room * 1.05 ? [`${where} is too wide`] : [];
    const broken = text.split(/\s/).find((word) => textWidth(word, size, bold) > room);
    if (broken) return [`${where} breaks inside "${broken}"`];
    const height = sheet.heights.get(row) ?? DEFAULT_HEIGHT;
    const lines = linesOf(text, room * 1.03, size, bold);
    return lines > 1 && heightOfLines(lines, size) > height + 4 ? [`${where} needs ${lines} lines`] : [];
  });
}

/** Limits of checks, whose words are part of a number's form: a number that is too wide shows as ####, and wraps nowhere. */
function hidden({ name, rows, widths }: SheetModel): string[] {
  return [...rows].flatMap(([row, cells]) =>
    [...cells].flatMap(([column, { value, result, style }]) => {
      const number = typeof result === "number" ? result : value;
      if (typeof number !== "number" || !/"[^"]+"/.test(style.format ?? "")) return [];
      const text = format(style.format ?? "", number);
      const room = columnRoom(widths[column - 1] ?? 0);
      return textWidth(text, style.size ?? FONT_SIZE) > room ? [`${name}!${cellAddress(row, column)} "${text}"`] : [];
    }),
  );
}

async function check(model: WorkbookModel): Promise<void> {
  await calculate(model);
  expect(model.sheets.flatMap(cutOff)).toEqual([]);
  expect(model.sheets.flatMap(hidden)).toEqual([]);
}

describe("every text has the room it needs", () => {
  it.each(TEMPLATES)("in $file", ({ system, filled }) => check(assemble(sheets, system, filled)));
  it.each(["US", "SI"] as const)("in the biggest job, %s", (system) => check(biggestJob(system)));
});

/** Points that the arrow of a list takes, with the margins that the bench gives its choices. */
const ARROW = 20;
/** Words that everybody in the trade knows by their beginning; their column on the wide sheet Pump cannot grow. */
const KNOWN = ["Hazen-Williams", "Darcy-Weisbach"];

it.each(["US", "SI"] as const)("every choice fits beside the arrow of its list, %s", (system) => {
  const hidden = assemble(sheets, system, "blank").sheets.flatMap((sheet) =>
    sheet.validations.flatMap(({ area, choices, title }) => {
      const merge = sheet.merges.find(({ top, left }) => top === area.top && left === area.left);
      const widths = sheet.widths.slice(area.left - 1, merge?.right ?? area.left);
      const room = columnRoom(widths.reduce((sum, width) => sum + width, 0)) - ARROW;
      const offered = typeof choices === "string" ? [] : (choices ?? []);
      return offered
        .filter((choice) => textWidth(choice) > room && !KNOWN.includes(choice))
        .map((choice) => `${sheet.name}, ${title}: ${choice}`);
    }),
  );
  expect(hidden).toEqual([]);
});

it("measures text as it is set in Arial", () => {
  // Ten digits of 556 thousandths at 10 points are 55.6 points; the measure adds 3 % for drawing on a grid.
  expect(textWidth("0123456789")).toBeCloseTo(57.27, 2);
  // 13 characters of column are 13 × 7 × 72 / 96 = 68.25 points: room for eleven digits, not for twelve.
  expect([linesOf("0".repeat(11), columnRoom(13)), linesOf("0".repeat(12), columnRoom(13))]).toEqual([1, 2]);
  expect(linesOf("over two lines", columnRoom(9))).toBe(2);
  expect(linesOf("one\ntwo", columnRoom(50))).toBe(2);
});
