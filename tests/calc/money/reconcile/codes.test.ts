import { describe, expect, it } from "vitest";
import { bareCode, codeKey, KnownCodes } from "../../../../src/calc/money/reconcile/codes";

describe("codes", () => {
  it("are one code in any case and spacing", () => {
    expect(codeKey("  GR  57 ")).toBe(codeKey("gr 57"));
    expect(codeKey(undefined)).toBe("");
  });

  it("have one bare form whatever their spaces, marks and case, but keep what makes a number", () => {
    for (const written of ["HB 104", "HB-104", "hb104", "Hb.104"]) expect(bareCode(written)).toBe("hb104");
    expect(bareCode('1/2" barb')).not.toBe(bareCode('12" barb'));
    expect(bareCode("1.5 in")).not.toBe(bareCode("15 in"));
  });

  it.each([
    ["HB 104", ["HB-104", "HB-140"], "HB-104"], // marks alone
    ["GR57", ["GR-57", "PIPE-2"], "GR-57"],
    ["LINER-46", ["FABRIC-8", "LINER-45"], "LINER-45"], // one slip
    ["BOULDRE-L", ["BOULDER-L", "BOULDER-S"], "BOULDER-L"], // two changed letters
    ["washed gravel", ["Gravel, washed", "Gravel, pea"], "Gravel, washed"], // other order of words
    ["Crushd stone 3/4 inch", ["Crushed stone 3/4 in", "Pea gravel"], "Crushed stone 3/4 in"],
    ["river gravel", ["Gravel", "Pipe"], "Gravel"], // says more
    ["gravel", ["River gravel", "Pea gravel"], undefined], // might be either
    ["BOULDER-XYZ", ["BOULDER-ABC"], undefined], // three slips are another code
    ["GR-57", ["PIPE-2"], undefined],
    ["AB", ["XY"], undefined],
    ["A", ["B"], undefined],
    ["--", ["##"], undefined],
    ["X", [], undefined],
  ])("%s among %s means %s", (wrong, codes, expected) => {
    expect(new KnownCodes(codes).likely(wrong)).toBe(expected);
  });

  it("are not searched for slips in long lists, but for marks", () => {
    const codes = new KnownCodes(Array.from({ length: 101 }, (_, index) => `LINER-${1000 + index}`));
    expect(codes.likely("LINERS-1000")).toBeUndefined();
    expect(codes.likely("liner 1000")).toBe("LINER-1000");
  });
});
