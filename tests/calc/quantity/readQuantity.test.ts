import { describe, expect, it } from "vitest";
import { readNumber, readQuantity } from "../../../src/calc/quantity/readQuantity";

// Expected values: arithmetic with 1 ft = 12 in = 0.3048 m and 1 US gal = 231 in³ (NIST SP 811, appendix B.8).
describe("reading a quantity", () => {
  it.each([
    [`2' 6 1/2"`, "in", 30.5],
    [`2'-6 1/2"`, "in", 30.5],
    [`2' - 6"`, "in", 30],
    ["2 ft 6 in", "ft", 2.5],
    ["2ft6in", "ft", 2.5],
    ["2ft-6in", "ft", 2.5],
    ["12 ft + 8 ft 6 in", "ft", 20.5],
    ["12 ft - 6 in", "ft", 11.5],
    [`-2' 6"`, "ft", -2.5],
    ["6½ in", "in", 6.5],
    ["½ in", "in", 0.5],
    [`6-1/2"`, "in", 6.5],
    [`2' 6`, "in", 30],
    ["45 cm", "m", 0.45],
    ["40 gpm", "gph", 2400],
    ["40 gal/min", "gph", 2400],
    ["40 gal per min", "gph", 2400],
    ["1 gal", "in^3", 231],
    ["3 cu yd", "ft^3", 81],
    ["3 cuyd", "ft^3", 81],
    ["10 sq. ft".replace(".", ""), "ft^2", 10],
    ["3 m2", "m^2", 3],
    ["3 m³", "L", 3000],
    ["1 short ton", "lb", 2000],
    ["1 t".replace("t", "tonne"), "kg", 1000],
    ["1,250 gph", "gph", 1250],
    ["1,250.5", "gph", 1250.5],
    ["2,5 m", "m", 2.5],
    ["68 °F", "degC", 20],
    ["68F", "degC", 20],
    ["6 FT", "ft", 6],
    ["6 Mm".toLowerCase(), "mm", 6],
    ["100 L/h", "L/h", 100],
    ["6 ft and 3 in", "in", 75],
    ["7", "in", 7],
    ["2 + 3", "ft", 5],
    ["1 yd 2 ft 3 in", "in", 63],
    ["12 ft.", "in", 144],
    ["2′ 6″", "in", 30],
    ["2’ 6”", "in", 30],
    ["2' 6''", "in", 30],
    // A zero never leads a group of thousands.
    ["0,750 m3", "m^3", 0.75],
    ["0,750 m3", "yd^3", 0.75 / 0.9144 ** 3],
    ["1,250,000 L", "m^3", 1250],
    ["1,250.5 L", "L", 1250.5],
    ["1.250,5 L", "L", 1250.5],
  ])("%s in %s is %d", (text, unit, expected) => {
    expect(readQuantity(text, unit)).toBeCloseTo(expected, 9);
  });

  it.each([
    ["", /not understood/],
    ["ft", /not understood/],
    ["40 gpm", /length must be a length, such as 3'-2", 3.17 ft or 38 in; got "40 gpm"/],
    ["12 + 8 ft", /with and without units/],
    ["12 50", /side by side; write \+ between them to add, or one like 3'-2"/],
    ["2 ft 60 ft", /side by side/],
    ["6-12 ft", /looks like a range; write one value, or 6 ft - 12 ft to subtract/],
    ["12 foots", /"12 foots": unit "foots" is not known; write it like 3'-2", 3.17 ft or 38 in/],
    ["12 ft +", /not understood/],
    ["1/0 ft", /not a finite/],
    ["1e999 ft", /not a finite/],
    ["12; alert(1)", /not understood/],
    ["constructor", /not understood/],
    ["1 constructor", /is not known/],
    ["1 __proto__", /not understood|is not known/],
    ["9".repeat(300), /too long/],
  ])("%s is refused with a sentence", (text, sentence) => {
    expect(() => readQuantity(text, "ft", "length")).toThrow(sentence);
  });
});

describe("what has no length to be taken for a tape's", () => {
  it.each([
    ["2400-2600", "gph", 'flow "2400-2600" looks like a range; write one value, or 2400 - 2600 to subtract'],
    ["40-50 gpm", "gph", 'flow "40-50 gpm" looks like a range; write one value, or 40 gpm - 50 gpm to subtract'],
    [
      "1,250 L/h",
      "L/h",
      'flow "1,250 L/h" can mean 1250 L/h (1250 L/h) or 1.250 L/h (1.25 L/h); write the one you mean',
    ],
    ["9 4", "gph", "two numbers side by side; write + between them to add, or one like 2400 gph, 40 gpm or 150 L/min"],
    ["5 + 8 gpm", "gph", "write a unit behind each, as in 2400 gph, 40 gpm or 150 L/min"],
    ["40 ft", "L/h", 'flow must be a flow, such as 9000 L/h, 150 L/min or 40 gpm; got "40 ft"'],
  ])("%s in %s", (text, unit, sentence) => {
    expect(() => readQuantity(text, unit, "flow")).toThrow(sentence);
  });

  it("a count is no range either", () => {
    expect(() => readNumber("3-4", "drops")).toThrow('drops "3-4" looks like a range; write one value, or 3 - 4 to');
    expect(readNumber("2-1/2", "slope")).toBe(2.5);
  });
});
