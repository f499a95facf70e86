import { describe, expect, it } from "vitest";
import { chargeKind, codeKey, likelyCode } from "../../../../src/calc/money/reconcile/group";

describe("codes", () => {
  it("are one code in any case and spacing", () => {
    expect(codeKey("  GR  57 ")).toBe(codeKey("gr 57"));
    expect(codeKey(undefined)).toBe("");
  });

  it.each([
    ["GR57", ["GR-57", "PIPE-2"], "GR-57"], // marks alone
    ["LINER-46", ["FABRIC-8", "LINER-45"], "LINER-45"], // one slip
    ["BOULDRE-L", ["BOULDER-L", "BOULDER-S"], "BOULDER-L"], // two changed letters
    ["BOULDER-XYZ", ["BOULDER-ABC"], undefined], // three slips are another code
    ["GR-57", ["PIPE-2"], undefined],
    ["AB", ["XY"], undefined],
    ["X", [], undefined],
  ])("%s among %s means %s", (wrong, codes, expected) => {
    expect(likelyCode(wrong, codes)).toBe(expected);
  });

  it("are not guessed in long lists", () => {
    expect(
      likelyCode(
        "A1",
        Array.from({ length: 51 }, (_, index) => `A${index}`),
      ),
    ).toBeUndefined();
  });
});

describe("charges", () => {
  it.each([
    ["Freight", "freight"],
    ["Fuel surcharge (week 22)", "freight"],
    ["SALES TAX 8.25%", "tax"],
    ["VAT", "tax"],
    ["Pallet deposit", "deposit"],
    ["Taxus hedge", undefined],
    ["delivery hose", undefined],
    ["GR-57", undefined],
  ])("%s is %s", (item, kind) => {
    expect(chargeKind(item)).toBe(kind);
  });
});
