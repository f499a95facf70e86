import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { missingIn } from "../../../src/bench/saving/readBack";
import { saveWorkbook } from "../../../src/bench/saving/saveWorkbook";
import type { Work } from "../../../src/bench/work/work";
import { smallTemplate } from "../../host/smallTemplate";
import { oddlyPlaced } from "../../xlsx/oddlyPlaced";

const work: Work = {
  edits: [
    { sheet: "Site", row: 3, column: 1, content: 2.71 },
    { sheet: "Site", row: 4, column: 1, content: 46_126.4321 },
    { sheet: "Site", row: 0, column: 0, content: "" },
    { sheet: "Notes", row: 9, column: 0, content: "  two\nlines\t& <more> \u0001_x0041_" },
    { sheet: "Notes", row: 9, column: 1, content: true },
    { sheet: "Notes", row: 9, column: 2, content: '=rill.ftin(2,)&"a ""b"""' },
    { sheet: "Notes", row: 9, column: 3, content: "#N/A" },
    { sheet: "Notes", row: 9, column: 4, content: -1.7976931348623157e308 },
    { sheet: "Notes", row: 9, column: 5, content: "'007" },
  ],
  results: [],
  pictures: [{ sheet: "Notes", row: 1, column: 1, width: 9, height: 9, title: "Plan", png: new Uint8Array(9) }],
};

describe("reading a saved file back", () => {
  it("finds everything in what was saved, in odd packages too", async () => {
    for (const bytes of [await smallTemplate(), oddlyPlaced(await smallTemplate())])
      expect(await missingIn(saveWorkbook(bytes, work), work)).toEqual([]);
  });

  it("names every edit and picture that is not there, or is there otherwise", async () => {
    const missing = await missingIn(await smallTemplate(), work);
    expect(missing).toEqual([
      ..."Site!B4 Site!B5 Site!A1 Notes!A10 Notes!B10 Notes!C10 Notes!D10 Notes!E10 Notes!F10".split(" "),
      "Notes!B2",
    ]);
    const parts = unzipSync(saveWorkbook(await smallTemplate(), work));
    const part = "xl/worksheets/sheet1.xml";
    const spoilt = strFromU8(parts[part] ?? new Uint8Array()).replace("<v>2.71<", "<v>2.17<");
    expect(await missingIn(zipSync({ ...parts, [part]: strToU8(spoilt) }), work)).toEqual(["Site!B4"]);
  });
});
