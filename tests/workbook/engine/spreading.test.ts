import { describe, expect, it } from "vitest";
import type { CellValue } from "../../../src/workbook/model";
import { OwnSheet } from "./ownSheet";

const sheet = new OwnSheet();
const CELLS: Record<string, CellValue> = {
  ...{ A1: 1, A2: 2, A3: 3, B1: "a", B2: "b", B3: "c" },
  // A blank stands in C2, an empty text in C3, a number as text in D1.
  ...{ C1: 5, C3: '=""', C4: "=1/0", D1: '="5"', D2: 5 },
};
for (const [address, content] of Object.entries(CELLS)) sheet.type(address, content);

/** What a formula in F1 shows, row by row: "1,2; 3,4". Nothing stands for an empty text or cell. */
function shown(formula: string): string {
  sheet.type("F1", `=${formula}`);
  const rows = [1, 2, 3, 4].map((row) =>
    sheet
      .shows(...["F", "G", "H"].map((column) => column + row))
      .map(String)
      .join(","),
  );
  sheet.type("F1", "");
  return rows.join("; ").replace(/,+(?=;|$)/g, "");
}

// Every row is worked out by hand from what is named above it. What no page of Microsoft's states is from memory.
// Lists of different sizes: "Guidelines and examples of array formulas", and "#N/A" where the shorter has no value.
const OF_LISTS: Record<string, Record<string, string>> = {
  "IF, by Microsoft's page: an array as a condition gives each element; a single one gives its branch whole": {
    "IF(A1:A3>1,A1:B3,0)": "0,0; 2,b; 3,c; ",
    'IF(A1:A3>1,A1:B1,"no")': "no,no; 1,a; 1,a; ",
    "IF({1,0},A1:A3,B1:B3)": "1,a; 2,b; 3,c; ",
    'IF({TRUE;FALSE},"y")': "y; false; ; ",
    "IF(TRUE,1,{1,2})": "1; ; ; ",
    "IF(FALSE,1,{1,2})": "1,2; ; ; ",
    'IF({0;1;2},{"a";"b"},9)': "9; b; #N/A; ",
    'IF(C1:C4="","e",LEFT(B1:B4,1))': "a; e; e; #DIV/0!",
    'IF(C1:C4=0,"z",N(1))': "1; z; 1; #DIV/0!",
    "IF(SEQUENCE(3)=1,A1:B1,A2:B2)": "1,a; 2,b; 2,b; ",
    'LET(x,A1:A3,IF(x>1,x&B1:B3,{"n";"m";"o"}))': "n; 2b; 3c; ",
    "MAX(IF(A1:A3<3,A1:A3))": "2; ; ; ",
    'COUNT(IF(A1:A3>1,A1:A3,""))': "2; ; ; ",
  },
  "IFERROR and IFNA, by Microsoft's page: one result for each cell; the fallback's own cell (from memory)": {
    "IFERROR(1/{1;0;2},{7;8;9})": "1; 8; 0.5; ",
    "IFERROR(1/(A1:A3-2),A1:A3*10)": "-1; 20; 1; ",
    "IFERROR(1/(A1:A3-2),A1:B1)": "-1,-1; 1,a; 1,1; ",
    "IFERROR(1/0,{7,8})": "7,8; ; ; ",
    'IFERROR(INDEX(B1:B3,MATCH({"a";"z"},B1:B3,0)),{"p";"q"})': "a; q; ; ",
    'IFNA(MATCH({"b";"z"},B1:B3,0),{5;6})': "2; 6; ; ",
    "IFNA(1/{0;1},{5;6})": "#DIV/0!; 1; ; ",
  },
  "IFS, SWITCH and CHOOSE, by Microsoft's pages; one result for each place (from memory)": {
    'IFS(A1:A3>2,"x",A1:A3>1,"y",TRUE,"z")': "z; y; x; ",
    'IFS(A1:A3>2,"x",A1:A3>1,B1:B3)': "#N/A; b; x; ",
    'SWITCH(A1:A3,1,"x",2,B1:B3,"z")': "x; b; z; ",
    'SWITCH(A1:A2,1,"x")': "x; #N/A; ; ",
    'CHOOSE({1;3;2},A3,"x",B2)': "3; b; x; ",
    "CHOOSE(SEQUENCE(2),B1,A2*5)": "a; 10; ; ",
    "CHOOSE({2,1},A1:A3,B1:B3)": "a,1; b,2; c,3; ",
    'CHOOSE(A1:A3,A1:A3,B1:B3,"q")': "1; b; q; ",
    "CHOOSE({1;2;3},A1,1/0)": "1; #DIV/0!; #VALUE!; ",
    "CHOOSE(2,A1,B3)": "c; ; ; ",
  },
  "INDEX, MATCH and the lookups, by Microsoft's pages": {
    "INDEX(A1:B3,SEQUENCE(3),{2,1})": "a,1; b,2; c,3; ",
    "INDEX(A1:B3,{3;1},2)": "c; a; ; ",
    "INDEX(A1:B3,2,{2,1})": "b,2; ; ; ",
    "INDEX(A1:B3,{1;4},1)": "1; #REF!; ; ",
    "INDEX(A1:B3,0,2)": "a; b; c; ",
    "MATCH({0;2.5},A1:A3,1)": "#N/A; 2; ; ",
    'XMATCH({"b";"z"},B1:B3)': "2; #N/A; ; ",
    "VLOOKUP(2,A1:B3,{2,1},FALSE)": "b,2; ; ; ",
    'XLOOKUP({"b";"z"},B1:B3,A1:A3,"none")': "2; none; ; ",
  },
  "operators: a column by a row makes a table, and a list too short leaves #N/A": {
    "A1:A3+{10,20}": "11,21; 12,22; 13,23; ",
    "A1:A3={1,2}": "true,false; false,true; false,false; ",
    "A1:A3+{1;2}": "2; 4; #N/A; ",
    "SUM(IFERROR(A1:A3*{1;2},0))": "5; ; ; ",
    "1/(A1:A3-2)": "-1; #DIV/0!; 1; ",
    'C1:C4=""': "false; true; true; #DIV/0!",
    "C1:C4=0": "false; true; false; #DIV/0!",
    "C1:C3+1": "6; 1; #VALUE!; ",
    // 15 digits.
    '(1/3)&""': "0.333333333333333; ; ; ",
    '0.1+{0.2;0.3}&"m"': "0.3m; 0.4m; ; ",
  },
  "rounding: an empty text is no number, a blank is 0": {
    "ROUND(A1:A2/3,{1,2})": "0.3,0.33; 0.7,0.67; ; ",
    "ROUND(C1:C4,1)": "5; 0; #VALUE!; #DIV/0!",
    "CEILING(A1:A3,2)": "2; 2; 4; ",
    // Microsoft's pages of CEILING and FLOOR: -2.5 by 2 goes up to -2 and down to -4, 2.5 by -2 is an error.
    "CEILING({-2.5;2.5},{2,-2})": "-2,-4; 4,#NUM!; ; ",
    "FLOOR({-2.5;2.5},{2,-2})": "-4,-2; 2,#NUM!; ; ",
    // 0.55 is 11 times 0.05.
    "CEILING({0.55;0.56},0.05)": "0.55; 0.6; ; ",
  },
  words: {
    'MID(B1:B2&"xy",2,{1,2})': "x,xy; x,xy; ; ",
    'FIND({"a";"z"},"cab")': "2; #VALUE!; ; ",
    'SUBSTITUTE(B1:B2,"b",{"x","y"})': "a,a; x,y; ; ",
    "FIXED(A1:A2*1000,{0,1})": "1,000,1,000.0; 2,000,2,000.0; ; ",
    "LEN(C1:C4)": "1; 0; 0; #DIV/0!",
    'CONCATENATE(A1:A2,"x")': "1x; 2x; ; ",
    "ADDRESS({1;2},1)": "$A$1; $A$2; ; ",
  },
  "sums and counts by criteria, one for each": {
    'SUMIFS(A1:A3,B1:B3,{"a";"c"})': "1; 3; ; ",
    'SUMIFS(A1:A3,B1:B3,{"a";"c"},A1:A3,{1,3})': "1,0; 0,3; ; ",
    'AVERAGEIFS(A1:A3,B1:B3,{"a";"b"})': "1; 2; ; ",
    'COUNTIFS(A1:A3,">"&A1:A3)': "2; 1; 0; ",
    'COUNTIFS(B1:B3,"a",A1:A3,1,A1:A3,1,A1:A3,1,A1:A3,{1;2})': "1; 0; ; ",
    'MAXIFS(A1:A3,A1:A3,"<"&A1:A3)': "0; 1; 2; ",
  },
  "functions that give one value; in cells they pass blanks and text over, in a single cell too": {
    "AND(A1:A3>1,TRUE)": "false; ; ; ",
    "AND(B1,TRUE)": "true; ; ; ",
    "OR(A1:A3>2)": "true; ; ; ",
    "MAX(C2,-3)": "-3; ; ; ",
    "MEDIAN(C2,4)": "4; ; ; ",
    "MEDIAN(A1:A3,C1:C3)": "2.5; ; ; ",
    "COUNT(D1)": "0; ; ; ",
    'COUNT("5")': "1; ; ; ",
    "SUM(D1,2)": "2; ; ; ",
    "MIN(A1:A3*{1,-1})": "-3; ; ; ",
    "SUM(C1:C4)": "#DIV/0!; ; ; ",
    "COUNT(1/(A1:A3-2))": "2; ; ; ",
    "N(A1:A3)": "1; ; ; ",
    // Microsoft's page of SUMPRODUCT: entries that are not numbers count as zeros, and TRUE is none.
    "SUMPRODUCT(A1:A3>1)": "0; ; ; ",
    "SUMPRODUCT((A1:A3>1)*A1:A3)": "5; ; ; ",
    // Microsoft's page of ROW: of a range, its rows.
    "SUM(ROW(A2:A4))": "9; ; ; ",
    "COLUMN(A1:C1)": "1,2,3; ; ; ",
    // A text among arguments counts as its number, one in cells does not (Microsoft's page of SUM).
    'SUM(IFERROR("7",UPPER("ab")))': "7; ; ; ",
    "COUNTIFS(A1,1,A1,1,A1,1,A1,1,A1,1,A1,1)": "1; ; ; ",
    "SUMIFS(A1,A1,1,A1,1,A1,1,A1,1,A1,1)": "1; ; ; ",
  },
  "what is joined by &: 15 digits (Microsoft's specifications and limits)": {
    'SUM(0.1,0.2)&"m"': "0.3m; ; ; ",
    '-(0.1+0.2)&"m"': "-0.3m; ; ; ",
    '(A1:A3*{0.1;0.1;0.1})&"m"': "0.1m; 0.2m; 0.3m; ",
  },
  "areas far below the last cell: blanks are zeros, 2 - 1 + 3 - 2 + 0 - 3; rows 1, 2 and 3 hold something": {
    "SUM(A2:A5000-A1:A4999)": "-1; ; ; ",
    'SUMPRODUCT((A1:A2000<>"")*ROW(A1:A2000))': "6; ; ; ",
  },
};

describe.each(Object.entries(OF_LISTS))("lists in %s", (_, cases) => {
  it.each(Object.entries(cases))("%s", (formula, expected) => {
    expect(shown(formula)).toBe(expected);
  });
});

it("a form with single values works out the branch it takes alone", () => {
  const own = new OwnSheet();
  own.type("A1", '=IF(B1="","none",IF(SUM(B1:B2)>1,OFFSET(B1,-5,0),RILL.FTIN("no length")))');
  own.type("A2", '=CHOOSE(B1+1,"first",RILL.FTIN("no length"))');
  expect(own.shows("A1", "A2")).toEqual(["none", "first"]);
  expect([own.reason("A1"), own.reason("A2")]).toEqual([undefined, undefined]);
});

it("lists of places follow what is typed into the cells they name", () => {
  const own = new OwnSheet();
  own.type("A1", 4);
  own.type("D1", "=CHOOSE({1;2},A1,A2)");
  own.type("A2", 9);
  expect(own.shows("D1", "D2")).toEqual([4, 9]);
});
