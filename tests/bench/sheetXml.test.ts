import { describe, expect, it } from "vitest";
import { patchSheetXml, type CellPatch, type SheetPatches } from "../../src/bench/saving/sheetXml";

const sheet = (rows: string, prefix = ""): string =>
  `<?xml version="1.0"?><${prefix}worksheet${prefix && ` xmlns:${prefix.slice(0, -1)}="urn:main"`}><${prefix}cols/><${prefix}sheetData>${rows}</${prefix}sheetData><${prefix}pageMargins left="0.7"/></${prefix}worksheet>`;

function patches(cells: Readonly<Record<string, CellPatch>>): SheetPatches {
  const rows = new Map<number, Map<number, CellPatch>>();
  for (const [key, patch] of Object.entries(cells)) {
    const [row = 0, column = 0] = key.split(",").map(Number);
    rows.set(row, (rows.get(row) ?? new Map<number, CellPatch>()).set(column, patch));
  }
  return rows;
}

describe("patching a sheet", () => {
  it("changes a value and keeps its format and everything around it", () => {
    const before = sheet(
      '<row r="4" spans="1:2" ht="30"><c r="A4" s="1" t="s"><v>7</v></c><c r="B4" s="3"><v>2.75</v></c></row>',
    );
    const after = before.replace("<v>2.75</v>", "<v>4.5</v>");
    expect(patchSheetXml(before, patches({ "3,1": { value: 4.5, formula: null } }))).toBe(after);
  });

  it("leaves a result that did not change as it stands", () => {
    const before = sheet(
      '<row r="1"><c r="A1"><f>1/3</f><v>0.333333333333333</v></c><c r="B1" t="str"><f>"a"</f><v>a &amp; b</v></c></row>',
    );
    expect(patchSheetXml(before, patches({ "0,0": { value: 1 / 3 }, "0,1": { value: "a & b" } }))).toBe(before);
  });

  it("knows a text that it shares with others", () => {
    const before = sheet('<row r="1"><c r="A1" t="s"><v>1</v></c><c r="B1" t="s"><v>0</v></c></row>');
    expect(patchSheetXml(before, patches({ "0,0": { value: "b" }, "0,1": { value: "a" } }), ["a", "b"])).toBe(before);
    expect(patchSheetXml(before, patches({ "0,0": { value: "a" } }), ["a", "b"])).toContain('t="inlineStr"');
  });

  // The patch's value on the right is what a reader must find; nothing of the old may be taken for it.
  it.each<[string, string, CellPatch, string]>([
    ["another number", "<c r='A1'><f>X</f><v>1</v></c>", { value: 2 }, '<c r="A1"><f>X</f><v>2</v></c>'],
    [
      "a number that was text",
      '<c r="A1" t="str"><f>X</f><v>5</v></c>',
      { value: 5 },
      '<c r="A1"><f>X</f><v>5</v></c>',
    ],
    [
      "a number hardly different",
      '<c r="A1"><f>X</f><v>0.001</v></c>',
      { value: 0.0010000001 },
      '<c r="A1"><f>X</f><v>0.0010000001</v></c>',
    ],
    [
      "a text where a number was",
      '<c r="A1"><f>X</f><v>5</v></c>',
      { value: "a<b" },
      '<c r="A1" t="str"><f>X</f><v>a&lt;b</v></c>',
    ],
    [
      "no longer true",
      '<c r="A1" t="b"><f>X</f><v>1</v></c>',
      { value: false },
      '<c r="A1" t="b"><f>X</f><v>0</v></c>',
    ],
    [
      "a number where it was true",
      '<c r="A1" t="b"><f>X</f><v>1</v></c>',
      { value: 1 },
      '<c r="A1"><f>X</f><v>1</v></c>',
    ],
    ["a spill's value in a cell that held none", '<c r="A1" s="3"/>', { value: 7 }, '<c r="A1" s="3"><v>7</v></c>'],
    ["nothing where a number stood", '<c r="A1" s="3"><v>5</v></c>', { value: "" }, '<c r="A1" s="3"/>'],
    ["nothing where a text stood", '<c r="A1" t="inlineStr"><is><t>x</t></is></c>', { value: "" }, '<c r="A1"/>'],
    [
      "another formula with the same result",
      '<c r="A1"><f>B1+1</f><v>2</v></c>',
      { value: 2, formula: "B1*2" },
      '<c r="A1"><f>B1*2</f><v>2</v></c>',
    ],
    [
      "the result typed in place of its formula",
      '<c r="A1"><f>B1+1</f><v>2</v></c>',
      { value: 2, formula: null },
      '<c r="A1"><v>2</v></c>',
    ],
  ])("writes %s", (_, cell, patch, written) => {
    const before = sheet(`<row r="1">${cell.replace(/'/g, '"')}</row>`);
    expect(patchSheetXml(before, patches({ "0,0": patch }))).toBe(sheet(`<row r="1">${written}</row>`));
  });

  it.each([
    ["true", '<c r="A1" t="b"><f>X</f><v>1</v></c>', true],
    ["false", '<c r="A1" t="b"><f>X</f><v>0</v></c>', false],
    ["blank", '<c r="A1" s="3"/>', ""],
    ["an error", '<c r="A1" t="e"><f>X</f><v>#N/A</v></c>', "#N/A"],
  ])("leaves %s as it stands", (_, cell, value) => {
    const before = sheet(`<row r="1">${cell}</row>`);
    expect(patchSheetXml(before, patches({ "0,0": { value } }))).toBe(before);
  });

  it("keeps line ends between rows and cells, and finds rows that say no number", () => {
    const rows = (value: number): string =>
      `\n  <row>\n    <c r="A1"><v>1</v></c>\n    <c r="B1"><v>2</v></c>\n  </row>\n  <row><c><v>3</v></c></row>\n  <row>\n    <c><v>${value}</v></c>\n    <c><v>5</v></c>\n  </row>\n`;
    expect(patchSheetXml(sheet(rows(4)), patches({ "2,0": { value: 9, formula: null } }))).toBe(sheet(rows(9)));
  });

  it("stores a result by its kind", () => {
    const before = sheet(
      '<row r="1"><c r="A1" s="2"><f>X</f><v>1</v></c><c r="B1" t="str"><f>Y</f><v>a</v></c><c r="C1"><f>Z</f><v>1</v></c></row>',
    );
    expect(
      patchSheetXml(before, patches({ "0,0": { value: "#N/A" }, "0,1": { value: 2 }, "0,2": { value: true } })),
    ).toBe(
      sheet(
        '<row r="1"><c r="A1" s="2" t="e"><f>X</f><v>#N/A</v></c><c r="B1"><f>Y</f><v>2</v></c><c r="C1" t="b"><f>Z</f><v>1</v></c></row>',
      ),
    );
  });

  it("adds rows between rows, whatever order they come in, and leaves the others as they stand", () => {
    const [first, high, last] = [
      '<row r="1"><c r="A1"><v>1</v></c></row>',
      '<row r="2" ht="30"/>',
      '<row r="7"><c r="B7"><v>7</v></c></row>',
    ];
    const one: CellPatch = { value: 1, formula: null };
    expect(
      patchSheetXml(
        sheet(first + high + last),
        patches({ "4,2": one, "4,0": one, "4,1": one, "8,0": one, "3,0": one }),
      ),
    ).toBe(
      sheet(
        first +
          high +
          '<row r="4"><c r="A4"><v>1</v></c></row>' +
          '<row r="5"><c r="A5"><v>1</v></c><c r="B5"><v>1</v></c><c r="C5"><v>1</v></c></row>' +
          last +
          '<row r="9"><c r="A9"><v>1</v></c></row>',
      ),
    );
  });

  it("adds cells and rows in their order", () => {
    const before = sheet('<row r="2" spans="2:2"><c r="B2"><v>1</v></c></row>');
    const added = patchSheetXml(
      before,
      patches({
        "0,0": { value: 1, formula: null },
        "1,0": { value: "x<y", formula: null },
        "1,2": { value: 3, formula: null },
        "4,1": { value: true, formula: null },
      }),
    );
    expect(added).toBe(
      sheet(
        '<row r="1"><c r="A1"><v>1</v></c></row>' +
          '<row r="2"><c r="A2" t="inlineStr"><is><t xml:space="preserve">x&lt;y</t></is></c><c r="B2"><v>1</v></c><c r="C2"><v>3</v></c></row>' +
          '<row r="5"><c r="B5" t="b"><v>1</v></c></row>',
      ),
    );
  });

  it("takes a formula away with its array marks, and empties a cell but for its format", () => {
    const before = sheet(
      '<row r="1"><c r="A1" s="4" cm="1" t="str"><f t="array" ref="A1:A2">F(x)</f><v>a</v></c><c r="B1" s="5"><v>2</v></c></row>',
    );
    expect(
      patchSheetXml(before, patches({ "0,0": { value: 5, formula: null }, "0,1": { value: "", formula: null } })),
    ).toBe(sheet('<row r="1"><c r="A1" s="4"><v>5</v></c><c r="B1" s="5"/></row>'));
  });

  it("writes a formula, and marks one that spills", () => {
    const before = sheet('<row r="1"><c r="A1" s="4"><v>2</v></c></row>');
    const patch: CellPatch = { value: 3, formula: 'IF(A2<3,"x",1)' };
    expect(patchSheetXml(before, patches({ "0,0": patch }))).toBe(
      sheet('<row r="1"><c r="A1" s="4"><f>IF(A2&lt;3,"x",1)</f><v>3</v></c></row>'),
    );
    expect(
      patchSheetXml(before, patches({ "0,0": { value: 1, formula: "F()", spill: { ref: "A1:B2", metadata: 2 } } })),
    ).toBe(sheet('<row r="1"><c r="A1" s="4" cm="2"><f t="array" ref="A1:B2">F()</f><v>1</v></c></row>'));
  });

  it("widens the area of a spill that grew", () => {
    const before = sheet('<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">F(x)</f><v>1</v></c></row>');
    expect(patchSheetXml(before, patches({ "0,0": { value: 1, spill: { ref: "A1:A3" } } }))).toBe(
      before.replace("A1:A2", "A1:A3"),
    );
  });

  it("reads files that write a prefix, leave addresses out, or hold no cell", () => {
    const prefixed = sheet('<x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c></x:row>', "x:");
    expect(patchSheetXml(prefixed, patches({ "0,0": { value: 2, formula: null } }))).toBe(
      prefixed.replace("<x:v>1<", "<x:v>2<"),
    );
    const bare = sheet("<row><c><v>1</v></c><c><v>2</v></c></row>");
    expect(patchSheetXml(bare, patches({ "0,1": { value: 5, formula: null } }))).toBe(bare.replace("<v>2<", "<v>5<"));
    const none = "<worksheet><sheetData/></worksheet>";
    expect(patchSheetXml(none, patches({ "0,0": { value: 1, formula: null } }))).toBe(
      '<worksheet><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData></worksheet>',
    );
  });

  it("reads single-quoted attributes, and never writes one twice", () => {
    // C1 was taken for the cell behind the last one, and its edit landed in E1.
    const quoted = sheet(
      "<row r='1' spans='1:4'><c r='B1' t='s' s = '3'><v>0</v></c><c r='C1'><v>3</v></c><c r='D1'/></row>",
    );
    expect(patchSheetXml(quoted, patches({ "0,2": { value: 7, formula: null } }))).toBe(
      quoted.replace("<c r='C1'><v>3</v></c>", '<c r="C1"><v>7</v></c>'),
    );
    const typed = patchSheetXml(quoted, patches({ "0,1": { value: "x", formula: null, look: () => "5" } }));
    expect(typed).toContain('<c r="B1" s="5" t="inlineStr"><is><t xml:space="preserve">x</t></is></c>');
    expect(patchSheetXml(quoted, patches({ "0,6": { value: 1, formula: null } }))).toContain(
      "<c r='D1'/><c r=\"G1\"><v>1</v></c></row>",
    );
  });

  it("drops characters that no XML can hold", () => {
    const after = patchSheetXml(sheet(""), patches({ "0,0": { value: "a\u0001b\nc", formula: null } }));
    expect(after).toContain(">ab\nc</t>");
  });
});
