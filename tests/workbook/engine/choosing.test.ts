import { describe, expect, it } from "vitest";
import type { CellValue } from "../../../src/workbook/model";
import { OwnSheet } from "./ownSheet";

/** What a formula in D1 shows in D1, E1, D2, E2 … with 1, 2, 3 in column A and a, b, c in column B. */
function shown(formula: string, rows: number, columns: number): CellValue[] {
  const sheet = new OwnSheet();
  ["a", "b", "c"].forEach((letter, index) => {
    sheet.type(`A${index + 1}`, index + 1);
    sheet.type(`B${index + 1}`, letter);
  });
  sheet.type("D1", `=${formula}`);
  const places = Array.from({ length: rows }, (_, row) =>
    ["D", "E"].slice(0, columns).map((column) => column + (row + 1)),
  );
  return sheet.shows(...places.flat());
}

// By hand, by what Microsoft's pages of CHOOSE and INDEX state of lists of numbers: one value for each.
describe("lists of places", () => {
  it.each<[string, number, number, CellValue[]]>([
    ['CHOOSE({1;3;2},A3,"x",B2)', 3, 1, [3, "b", "x"]],
    ["CHOOSE(SEQUENCE(2),B1,A2*5)", 2, 1, ["a", 10]],
    ["CHOOSE({2,1},A1:A3,B1:B3)", 3, 2, ["a", 1, "b", 2, "c", 3]],
    ["CHOOSE({1;2;3},A1,1/0)", 3, 1, [1, "#DIV/0!", "#VALUE!"]],
    ["CHOOSE(2,A1,B3)", 1, 1, ["c"]],
    ["INDEX(A1:B3,SEQUENCE(3),{2,1})", 3, 2, ["a", 1, "b", 2, "c", 3]],
    ["INDEX(A1:B3,{3;1},2)", 2, 1, ["c", "a"]],
    ["INDEX(A1:B3,2,{2,1})", 1, 2, ["b", 2]],
    ["INDEX(A1:B3,{1;4},1)", 2, 1, [1, "#REF!"]],
  ])("%s", (formula, rows, columns, values) => {
    expect(shown(formula, rows, columns)).toEqual(values);
  });

  it("follow what is typed into the cells they name", () => {
    const sheet = new OwnSheet();
    sheet.type("A1", 4);
    sheet.type("D1", "=CHOOSE({1;2},A1,A2)");
    sheet.type("A2", 9);
    expect(sheet.shows("D1", "D2")).toEqual([4, 9]);
  });
});
