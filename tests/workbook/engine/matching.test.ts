import { expect, it } from "vitest";
import type { CellValue } from "../../../src/workbook/model";
import { OwnSheet } from "./ownSheet";

/** What MATCH gives for each of `wanted` in `list`, in one formula that spills; undefined is a blank cell. */
function matched(list: readonly (CellValue | undefined)[], wanted: readonly (CellValue | undefined)[]): CellValue[] {
  const sheet = new OwnSheet();
  list.forEach((value, index) => value !== undefined && sheet.type(`A${index + 1}`, value));
  wanted.forEach((value, index) => value !== undefined && sheet.type(`B${index + 1}`, value));
  sheet.type("C1", `=MATCH(B1:B${wanted.length},A1:A${list.length},0)`);
  return sheet.shows(...wanted.map((_, index) => `C${index + 1}`));
}

// Places are counted by hand. What Excel's MATCH does is stated on Microsoft's page of the function: the first of equal
// values, text in any case, ? and * in a text that is looked for and ~ before one that is meant; a number is no text.
it.each<[string, (CellValue | undefined)[], (CellValue | undefined)[], CellValue[]]>([
  ["the first of equal values", ["P-2", "P-1", "P-2", 7, 7], ["P-2", 7, "P-1"], [1, 4, 2]],
  ["texts in any case", ["Elbow", "ÉTANG"], ["ELBOW", "elbow", "étang"], [1, 1, 2]],
  ["numbers apart from their texts", ["12", 12, 0.1], [12, "12", 0.1, "0.1"], [2, 1, 3, "#N/A"]],
  ["letters that stand for others", ["a*b", "axb", "pipe 3"], ["a*b", "a~*b", "pipe ?", "z*"], [1, 1, 3, "#N/A"]],
  ["signs of the list as they stand", ["x", "*", "?"], ["y"], ["#N/A"]],
  ["TRUE apart from 1 and its text", [1, "TRUE", true], [true, "TRUE", 1], [3, 2, 1]],
  // A blank cell that is looked for counts as 0, one of the list as nothing.
  ["no blank cell of the list", [undefined, "", "b"], ["b", "a"], [3, "#N/A"]],
])("MATCH of many finds %s", (_, list, wanted, places) => {
  expect(matched(list, wanted)).toEqual(places);
});

it("MATCH of many gives each the answer of MATCH of one", () => {
  const list = ["Pipe", 3, "", "3", true, "a?c", "pipe", 0, "=2"];
  const wanted = [...list, undefined, "PIPE", "abc", "~", -0, false, "p*"];
  const sheet = new OwnSheet();
  list.forEach((value, index) => sheet.type(`A${index + 1}`, value === "=2" ? 2 : value));
  const one = wanted.map((value, index) => {
    if (value !== undefined) sheet.type(`B${index + 1}`, value);
    sheet.type("D1", `=MATCH(B${index + 1},A1:A${list.length},0)`);
    return sheet.shows("D1")[0];
  });
  sheet.type("C1", `=MATCH(B1:B${wanted.length},A1:A${list.length},0)`);
  expect(sheet.shows(...wanted.map((_, index) => `C${index + 1}`))).toEqual(one);
});

it("MATCH of many hands an error on, in its own row alone, and finds no error in the list", () => {
  const sheet = new OwnSheet();
  sheet.type("A1", "=1/0");
  sheet.type("A2", "P-1");
  sheet.type("B1", "=1/0");
  sheet.type("B2", "p-1");
  sheet.type("B3", "=NA()");
  sheet.type("C1", "=MATCH(B1:B3,A1:A2,0)");
  expect(sheet.shows("C1", "C2", "C3")).toEqual(["#DIV/0!", 2, "#N/A"]);
});
