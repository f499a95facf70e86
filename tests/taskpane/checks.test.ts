import { describe, expect, it } from "vitest";
import { readChecks } from "../../src/taskpane/checks";
import { GLANCE_PLACES, readGlance } from "../../src/taskpane/glance";

describe("the checks", () => {
  it("stand with what needs attention first, each with the name it leads to", () => {
    const checks = readChecks([
      ["Slope", "28.9%", "", "at most 100 %", "OK", "Site: Fall", "Flatten it."],
      ["Speed", "6.1", "ft/s", "at most 5 ft/s", "FIX", "Pump: RouteTable", "Take a larger pipe."],
      ["Sheet", "", "", "", "to fill", "Water!B5", ""],
      ["Drops", "2.3", "ft", "2", "LOOK", "Site: DropCount", "Add drops."],
      ["Hold", "error", "gal", "9", "ERROR", "Basin: BasinHold", "Mend it."],
      ["", "", "", "", "", "", ""],
    ]);
    expect(checks.map(({ label, state }) => [label, state])).toEqual([
      ["Speed", "bad"],
      ["Hold", "bad"],
      ["Drops", "look"],
      ["Sheet", "fill"],
      ["Slope", "good"],
    ]);
    expect(checks[0]).toMatchObject({
      value: "6.1 ft/s",
      limit: "at most 5 ft/s",
      place: "RouteTable",
      where: "Pump: RouteTable",
    });
    expect(checks[3]?.place).toBe("Water!B5");
  });

  it("say where in plain words, and lead to the cell beside them", () => {
    const [check] = readChecks(
      [["Slope", "140%", "", "at most 100 %", "FIX", "Site: Fall, up to the top lip", "Flatten it."]],
      [["FallTypedYours"]],
    );
    expect(check).toMatchObject({ where: "Site: Fall, up to the top lip", place: "FallTypedYours" });
  });
});

describe("the job at a glance", () => {
  const shown = (values: Readonly<Record<string, string>>) =>
    GLANCE_PLACES.map((place) => (values[place] === undefined ? undefined : [[values[place]]]));

  it("gives each number with its unit, as far as the workbook has it", () => {
    expect(
      readGlance(shown({ Units: "SI", Currency: "EUR", DesignHead: "2.41", PriceTotal: "8,120.50", TotalCost: "" })),
    ).toEqual([
      { name: "DesignHead", label: "Total dynamic head", text: "2.41 m" },
      { name: "TotalCost", label: "Cost", text: "to fill" },
      { name: "PriceTotal", label: "Price with tax", text: "8,120.50 EUR" },
    ]);
  });

  it("is nothing for a workbook of another kind", () => {
    expect(readGlance(shown({ DesignHead: "2" }))).toEqual([]);
  });
});
