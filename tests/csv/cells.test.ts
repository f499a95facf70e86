import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { customsOf, readDay, readFlag, readNumber, readShare } from "../../src/csv/cells";

const POINT = { decimal: ".", slashDate: "month" } as const;
const COMMA = { decimal: ",", slashDate: "day" } as const;

describe("customsOf", () => {
  it.each([
    [["1,5", "1,250"], ",", ","], // 1,5 can only be a decimal comma
    [["1.5"], ";", "."], // and 1.5 only a point, even between semicolons
    [["1.250,50"], ",", ","],
    [["1,250.50"], ";", "."],
    [["1.250.000"], ".", ","], // grouped twice: the other mark is decimal
    [["0,125"], ",", ","],
    [["1,250"], ",", "."], // could be either: the delimiter decides
    [["1,250"], ";", ","],
    [["1.250 €"], ";", ","], // the currency behind it makes it no clearer
    [["12"], ",", "."],
    [[], ";", ","],
  ])("finds the decimal mark of %j between %j", (numbers, delimiter, expected) => {
    expect(customsOf(numbers, [], delimiter).decimal).toBe(expected);
  });

  it("finds out whether day or month comes first", () => {
    expect(customsOf([], ["3/4/2031", "28/5/2031"], ",").slashDate).toBe("day");
    expect(customsOf([], ["3/4/2031", "5/28/2031"], ";").slashDate).toBe("month");
    // There is a twelfth month, and no thirteenth.
    expect(customsOf([], ["12/5/2031"], ",").slashDate).toBe("month");
    expect(customsOf([], ["5/12/2031"], ";").slashDate).toBe("day");
    expect(customsOf([], ["13/5/2031"], ",").slashDate).toBe("day");
    expect(customsOf([], ["5/13/2031"], ";").slashDate).toBe("month");
    expect(customsOf([], ["3/4/2031"], ",").slashDate).toBe("month");
    expect(customsOf([], ["3/4/2031"], ";").slashDate).toBe("day");
  });
});

describe("readNumber", () => {
  it.each([
    ["1250.5", POINT, 1250.5],
    ["$1,250.50", POINT, 1250.5],
    ["1'250.50", POINT, 1250.5],
    ["1.250,5", COMMA, 1250.5],
    ["1 250,50 €", COMMA, 1250.5],
    ["1\u00a0250,5", COMMA, 1250.5],
    ["CHF 12,-", COMMA, undefined],
    ["-12.5", POINT, -12.5],
    ["−12.5", POINT, -12.5],
    [".5", POINT, 0.5],
    ["12,50", POINT, undefined], // not thirteen hundred, and not twelve and a half
    ["12.5", COMMA, undefined],
    ["1,25,000", POINT, undefined],
    ["1e5", POINT, undefined],
    ["", POINT, undefined],
    ["-", POINT, undefined],
    ["call us", POINT, undefined],
  ])("%j under %j is %s", (text, customs, expected) => {
    expect(readNumber(text, customs)).toBe(expected);
  });

  it("reads back what a spreadsheet writes in either custom (fast-check)", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (cents) => {
        const value = cents / 100;
        const grouped = value.toLocaleString("en-US", { minimumFractionDigits: 2 });
        expect(readNumber(grouped, POINT)).toBe(value === 0 ? Math.abs(value) : value);
        const german = grouped.replace(/[.,]/g, (mark) => (mark === "." ? "," : "."));
        expect(readNumber(german, COMMA)).toBe(value === 0 ? Math.abs(value) : value);
      }),
    );
  });
});

describe("other cells", () => {
  it("reads shares", () => {
    expect(readShare("7,5 %", COMMA)).toBeCloseTo(0.075, 12);
    expect(readShare("0.1", POINT)).toBe(0.1);
    expect(readShare("% 5", POINT)).toBeUndefined();
  });
  it("reads yes and no", () => {
    expect([readFlag("Yes"), readFlag("ja"), readFlag("x"), readFlag("0"), readFlag("")]).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(readFlag("perhaps")).toBeUndefined();
  });
  it.each([
    ["2031-05-28", POINT, "2031-05-28"],
    ["2031-5-8 00:00:00", POINT, "2031-05-08"],
    ["28.5.2031", POINT, "2031-05-28"],
    ["5/28/2031", POINT, "2031-05-28"],
    ["28/5/2031", COMMA, "2031-05-28"],
    ["28/5/2031", POINT, undefined],
    ["31.02.2031", POINT, undefined],
    ["soon", POINT, undefined],
  ])("reads the day %s", (text, customs, expected) => {
    expect(readDay(text, customs)).toBe(expected);
  });
});
