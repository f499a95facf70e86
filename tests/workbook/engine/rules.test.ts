import { describe, expect, it } from "vitest";
import { Rules, type RuleResult } from "../../../src/workbook/engine/rules";
import { OwnSheet } from "./ownSheet";

const cells = (results: readonly RuleResult[]): Record<string, unknown> =>
  Object.fromEntries(
    results.flatMap(({ id, cells: places, rows }) =>
      places.map(({ down, across }) => [`${id} ${down},${across}`, rows[0]?.[0]]),
    ),
  );

describe("the formulas of rules", () => {
  it("move with each cell, and tell of those that came to something else", () => {
    const sheet = new OwnSheet();
    const rules = new Rules(sheet.engine);
    sheet.type("A2", "x");
    const block = { top: 2, left: 1, bottom: 3, right: 2 };
    rules.watch({ id: "marked", sheet: "Mine", text: '$A2="x"', blocks: [block] });
    sheet.engine.run();
    expect(cells(rules.takeResults())).toEqual({
      "marked 0,0": true,
      "marked 0,1": true,
      "marked 1,0": false,
      "marked 1,1": false,
    });
    sheet.type("A3", "x");
    expect(cells(rules.takeResults())).toEqual({ "marked 1,0": true, "marked 1,1": true });
    sheet.type("B3", 1);
    expect(rules.takeResults()).toEqual([]);
    rules.ask("marked");
    expect(Object.keys(cells(rules.takeResults()))).toHaveLength(4);
    rules.unwatch("marked");
    sheet.type("A3", "");
    expect(rules.takeResults()).toEqual([]);
  });

  it("give a list as long as its cells", () => {
    const sheet = new OwnSheet();
    const rules = new Rules(sheet.engine);
    ["one", "two"].forEach((value, index) => sheet.type(`A${index + 1}`, value));
    rules.watch({ id: "list", sheet: "Mine", text: "$A$1:$A$2", blocks: [{ top: 5, left: 5, bottom: 5, right: 5 }] });
    sheet.engine.run();
    expect(rules.takeResults()).toEqual([{ id: "list", cells: [{ down: 0, across: 0 }], rows: [["one"], ["two"]] }]);
    sheet.type("A2", "three");
    expect(rules.takeResults()[0]?.rows).toEqual([["one"], ["three"]]);
  });
});
