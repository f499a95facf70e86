import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { lintWorkbook } from "../../src/workbook/lint";
import { namesIn } from "../../src/workbook/lint/formula";
import { readXml } from "../../src/xlsx/xml";
import { lintTables } from "../../src/workbook/lint/tables";
import { assemble } from "../../src/workbook/assemble";
import { calculate } from "../../src/workbook/build";
import { defineSheet } from "../../src/workbook/layout";
import { writeWorkbook } from "../../src/workbook/write";

const functions = new Set(["FTIN"]);
const small = defineSheet({
  name: "Small",
  order: 1,
  build(s) {
    s.title("Small", "A sheet to break.");
    s.input({ name: "Fall", label: "Fall", kind: "length", demo: 2.5, min: 0, max: 9, message: "Fall." });
    s.result({ label: "Twice", kind: "length", formula: "Fall*2" });
    s.result({ label: "Words", kind: "text", formula: "RILL.FTIN(Fall,16)" });
    s.input({ label: "Pick", kind: "text", choices: ["one", "two"], usual: "one", message: "Pick." });
  },
});

let good: Uint8Array;
beforeAll(async () => {
  const model = assemble([small], "US", "demo");
  await calculate(model);
  good = await writeWorkbook(model);
});

/** The file with one part changed. */
function changed(part: string, from: string | RegExp, to: string): Uint8Array {
  const parts = unzipSync(good);
  const before = strFromU8(parts[part] ?? new Uint8Array());
  const after = before.replace(from, to);
  expect(after, `nothing to change in ${part}`).not.toBe(before);
  return zipSync({ ...parts, [part]: strToU8(after) });
}

const SHEET = "xl/worksheets/sheet1.xml";
const BOOK = "xl/workbook.xml";

describe("the lint", () => {
  it("finds nothing in a good file", () => {
    expect(lintWorkbook(good, { functions })).toEqual([]);
  });

  it.each<[string, string, string | RegExp, string, RegExp]>([
    ["a name with a space", BOOK, 'name="Fall"', 'name="The fall"', /cannot be a name/],
    ["a name like a cell", BOOK, 'name="Fall"', 'name="TDH1"', /looks like a cell/],
    ["a name like a row", BOOK, 'name="Fall"', 'name="R2C"', /looks like a row/],
    [
      "a name given twice",
      BOOK,
      "</definedNames>",
      '<definedName name="fall">Small!$A$1</definedName></definedNames>',
      /twice/,
    ],
    ["a name that leads nowhere", BOOK, "Small!$B$4<", "#REF!<", /leads nowhere/],
    ["an order to calculate", BOOK, "<calcPr ", '<calcPr fullCalcOnLoad="1" ', /full calculation/],
    ["an unknown name in a formula", SHEET, "Fall*2", "Fell*2", /unknown name Fell/],
    ["a formula that begins with =", SHEET, "Fall*2", "=Fall*2", /begins with =/],
    ["unbalanced brackets", SHEET, "Fall*2", "SUM(Fall", /unbalanced/],
    ["a newer function without its prefix", SHEET, "Fall*2", "UNIQUE(Fall)", /without its prefix/],
    ["one of ours by its shown name", SHEET, "_xldudf_RILL_FTIN", "RILL.FTIN", /shown name/],
    ["a function we do not have", SHEET, "_xldudf_RILL_FTIN", "_xldudf_RILL_FATHOM", /not one of ours/],
    ["one of ours that is no dynamic array", SHEET, / cm="1"/, "", /no dynamic array/],
    ["a formula without a result", SHEET, /(Fall\*2<\/f>)<v>[^<]*<\/v>/, "$1", /without a stored value/],
    ["a shared string that is not there", SHEET, /t="s" s="1"><v>0/, 't="s" s="1"><v>999', /not there/],
    ["cells out of order", SHEET, 'r="B4"', 'r="A4"', /out of order/],
    ["overlapping merges", SHEET, "<mergeCell ", '<mergeCell ref="A1:A2"/><mergeCell ', /overlap/],
    // "Applies To" of the pages of TAKE and HSTACK at support.microsoft.com: Microsoft 365 and Excel 2024.
    [
      "a function that Excel 2021 lacks",
      SHEET,
      "Fall*2",
      "_xlfn.TAKE(Fall,1)",
      /TAKE, which is not known to be in Excel 2021/,
    ],
    ["a pattern that is read by region", SHEET, "Fall*2", "TEXT(Fall,1)", /wrongly in other regions/],
    ["a long error text", SHEET, /error="[^"]*"/, `error="${"x".repeat(226)}"`, /longer than 225/],
    ["a long list", SHEET, /"one,two"|&quot;one,two&quot;/, `"${"x,".repeat(150)}"`, /longer than 255/],
  ])("finds %s", (_, part, from, to, fault) => {
    expect(lintWorkbook(changed(part, from, to), { functions }).join("\n")).toMatch(fault);
  });

  it("finds tables that do not fit their cells", () => {
    const table = '<table ref="A1:B3"><tableColumns><tableColumn id="1" name="Code"/></tableColumns></table>';
    expect(lintTables("t", readXml(table), new Map([["A1", "Item"]]))).toEqual([
      "t has 1 columns in another width",
      't calls a column "Code" whose header is "Item"',
    ]);
  });

  it("tells names from cells, functions, texts and sheets", () => {
    expect(namesIn('IF(Fall>0,SUM(A1:$B$2)&"Text",Site!B2)+_xlfn.LET(_xlpm.q,2,_xlpm.q)+TRUE')).toEqual(["Fall"]);
  });
});
