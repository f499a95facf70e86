import { DOMParser } from "@xmldom/xmldom";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  attributeOf,
  childOf,
  escapeAttribute,
  escapeText,
  NotXml,
  readXml,
  relationOf,
  walkXml,
  within,
  writtenAttributes,
} from "../../src/xlsx/xml";

const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

describe("reading XML", () => {
  it("takes names by their meaning: any prefix, either quotation mark, any order", () => {
    const xml = `<x:workbook xmlns:x='main' xmlns:q="${RELATIONS}"><x:sheet q:id='rId7' name='A &amp; "B"' id='3'/></x:workbook>`;
    const sheet = childOf(readXml(xml), "sheet");
    expect(sheet?.prefix).toBe("x:");
    expect(attributeOf(sheet, "name")).toBe('A & "B"');
    expect(attributeOf(sheet, "id")).toBe("3");
    expect(sheet && relationOf(sheet)).toBe("rId7");
  });

  it("says where each element stands, behind a mark of the encoding, line ends and letters of two units", () => {
    const xml =
      '\ufeff<?xml version="1.0"?>\r\n<a>\u{1f3de}<b c="1>2">x\u{1f3de}<![CDATA[<b>]]></b><!-- <b/> --><d /></a >';
    const root = readXml(xml);
    const [b, d] = root.children;
    expect(b && xml.slice(b.start, b.end)).toBe('<b c="1>2">x\u{1f3de}<![CDATA[<b>]]></b>');
    expect(b && xml.slice(b.opened, b.closing)).toBe("x\u{1f3de}<![CDATA[<b>]]>");
    expect(b?.text).toBe("x\u{1f3de}<b>");
    expect(d && xml.slice(d.start, d.end)).toBe("<d />");
    expect(d && d.closing === d.end).toBe(true);
    expect(xml.slice(root.closing)).toBe("</a >");
  });

  it("can stop where enough is known, and forget what is done with", () => {
    expect(readXml("<a><b/><c><d></wrong>", "c").children.map(({ name }) => name)).toEqual(["b", "c"]);
    let most = 0;
    walkXml(`<a>${"<b/>".repeat(50)}</a>`, {
      closed: ({ name, parent }) => {
        most = Math.max(most, parent?.children.length ?? 0);
        return name === "b" ? "forget" : undefined;
      },
    });
    expect(most).toBe(1);
  });

  it.each([
    ["a text that is no XML", "code,cost"],
    ["nothing", ""],
    ["an element that is never closed", "<a><b></a>"],
    // ECMA-376 part 2, 9.1.7: a part holds no document type declaration.
    ["entities that unfold", '<!DOCTYPE a [<!ENTITY b "bbbb"><!ENTITY c "&b;&b;&b;&b;">]><a>&c;</a>'],
    ["an entity nobody declared", "<a>&c;</a>"],
  ])("refuses %s", (_, xml) => {
    expect(() => readXml(xml)).toThrow(NotXml);
  });
});

describe("writing XML", () => {
  it("gives back any text through another parser, in elements and in attributes", () => {
    const holdable = (text: string): boolean => escapeText(text).length >= text.length;
    const printable = fc.string({ unit: "grapheme", maxLength: 30 }).filter(holdable);
    fc.assert(
      fc.property(fc.oneof(printable, fc.constantFrom("a\r\nb", "\ttab\n", `<&>"'`, "]]>")), (text) => {
        const xml = `<a b="${escapeAttribute(text)}">${escapeText(text)}</a>`;
        const read = new DOMParser().parseFromString(xml, "text/xml").documentElement;
        expect(read?.textContent).toBe(text);
        expect(read?.getAttribute("b")).toBe(text);
        expect(readXml(xml).text).toBe(text);
        expect(attributeOf(readXml(xml), "b")).toBe(text);
      }),
      { seed: 15, numRuns: 300 },
    );
  });

  it("changes, adds and leaves out attributes, and never writes one twice", () => {
    const { attributes } = readXml(`<a xmlns:q='urn:q' t='s' q:t="kept" r = "B7"/>`);
    expect(writtenAttributes(attributes, { t: "n", s: "4", cm: undefined })).toBe(
      ' xmlns:q="urn:q" q:t="kept" r="B7" t="n" s="4"',
    );
  });

  it("finds elements at any depth in the order of the text", () => {
    const root = readXml("<a><b i='1'><b i='2'/></b><c><b i='3'/></c></a>");
    expect([...within(root, "b")].map((element) => attributeOf(element, "i"))).toEqual(["1", "2", "3"]);
  });
});
