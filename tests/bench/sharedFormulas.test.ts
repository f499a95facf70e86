import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { saveWorkbook } from "../../src/bench/saving/saveWorkbook";
import type { Work } from "../../src/bench/work/work";
import { smallTemplate } from "../host/smallTemplate";

const PUMP = "xl/worksheets/sheet2.xml";
const NOTES = "xl/worksheets/sheet3.xml";
const nothing: Work = { edits: [], results: [], pictures: [] };
const cell = (file: Uint8Array, part: string, name: string): string =>
  new RegExp(`<c r="${name}"[^>]*?(?:/>|>.*?</c>)`).exec(strFromU8(unzipSync(file)[part] ?? new Uint8Array()))?.[0] ??
  "";

describe("cells that share another one's stored formula", () => {
  it("carry their own formula in the file once that one is typed over", async () => {
    const parts = unzipSync(await smallTemplate());
    const rows =
      '<row r="7"><c r="D7"><f t="shared" ref="D7:D8" si="0">B1*2</f><v>2</v></c></row>' +
      '<row r="8"><c r="D8"><f t="shared" si="0"/><v>4</v></c></row></sheetData>';
    const sheet = strFromU8(parts[NOTES] ?? new Uint8Array()).replace("</sheetData>", rows);
    const saved = saveWorkbook(zipSync({ ...parts, [NOTES]: strToU8(sheet) }), {
      ...nothing,
      edits: [{ sheet: "Notes", row: 6, column: 3, content: 5 }],
      results: [{ sheet: "Notes", row: 7, column: 3, formula: "=B2*2", values: [[4]] }],
    });
    expect(cell(saved, NOTES, "D7")).toBe('<c r="D7"><v>5</v></c>');
    expect(cell(saved, NOTES, "D8")).toBe('<c r="D8"><f>B2*2</f><v>4</v></c>');
  });

  it("are emptied where a spill reaches no longer, down and across", async () => {
    const saved = saveWorkbook(await smallTemplate(), {
      ...nothing,
      results: [{ sheet: "Pump", row: 5, column: 0, formula: "=SEQUENCE(ROUND(Fall,0),2)", values: [[1], [2]] }],
    });
    expect(cell(saved, PUMP, "A6")).toContain('ref="A6:A7"');
    expect(cell(saved, PUMP, "A7")).toContain("<v>2</v>");
    for (const name of ["B6", "B7", "A8", "B8"]) expect(cell(saved, PUMP, name), name).not.toContain("<v>");
  });
});
