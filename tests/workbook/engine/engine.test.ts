import { describe, expect, it } from "vitest";
import { OwnSheet } from "./ownSheet";

describe("formulas that a person types", () => {
  it("are calculated, follow edits, and are forgotten when they are typed over", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", 2);
    sheet.type("A2", "=A1*10");
    sheet.type("A3", "=A2+1");
    expect(sheet.shows("A2", "A3")).toEqual([20, 21]);
    sheet.type("A1", 3);
    expect(sheet.shows("A2", "A3")).toEqual([30, 31]);
    sheet.type("A2", "=A1*100");
    expect(sheet.shows("A2", "A3")).toEqual([300, 301]);
    sheet.type("A2", 7);
    sheet.type("A1", 5);
    expect(sheet.shows("A2", "A3")).toEqual([7, 8]);
    sheet.type("A2", "");
    // A blank cell counts as 0.
    expect(sheet.shows("A2", "A3")).toEqual(["", 1]);
  });

  it("follow a value that changes its kind, and come back", () => {
    const sheet = new OwnSheet();
    sheet.type("A2", "=A1>0");
    sheet.type("A3", '=IF(A2,"yes","no")');
    sheet.type("A4", "=IFERROR(1/A1,0)");
    sheet.type("A5", '=IF(ISNUMBER(A1),"number","text")');
    for (const [typed, expected] of [
      [-1, ["no", -1, "number"]],
      [0, ["no", 0, "number"]],
      ["one", ["yes", 0, "text"]],
      [1, ["yes", 1, "number"]],
    ] as const) {
      sheet.type("A1", typed);
      expect(sheet.shows("A3", "A4", "A5"), String(typed)).toEqual(expected);
    }
  });

  it("may point at cells that are known only when they run", () => {
    const sheet = new OwnSheet();
    [5, 6, 7, 8, 1].forEach((value, index) => sheet.type(`A${index + 1}`, value));
    sheet.type("B1", "=SUM(OFFSET(A1,0,0,A5,1))");
    sheet.type("B2", "=B1*2");
    sheet.type("B3", '=INDIRECT("A"&A5)+1');
    expect(sheet.shows("B1", "B2", "B3")).toEqual([5, 10, 6]);
    sheet.type("A5", 3);
    expect(sheet.shows("B1", "B2", "B3")).toEqual([18, 36, 8]);
    sheet.type("A3", 70);
    expect(sheet.shows("B1", "B2", "B3")).toEqual([81, 162, 71]);
  });

  it("run only as far as something comes to another value", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", 12);
    sheet.type("A2", "=ROUNDUP(A1,-1)");
    sheet.type("A3", "=A2*2");
    const cells = (changes: readonly { row: number }[]): number[] => changes.map(({ row }) => row);
    // 12 and 15 both round up to 20.
    expect(cells(sheet.type("A1", 15))).toEqual([1]);
    expect(cells(sheet.type("A1", 21)).sort()).toEqual([1, 2, 3]);
  });

  it("take a range where a function takes one value, cell by cell", () => {
    const sheet = new OwnSheet();
    ["pump", "pipe", "", "gravel"].forEach((text, index) => sheet.type(`A${index + 1}`, text));
    [1, 2, 3, 4.25].forEach((value, index) => sheet.type(`B${index + 1}`, value));
    // Counted by hand: 4 + 4 + 0 + 6 letters; 3 texts; 1 + 2 + 3 + 4.
    sheet.type("C1", "=SUMPRODUCT(LEN(A1:A4))");
    sheet.type("C2", "=SUMPRODUCT(ISTEXT(A1:A4)*1)");
    sheet.type("C3", "=SUMPRODUCT(ROUND(B1:B4,0))");
    expect(sheet.shows("C1", "C2", "C3")).toEqual([14, 3, 10]);
    sheet.type("D1", '=FILTER(XLOOKUP(A1:A4,{"gravel";"pump"},{"G";"P"},"none"),ISNUMBER(B1:B4))');
    expect(sheet.shows("D1", "D2", "D4")).toEqual(["P", "none", "G"]);
  });

  it("pass over a text in a single cell that they refer to, and count in it", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", "9 ft");
    // Microsoft's pages of SUM, MAX and COUNTIF: text in a reference is ignored, and a range is "one or more cells".
    const cases: [string, number][] = [
      ["=SUM(A1)", 0],
      ["=SUM(A1,2)", 2],
      ["=MAX(A1,B1)", 0],
      ['=COUNTIF(A1,"9*")', 1],
      ['=SUMIF(A1,"<>",A2)', 0],
    ];
    for (const [formula, expected] of cases) {
      sheet.type("C1", formula);
      expect(sheet.shows("C1"), formula).toEqual([expected]);
    }
    sheet.type("C1", "=SUM(A1)");
    sheet.type("A1", 9);
    expect(sheet.shows("C1")).toEqual([9]);
    sheet.type("A1", "=NA()");
    expect(sheet.shows("C1")).toEqual(["#N/A"]);
  });

  it("write numbers in words as Excel rounds them", () => {
    const sheet = new OwnSheet();
    // The examples of Microsoft's page of FIXED, then halves that are no binary numbers, and a blank.
    const cases: [string, string][] = [
      ["=FIXED(1234.567,1)", "1,234.6"],
      ["=FIXED(-1234.567,-1,TRUE)", "-1230"],
      ["=FIXED(44.332)", "44.33"],
      ["=FIXED(3.005,2)", "3.01"],
      ["=FIXED(0.15,1)", "0.2"],
      ["=FIXED(1234567.5,0)", "1,234,568"],
      ["=FIXED(A9,1)", "0.0"],
    ];
    for (const [formula, expected] of cases) {
      sheet.type("C1", formula);
      expect(sheet.shows("C1"), formula).toEqual([expected]);
    }
  });

  it("that are none show #NAME?, and a value that is blank shows 0", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", "=SUM(");
    sheet.type("A2", "=B1");
    sheet.type("A3", "=NOSUCHFUNCTION(1)");
    expect(sheet.shows("A1", "A2", "A3")).toEqual(["#NAME?", 0, "#NAME?"]);
  });

  it("leave out what is a subtotal already", () => {
    const sheet = new OwnSheet();
    [1, 2].forEach((value, index) => sheet.type(`A${index + 1}`, value));
    sheet.type("A3", "=SUBTOTAL(9,A1:A2)");
    sheet.type("A4", "=SUBTOTAL(9,A1:A3)");
    expect(sheet.shows("A3", "A4")).toEqual([3, 3]);
    sheet.type("A1", 5);
    expect(sheet.shows("A3", "A4")).toEqual([7, 7]);
  });

  it("read an area however far it reaches below what the sheet holds", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", 1);
    sheet.type("B1", "=SUM(A1:A20000)");
    sheet.type("A300", 4);
    expect(sheet.shows("B1")).toEqual([5]);
    sheet.type("A20000", 5);
    expect(sheet.shows("B1")).toEqual([10]);
  });
});

