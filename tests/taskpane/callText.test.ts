import { describe, expect, it } from "vitest";
import { argumentText, callText, exampleText } from "../../src/taskpane/callText";
import { namedCells } from "../../src/host/places";
import { searchFunctions } from "../../src/taskpane/views/functions";

const names = [namedCells("StaticLift", "=Pump!$B$2"), namedCells("Units", "=Site!$B$3")];

describe("an argument as the formula holds it", () => {
  it.each([
    ["2.75", "2.75"],
    [" -.5e3 ", "-.5e3"],
    ["10%", "10%"],
    ["B7", "B7"],
    ["'Pipe run'!$B$7:$C$9", "'Pipe run'!$B$7:$C$9"],
    ["staticlift", "staticlift"],
    ["true", "TRUE"],
    ["{1,2;3,4}", "{1,2;3,4}"],
    ["=SUM(A1:A3)", "SUM(A1:A3)"],
    ["Sch 40 PVC", '"Sch 40 PVC"'],
    ["2' 6 1/2\"", '"2\' 6 1/2"""'],
    ["SI", '"SI"'],
    ["", ""],
  ])("%s becomes %s", (typed, held) => expect(argumentText(typed, names)).toBe(held));
});

describe("the formula", () => {
  const fields = (...texts: string[]) => texts.map((text, index) => ({ name: `a${index}`, optional: index > 1, text }));

  it("keeps left-out arguments between commas and drops them at the end", () => {
    expect(callText("TDH", fields("2000", "StaticLift", "", "40", "", ""), names)).toEqual({
      formula: "=RILL.TDH(2000,StaticLift,,40)",
    });
    expect(callText("TDH", fields("2000", "6", "", "", "Units"), names)).toEqual({
      formula: "=RILL.TDH(2000,6,,,Units)",
    });
  });

  it("names the first needed argument that is blank", () => {
    expect(callText("TDH", fields("2000", " ", "4"), names)).toEqual({ missing: "a1" });
  });
});

describe("an example's value", () => {
  it("is written as it would be typed", () => {
    expect(
      [
        2,
        "SI",
        true,
        null,
        [
          ["a", 1],
          [undefined, false],
        ],
      ].map(exampleText),
    ).toEqual(["2", "SI", "TRUE", "", '{"a",1;,FALSE}']);
  });
});

describe("the search", () => {
  it("finds every word in name, summary or topic, and puts names first", () => {
    const found = searchFunctions("ftin").map(({ name }) => name);
    expect(found[0]).toBe("FTIN");
    expect(searchFunctions("tape fraction").map(({ name }) => name)).toContain("FTIN");
    expect(searchFunctions("no such thing at all")).toEqual([]);
  });
});
