import { describe, expect, it } from "vitest";
import { catalogue } from "../../../src/functions/catalogue";
import { assemble } from "../../../src/workbook/assemble";
import { defineSheet } from "../../../src/workbook/layout";
import { isWords, arithmeticOf } from "../../../src/workbook/lint/arithmetic";
import { originsOf, type NumberOrigin } from "../../../src/workbook/origins";
import { sheets } from "../../../src/workbook/sheets";

/** What a stated source begins with or says: a definition, a rule of thumb, memory, or a work with its year or number. */
const SAYS_WHERE = /^by definition|common practice, no source|from memory|\d{2}/;

function unsourced(origins: readonly NumberOrigin[]): string[] {
  return origins
    .filter(({ needs, source }) => needs.length > 0 && source === undefined)
    .map(({ sheet, cell, label, formula, needs }) => `${sheet}!${cell} ${label}: ${needs.join(", ")} in ${formula}`);
}

describe("the sources of the workbook's formulas", () => {
  it.each(["US", "SI"] as const)("stand beside every formula that is no plain sum or reference, %s", (system) => {
    const origins = originsOf(assemble(sheets, system, "demo"));
    expect(unsourced(origins)).toEqual([]);
    expect(origins.filter(({ label }) => label === "").map(({ sheet, cell }) => `${sheet}!${cell}`)).toEqual([]);
    expect(origins.filter(({ source }) => source !== undefined && !SAYS_WHERE.test(source))).toEqual([]);
    const known = new Set(catalogue.map(({ name }) => name));
    expect(origins.flatMap(({ functions }) => functions).filter((name) => !known.has(name))).toEqual([]);
  });

  // Each is told apart by hand: sums, references, counts and unit factors (12 in to the ft, by definition) need no source.
  it.each<[formula: string, needs: readonly string[]]>([
    ["Fall+Run-1", []],
    ['IF(Fall="","",SUM(Drops))', []],
    ["INDEX(RouteTable,2*3,1)", []],
    ["Size/12", []],
    ['SUMPRODUCT((Kinds="well")*Lengths)', []],
    ["IF(COUNT(Fall,Run)=2,Fall,0)", []],
    ["RILL.TDH(Flow,Lift-Drop,2)", []],
    ["Fall*Run", ["multiplies"]],
    ["Fall/Run", ["divides"]],
    ["Fall/10", ["divides", "10"]],
    ["Fall+0.5", ["0.5"]],
    ["IF(Fall<=4,1,0)", ["4"]],
    ["MAX(Fall,3)", ["3"]],
    ["Speed^3", ["raises to a power", "3"]],
    ["SQRT(Fall)", ["SQRT"]],
    ["SUMPRODUCT(Lengths,Widths)", ["multiplies"]],
    ["RILL.TDH(Flow,Lift*1.1,2)", ["multiplies", "1.1"]],
  ])("are asked for in %s", (formula, needs) => {
    expect(arithmeticOf(formula, "US").needs).toEqual(needs);
  });

  it("are not asked for of words, but of the numbers behind a verdict", () => {
    expect(isWords('IF(Fall>4,"steep: "&Fall,"")')).toBe(true);
    expect(isWords('IF(Fall>4,Fall,"")')).toBe(false);
    const sheet = (source: Record<string, string>) =>
      defineSheet({
        name: "Small",
        order: 1,
        build(s) {
          s.title("Small", "A check.");
          s.input({ name: "Fall", label: "Fall", kind: "length", demo: 1, min: 0, max: 9, message: "A number." });
          s.check({ label: "Steep", value: "Fall", limit: 4, cure: "Less.", fix: "Fall", ...source });
        },
      });
    const [missing] = unsourced(originsOf(assemble([sheet({})], "US", "demo")));
    expect(missing).toMatch(/^Small!D\d+ Steep: 4 in 4/);
    const said = originsOf(assemble([sheet({ source: "by definition" })], "US", "demo"));
    expect(unsourced(said)).toEqual([]);
    expect(said[0]).toMatchObject({ label: "Steep", source: "by definition" });
  });
});
