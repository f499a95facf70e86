import { describe, expect, it } from "vitest";
import { catalogue } from "../../../src/functions/catalogue";
import { assemble } from "../../../src/workbook/assemble";
import { defineSheet } from "../../../src/workbook/layout";
import type { Kind } from "../../../src/workbook/layout/formats";
import { lintUnits } from "../../../src/workbook/lint/units";
import { sheets } from "../../../src/workbook/sheets";

const KINDS = ["length", "size", "area", "flow", "load", "weight", "money", "count"] as const;

/** A workbook with a cell of each kind, and one with a formula. */
function faults(formula: string, kind: Kind, system: "US" | "SI" = "US"): string[] {
  const sheet = defineSheet({
    name: "Small",
    order: 1,
    build(s) {
      s.title("Small", "Formulas to look at.");
      s.input({ name: "Units", label: "Units", kind: "text", usual: system, message: "Units." });
      for (const one of KINDS)
        s.input({ name: `A${one}`, label: one, kind: one, demo: 1, min: 0, max: 9, message: "A number." });
      s.result({ label: "Result", kind, formula });
    },
  });
  return lintUnits(assemble([sheet], system, "demo"), catalogue);
}

describe("the units of formulas", () => {
  it.each(["US", "SI"] as const)("agree in every formula of the workbook, %s", (system) => {
    expect(lintUnits(assemble(sheets, system, "demo"), catalogue)).toEqual([]);
  });

  // 12 in to the ft, 1000 mm to the m, 2000 lb to the ton: what is right by definition is taken, everything else is not.
  it.each<[string, Kind, RegExp | undefined]>([
    ["Alength+Asize/12", "length", undefined],
    ["Alength+2*Asize/12", "length", undefined],
    ["Alength+Asize", "length", /adds/],
    ["Alength+2*Asize/10", "length", /adds/],
    ["Alength+Amoney", "length", /adds/],
    ["Alength*Asize/12", "area", undefined],
    ["Alength*Asize", "area", /gives .* where area belongs/],
    ["Alength*Alength", "length", /where length belongs/],
    ["Acount*Aweight/2000", "load", undefined],
    ["Acount*Aweight/1000", "load", /where load belongs/],
    ["IF(Alength>Aarea,1,2)", "count", /compares/],
    ["MAX(Alength,Asize)", "length", /MAX takes/],
    ["RILL.LIPFLOW(Asize,Asize,,,Units)", "flow", undefined],
    ["RILL.LIPFLOW(Amoney,Asize,,,Units)", "flow", /hands .* to LIPFLOW/],
    ["RILL.LIPFLOW(Asize,Asize,,,Units)", "length", /where length belongs/],
  ])("are looked at in %s as %s", (formula, kind, fault) => {
    if (fault === undefined) expect(faults(formula, kind)).toEqual([]);
    else expect(faults(formula, kind).join("\n")).toMatch(fault);
  });

  it("are those of the workbook's own system", () => {
    expect(faults("Alength+Asize/1000", "length", "SI")).toEqual([]);
    expect(faults("Alength+Asize/12", "length", "SI").join()).toMatch(/adds/);
  });
});
