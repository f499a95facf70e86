import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { explicitShared } from "../../src/bench/saving/sharedFormulas";
import { saveWorkbook } from "../../src/bench/saving/saveWorkbook";
import type { Work } from "../../src/bench/work/work";
import { wideFormulas } from "../../src/bench/saving/sheetXml";
import { smallTemplate } from "../host/smallTemplate";
import { oddlyPlaced } from "../xlsx/oddlyPlaced";
import { validate } from "./validate";

const nothing: Work = { edits: [], results: [], pictures: [] };
const png = Uint8Array.from(
  atob("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="),
  (letter) => letter.charCodeAt(0),
);

/** What a person would see after Fall was changed from 2.75 to 1.6: the spill has two rows instead of three. */
const work: Work = {
  ...nothing,
  edits: [
    { sheet: "Site", row: 3, column: 1, content: 1.6 },
    { sheet: "Notes", row: 4, column: 1, content: "=RILL.FTIN(Fall)" },
    { sheet: "Notes", row: 0, column: 0, content: "Changed" },
  ],
  results: [
    { sheet: "Pump", row: 1, column: 1, formula: "=Fall+2", values: [[3.6]] },
    { sheet: "Pump", row: 2, column: 1, formula: "=RILL.FTIN(StaticLift,16,Units)", values: [["3'-7 3/16\""]] },
    { sheet: "Pump", row: 3, column: 1, formula: "=ROUND(StaticLift*100*(1+TaxRate),2)", values: [[389.7]] },
    {
      sheet: "Pump",
      row: 5,
      column: 0,
      formula: "=SEQUENCE(ROUND(Fall,0),2)",
      values: [
        [1, 2],
        [3, 4],
      ],
    },
    { sheet: "Notes", row: 4, column: 1, formula: "=RILL.FTIN(Fall)", values: [["1'-7 3/16\""]] },
  ],
};