describe("a formula that spills", () => {
  it("fills its cells, and whoever reads one of them follows", () => {
    const sheet = new OwnSheet();
    sheet.type("B1", "=SUM(A1:A9)");
    sheet.type("A1", "=SEQUENCE(C1)");
    sheet.type("C1", 3);
    expect(sheet.shows("A1", "A2", "A3", "A4", "B1")).toEqual([1, 2, 3, "", 6]);
    sheet.type("C1", 4);
    expect(sheet.shows("A4", "B1")).toEqual([4, 10]);
    sheet.type("C1", 2);
    expect(sheet.shows("A2", "A3", "A4", "B1")).toEqual([2, "", "", 3]);
  });

  it("feeds others that spill, whichever was typed first", () => {
    const sheet = new OwnSheet();
    sheet.type("D1", "=SUM(C1:C9)");
    sheet.type("C1", "=FILTER(B1:B9,B1:B9>2)");
    sheet.type("B1", "=SEQUENCE(A1)*2");
    sheet.type("A1", 3);
    // 4 and 6 of 2, 4, 6.
    expect(sheet.shows("C1", "C2", "C3", "D1")).toEqual([4, 6, "", 10]);
    sheet.type("A1", 5);
    expect(sheet.shows("C1", "C4", "D1")).toEqual([4, 10, 28]);
  });

  it("says #SPILL! where something stands in its way, and returns when it is cleared", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", "=SEQUENCE(3)");
    sheet.type("B1", "=SUM(A1:A3)");
    sheet.type("A2", "mine");
    expect(sheet.shows("A1", "A2", "A3", "B1")).toEqual(["#SPILL!", "mine", "", "#SPILL!"]);
    expect(sheet.reason("A1")).toMatch(/A2 is not empty/);
    sheet.type("A2", "");
    expect(sheet.shows("A1", "A2", "A3", "B1")).toEqual([1, 2, 3, 6]);
    expect(sheet.reason("A1")).toBeUndefined();
    sheet.type("A3", "=1+1");
    expect(sheet.shows("A1", "A2", "A3")).toEqual(["#SPILL!", "", 2]);
  });

  it("does not cover a merged cell", () => {
    const sheet = new OwnSheet([], [{ top: 2, left: 1, bottom: 2, right: 2 }]);
    sheet.type("A1", "=SEQUENCE(3)");
    expect(sheet.shows("A1", "A2")).toEqual(["#SPILL!", ""]);
  });

  it("is taken away whole when its formula is", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", "=SEQUENCE(3)");
    sheet.type("A1", 9);
    expect(sheet.shows("A1", "A2", "A3")).toEqual([9, "", ""]);
  });
});

