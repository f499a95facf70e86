import { describe, expect, it } from "vitest";
import type { OpenedWorkbook, Recalculated } from "../../../src/workbook/recalculate";
import { yoursName } from "../../../src/workbook/yoursName";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import { evaluate } from "../../../src/job/evaluate";
import { cellIn, demoOf } from "../../job/agreement/workbooks";

type Typed = readonly (readonly [cell: string, value: string | number])[];

/** Option B as some facts that it changes, and as nothing else. */
function optionB(workbook: OpenedWorkbook, facts: Typed): Typed {
  return [
    [cellIn(workbook, "OptionNames", 1), "Otherwise"],
    ...Array.from({ length: 8 }, (_, row) => [cellIn(workbook, "OptionChangesB", row), ""] as const),
    ...facts.flatMap(([name, value], row) => [
      [cellIn(workbook, "OptionFactsB", row), name] as const,
      [cellIn(workbook, "OptionValuesB", row), value] as const,
    ]),
  ];
}

const after = (workbook: OpenedWorkbook, ...typed: Typed): Recalculated => workbook.recalculate(new Map(typed));
const shown = (workbook: Recalculated, name: string, at = 0): unknown => (workbook.named(name) ?? []).flat()[at];

/** Price before tax, tax, days, flow and tons of an option: A in the first of the columns, B in the third. */
const comes = (workbook: Recalculated, option: "A" | "B"): unknown[] =>
  ["OptionPrices", "OptionTaxes", "OptionDays", "OptionFlows", "OptionBoulders"].map((name) => {
    const value = shown(workbook, name, option === "A" ? 0 : 2);
    return typeof value === "number" ? Number(value.toFixed(6)) : value;
  });

describe.each(["US", "SI"] as const)("options as changed facts in %s", (system) => {
  const bed = system === "US" ? 5 : 1.5;
  const lip = system === "US" ? 30 : 760;

  it("have the price of the job with those facts changed, whatever the markups", { timeout: 120_000 }, async () => {
    const workbook = await demoOf(system);
    const cell = (name: string): string => cellIn(workbook, name);
    for (const markup of [0.2, 0.55]) {
      const markups: Typed = [[cell("Markups"), markup]];
      const optional = after(
        workbook,
        ...markups,
        ...optionB(workbook, [
          ["BedWidth", bed],
          ["LipTable 1 width", lip],
        ]),
      );
      // Read before the workbook is calculated anew.
      const [asDesigned, asOption] = [comes(optional, "A"), comes(optional, "B")];
      const { used } = readJob(optional);
      expect(asOption[0]).toBe(evaluate(used).price.options.B?.beforeTax);
      const changed = after(workbook, ...markups, [cell(yoursName("BedWidth")), bed], [cell("LipTable"), lip]);
      // Two ways to one number: the option beside the job as it is, and the job itself built otherwise.
      expect(asOption).toEqual(comes(changed, "A"));
      expect(asOption).not.toEqual(asDesigned);
    }
  });

  it("stop the price where a name is none, and name what differs to the client", { timeout: 120_000 }, async () => {
    const workbook = await demoOf(system);
    const wrong = after(workbook, ...optionB(workbook, [["depth of joy", 3]]));
    expect(shown(wrong, "OptionPrices", 2)).toBe("#VALUE!");
    expect(String(shown(wrong, "PriceTotal"))).toMatch(/^wrong: Price!/);
    expect(evaluate(readJob(wrong).used).price.standing.wrong).toBe(true);
    // Without stone to spare the stone costs less: a 0 is a value.
    const spare = after(workbook, ...optionB(workbook, [["StoneWaste", 0]]));
    const { options } = evaluate(readJob(spare).used).price;
    expect(shown(spare, "OptionPrices", 2)).toBe(options.B?.beforeTax);
    expect(shown(spare, "OptionPrices", 2)).toBeLessThan(Number(shown(spare, "OptionPrices", 0)));
    const facts: Typed = [
      ["BedWidth", bed],
      ["LipTable 1 width", lip],
    ];
    const right = after(workbook, ...optionB(workbook, facts));
    expect(shown(right, "DifferencesB", 8)).toMatch(new RegExp(`^Bed width.*: ${bed} (ft|m)$`));
    expect(shown(right, "DifferencesB", 9)).toBe(`Lip 1 width: ${lip} ${system === "US" ? "in" : "mm"}`);
    // Said in words it is the same, in both calculations.
    const [words, price] = [shown(right, "DifferencesB", 9), comes(right, "B")];
    const said = after(
      workbook,
      ...optionB(workbook, [
        ["bed width", bed],
        ["Lip 1 width", lip],
      ]),
    );
    expect(comes(said, "B")).toEqual(price);
    expect(shown(said, "DifferencesB", 8)).toMatch(new RegExp(`^Bed width.*: ${bed} (ft|m)$`));
    expect(shown(said, "DifferencesB", 9)).toBe(words);
    expect(evaluate(readJob(said).used).price.options.B?.beforeTax).toBe(price[0]);
  });
});