describe("saving", () => {
  const stored: Work["results"] = [
    { sheet: "Pump", row: 1, column: 1, formula: "=Fall+2", values: [[4.75]] },
    { sheet: "Pump", row: 2, column: 1, formula: "=RILL.FTIN(StaticLift,16,Units)", values: [["4'-9\""]] },
    {
      sheet: "Pump",
      row: 5,
      column: 0,
      formula: "=SEQUENCE(ROUND(Fall,0),2)",
      values: [
        [1, 2],
        [3, 4],
        [5, 6],
      ],
    },
  ];

  it.each([
    ["nothing", []],
    ["the results that are stored already", stored],
  ])("of %s gives the opened file's parts byte for byte", async (_, results) => {
    const original = await smallTemplate();
    const saved = unzipSync(saveWorkbook(original, { ...nothing, results }));
    const before = unzipSync(original);
    expect(Object.keys(saved).sort()).toEqual(Object.keys(before).sort());
    for (const [name, part] of Object.entries(before))
      expect(strFromU8(saved[name] ?? new Uint8Array()), name).toBe(strFromU8(part));
  });

  it("writes edits and results, and touches no other part", async () => {
    const original = await smallTemplate();
    const bytes = saveWorkbook(original, work);
    const { sheets } = await readXlsx(bytes, { readStyles: true });
    const [site, pump, notes] = sheets;
    expect(site?.cells?.get("3,1")).toMatchObject({
      value: 1.6,
      style: { numFmt: "0.00", protection: { locked: false } },
    });
    expect(pump?.cells?.get("2,1")).toMatchObject({
      formula: "_xldudf_RILL_FTIN(StaticLift,16,Units)",
      value: "3'-7 3/16\"",
    });
    expect(pump?.cells?.get("5,0")).toMatchObject({ formulaRef: "A6:B7", formulaDynamic: true });
    expect(pump?.rows[7]?.[0] ?? null).toBeNull();
    expect(notes?.rows[0]?.[0]).toBe("Changed");
    expect(notes?.cells?.get("4,1")).toMatchObject({ formula: "_xldudf_RILL_FTIN(Fall)", formulaDynamic: true });
    const before = unzipSync(original);
    const after = unzipSync(bytes);
    for (const name of ["xl/workbook.xml", "xl/styles.xml", "xl/sharedStrings.xml"])
      expect(after[name], name).toEqual(before[name]);
  });

  it("gives a file that the Open XML validator accepts, with pictures too", async () => {
    const picture = { sheet: "Notes", row: 2, column: 1, width: 40, height: 30, title: 'Section "A"', png };
    const bytes = saveWorkbook(await smallTemplate(), {
      ...work,
      pictures: [picture, { ...picture, row: 9 }, { ...picture, sheet: "Pump" }],
    });
    expect(validate(bytes)).toEqual([]);
    const { sheets } = await readXlsx(bytes);
    expect(sheets.map((sheet) => sheet.images?.length ?? 0)).toEqual([0, 1, 2]);
  });

  it("gives the same bytes for the same work", async () => {
    const original = await smallTemplate();
    expect(saveWorkbook(original, work)).toEqual(saveWorkbook(original, work));
  });

  it("drops the calculation order when a cell changed its kind, and nothing points at it any more", async () => {
    const file = unzipSync(await smallTemplate());
    file["xl/calcChain.xml"] = strToU8(
      '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="B2" i="2"/></calcChain>',
    );
    const types = strFromU8(file["[Content_Types].xml"] ?? new Uint8Array());
    const type =
      '<Override PartName="/xl/calcChain.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml"/></Types>';
    file["[Content_Types].xml"] = strToU8(types.replace("</Types>", type));
    const relations = "xl/_rels/workbook.xml.rels";
    const relation =
      '<Relationship Id="rId99" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain" Target="calcChain.xml"/></Relationships>';
    file[relations] = strToU8(strFromU8(file[relations] ?? new Uint8Array()).replace("</Relationships>", relation));
    const original = zipSync(file);
    expect(Object.keys(unzipSync(saveWorkbook(original, nothing)))).toContain("xl/calcChain.xml");
    const changed = unzipSync(saveWorkbook(original, work));
    expect(Object.keys(changed)).not.toContain("xl/calcChain.xml");
    for (const part of Object.values(changed)) expect(strFromU8(part)).not.toContain("calcChain");
  });

  it("puts edits into a package whose parts lie and are written otherwise than usual", async () => {
    const odd = oddlyPlaced(await smallTemplate());
    const saved = saveWorkbook(odd, {
      edits: [
        { sheet: "Site", row: 3, column: 1, content: 2.71 },
        { sheet: "Notes", row: 6, column: 4, content: "=RILL.FTIN(2,)" },
        { sheet: "Notes", row: 7, column: 4, content: 46_126, form: "yyyy-mm-dd" },
      ],
      results: [{ sheet: "Notes", row: 6, column: 4, formula: "=RILL.FTIN(2,)", values: [["2'"]] }],
      pictures: [{ sheet: "Notes", row: 1, column: 1, width: 9, height: 9, title: "Plan", png: new Uint8Array(9) }],
    });
    const { sheets } = await readXlsx(saved, { readStyles: true });
    const cells = (name: string) => sheets.find((sheet) => sheet.name === name)?.cells;
    expect(cells("Site")?.get("3,1")?.value).toBe(2.71);
    expect(cells("Notes")?.get("6,4")).toMatchObject({ formula: "_xldudf_RILL_FTIN(2,)", value: "2'" });
    expect(cells("Notes")?.get("7,4")?.style?.numFmt).toBe("yyyy-mm-dd");
    expect(sheets.find(({ name }) => name === "Notes")?.images).toHaveLength(1);
  });

  it("lets an array whose formula shows no spill fill more cells than it did, or a reader finds its way barred", async () => {
    const parts = unzipSync(await smallTemplate());
    const name = "xl/worksheets/sheet2.xml";
    const xml = strFromU8(parts[name] ?? new Uint8Array());
    const array = /<c r="A6"([^>]*)><f([^>]*)>[^<]*<\/f><v>[^<]*<\/v>/;
    expect(xml).toMatch(array);
    const one = xml.replace(array, '<c r="A6"$1><f t="array" ref="A6">IF(Fall&gt;3,B2:B4+0,"")</f><v>1</v>');
    const file = zipSync({ ...parts, [name]: strToU8(one) });
    const results = [{ sheet: "Pump", row: 5, column: 0, formula: '=IF(Fall>3,B2:B4+0,"")', values: [[1], [2], [3]] }];
    const saved = unzipSync(saveWorkbook(file, { ...nothing, results }));
    expect(strFromU8(saved[name] ?? new Uint8Array())).toContain('ref="A6:A8"');
  });

  it("gives cells their own formula when the cell that held it for them is taken", () => {
    const xml =
      '<worksheet><sheetData><row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">B1*2</f><v>2</v></c></row>' +
      '<row r="2"><c r="A2"><f t="shared" si="0"/><v>4</v></c></row><row r="3"><c r="A3"><f t="shared" si="0"/><v>6</v></c></row></sheetData></worksheet>';
    const edits = [{ sheet: "A", row: 0, column: 0, content: 7 }];
    const formulas = new Map(
      [1, 2].map((row) => [`A!${row},0`, { sheet: "A", row, column: 0, formula: `=B${row + 1}*2`, values: [[0]] }]),
    );
    expect(explicitShared(wideFormulas(xml), edits, formulas, "A")).toEqual([
      { row: 1, column: 0, formula: "=B2*2" },
      { row: 2, column: 0, formula: "=B3*2" },
    ]);
    expect(explicitShared(wideFormulas(xml), [{ sheet: "A", row: 1, column: 0, content: 7 }], formulas, "A")).toEqual(
      [],
    );
  });

  it("gives a plain cell the form of the day that was typed into it, and keeps its other looks", async () => {
    const form = 'yyyy-mm-dd "(day)"';
    const edits = [
      { sheet: "Notes", row: 20, column: 3, content: 46_126, form },
      { sheet: "Site", row: 0, column: 0, content: 46_127, form },
      { sheet: "Notes", row: 21, column: 3, content: 7 },
    ];
    const original = await smallTemplate();
    const saved = saveWorkbook(original, { ...nothing, edits });
    expect(validate(saved)).toEqual(validate(original));
    const { sheets } = await readXlsx(saved, { readStyles: true });
    const style = (name: string, key: string) => sheets.find((one) => one.name === name)?.cells?.get(key)?.style;
    expect(style("Notes", "20,3")?.numFmt).toBe(form);
    expect(style("Notes", "21,3")?.numFmt).toBeUndefined();
    const before = (await readXlsx(original, { readStyles: true })).sheets[0]?.cells?.get("0,0")?.style;
    expect(before?.font?.bold).toBe(true);
    expect(style("Site", "0,0")).toEqual({ ...before, numFmt: form });
    // Both looks share the one form, and saving again finds what is there.
    const styles = (bytes: Uint8Array): string => strFromU8(unzipSync(bytes)["xl/styles.xml"] ?? new Uint8Array());
    expect(styles(saved).match(/<numFmt [^>]*yyyy-mm-dd &quot;/g)).toHaveLength(1);
    expect(styles(saveWorkbook(saved, { ...nothing, edits }))).toBe(styles(saved));
  });
});
