import { expect, it } from "vitest";
import { matchHeadings } from "../../../src/bench/grid/byHeadings";

const book = ["What", "Order no.", "Item", "Quantity", "Unit", "Price ($)", "Supplier"];

it("finds for each heading the pasted column of that name, in whatever order", () => {
  expect(matchHeadings(["Item", "Price", "Qty", "Order No", "Remark"], book)).toEqual({
    from: [undefined, 3, 0, 2, undefined, 1, undefined],
    leftOut: ["Remark"],
  });
});

it("takes the begin of a heading, and no column twice", () => {
  expect(matchHeadings(["Order", "Item", "Item"], book)?.from).toEqual([
    undefined,
    0,
    1,
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

it("takes a row of entries for none of headings", () => {
  expect(matchHeadings(["PO-1", "GRAVEL", "24", "ton"], book)).toBeUndefined();
  expect(matchHeadings(["Item", "24"], book)).toBeUndefined();
});
