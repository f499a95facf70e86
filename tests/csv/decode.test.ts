import { describe, expect, it } from "vitest";
import { decodeText } from "../../src/csv/decode";

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);

describe("decodeText", () => {
  it("reads UTF-8 with and without its mark", () => {
    // "Kies ½ €" in UTF-8: ½ is C2 BD, € is E2 82 AC.
    const plain = [0x4b, 0x69, 0x65, 0x73, 0x20, 0xc2, 0xbd, 0x20, 0xe2, 0x82, 0xac];
    expect(decodeText(bytes(...plain))).toEqual({ text: "Kies ½ €", encoding: "UTF-8" });
    expect(decodeText(bytes(0xef, 0xbb, 0xbf, ...plain))).toEqual({ text: "Kies ½ €", encoding: "UTF-8" });
  });

  it("reads Windows-1252, the signs that Latin-1 lacks included", () => {
    // ü is FC, € is 80, ½ is BD, ″-like closing quote is 94 in the code page.
    expect(decodeText(bytes(0x4b, 0xfc, 0x20, 0x80, 0x20, 0xbd, 0x94))).toEqual({
      text: "Kü €\u0020½”",
      encoding: "Windows-1252",
    });
  });

  it("reads UTF-16 by its mark, as some spreadsheets save text", () => {
    expect(decodeText(bytes(0xff, 0xfe, 0x41, 0x00, 0xfc, 0x00))).toEqual({ text: "Aü", encoding: "UTF-16" });
    expect(decodeText(bytes(0xfe, 0xff, 0x00, 0x41, 0x00, 0xfc))).toEqual({ text: "Aü", encoding: "UTF-16" });
  });

  it("reads nothing as nothing", () => {
    expect(decodeText(bytes()).text).toBe("");
  });
});