describe("a circle of formulas", () => {
  it("has no result and says of which cells it is, the others go on, and it ends where it is broken", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", 1);
    sheet.type("A2", "=A3+1");
    sheet.type("A3", "=A2+1");
    sheet.type("A4", "=A1*2");
    sheet.type("A5", "=SUM(A1:A3)");
    expect(sheet.engine.circles.map((circle) => [...circle].sort())).toEqual([["Mine!A2", "Mine!A3"]]);
    expect(sheet.shows("A2", "A3", "A5")).toEqual(["#REF!", "#REF!", "#REF!"]);
    expect(sheet.reason("A2")).toContain("Mine!A3");
    sheet.type("A1", 4);
    expect(sheet.shows("A4")).toEqual([8]);
    sheet.type("A3", 10);
    expect(sheet.shows("A2", "A3", "A5")).toEqual([11, 10, 25]);
    expect(sheet.engine.circles).toEqual([]);
  });

  it("may be one cell, or a spill that covers what it reads", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", "=A1+1");
    expect(sheet.shows("A1")).toEqual(["#REF!"]);
    expect(sheet.reason("A1")).toMatch(/reads its own cell/);
    sheet.type("B1", "=SEQUENCE(3)+B3");
    expect(sheet.shows("B1")).toEqual(["#REF!"]);
    expect(sheet.engine.circles.flat().sort()).toEqual(["Mine!A1", "Mine!B1"]);
  });

  it("is none where a long chain of formulas reads the one before", () => {
    const sheet = new OwnSheet([
      { row: 1, column: 1, value: 1 },
      ...Array.from({ length: 30_000 }, (_, index) => ({
        row: index + 2,
        column: 1,
        value: undefined,
        formula: `A${index + 1}+1`,
      })),
    ]);
    expect(sheet.shows("A30001")).toEqual([30_001]);
    sheet.type("A1", 2);
    expect(sheet.shows("A30001")).toEqual([30_002]);
  });
});
