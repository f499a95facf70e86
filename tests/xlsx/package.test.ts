import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { smallTemplate } from "../host/smallTemplate";
import { Package } from "../../src/xlsx/package";
import { oddlyPlaced } from "./oddlyPlaced";

describe("a package", () => {
  it("finds the workbook and its sheets wherever and however the file names them", async () => {
    const plain = new Package(await smallTemplate());
    const odd = new Package(oddlyPlaced(await smallTemplate(), true));
    expect(plain.workbook).toBe("xl/workbook.xml");
    expect(odd.workbook).toBe("book/Main Book.xml");
    expect([...odd.sheets().keys()]).toEqual([...plain.sheets().keys()]);
    for (const [name, part] of odd.sheets()) expect(odd.text(part), name).toContain("sheetData");
    expect(odd.sharedTexts()).toEqual(plain.sharedTexts());
  });

  it("keeps relationships and content types that are there when it adds one, or takes one out", async () => {
    for (const bytes of [await smallTemplate(), oddlyPlaced(await smallTemplate())]) {
      const file = new Package(bytes);
      const { workbook } = file;
      const before = file.relations(workbook);
      file.setText("xl/extra part.xml", "<x/>");
      file.addContentType("xl/extra part.xml", "application/xml");
      const id = file.addRelation(workbook, "urn:extra", "xl/extra part.xml");
      expect(file.relations(workbook).get(id)).toEqual({ type: "urn:extra", target: "xl/extra part.xml" });
      for (const [known, relation] of before) expect(file.relations(workbook).get(known)).toEqual(relation);
      file.addDefaultType("png", "image/png");
      file.addDefaultType("png", "image/png");
      expect(file.text("[Content_Types].xml").match(/Extension=.png./g)).toHaveLength(1);
      file.removeWithMentions("xl/extra part.xml", workbook);
      expect(file.relations(workbook)).toEqual(before);
      expect(file.text("[Content_Types].xml")).not.toContain("extra part");
    }
  });

  it("says so when no part is the workbook", () => {
    const file = new Package(zipSync({ "xl/workbook.xml": strToU8("<workbook/>") }));
    expect(() => file.workbook).toThrow("no workbook part");
  });

  it("keeps the bytes of what nobody touches", async () => {
    const bytes = await smallTemplate();
    const file = new Package(bytes);
    file.setText("docProps/app.xml", "<x/>");
    const saved = unzipSync(file.bytes());
    for (const [name, part] of Object.entries(unzipSync(bytes)))
      if (name !== "docProps/app.xml") expect(saved[name], name).toEqual(part);
  });
});
