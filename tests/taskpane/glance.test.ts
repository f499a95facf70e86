import { describe, expect, it } from "vitest";
import { GLANCE_PLACES, readGlance } from "../../src/taskpane/glance";
import { GLANCE } from "../../src/workbook/glance";

/** What the cells show: the unit system, the currency, and a text for every number of the job. */
const shown = (units: string, text: (name: string) => string | undefined) =>
  GLANCE_PLACES.map((place) => {
    const cell = place === "Units" ? units : place === "Currency" ? "$" : text(String(place));
    return cell === undefined ? undefined : [[cell, "beside it"]];
  });

/** What the pane shows beside Start's numbers: margin and range, which an owner looks at while markups change. */
const OWNERS = ["GrossMargin", "PriceLow", "PriceHigh"];
const NAMES = [...GLANCE.map(({ name }) => name), ...OWNERS];

describe("the job at a glance", () => {
  it("shows every number as its cell does, with the unit of the system or the currency", () => {
    const texts = (units: string) =>
      new Map(readGlance(shown(units, () => "1,234.5")).map(({ name, text }) => [name, text]));
    expect([...texts("US").keys()]).toEqual(NAMES);
    expect([texts("US").get("GrossMargin"), texts("US").get("PriceLow")]).toEqual(["1,234.5", "$1,234.5"]);
    expect([texts("US").get("DesignHead"), texts("SI").get("DesignHead")]).toEqual(["1,234.5 ft", "1,234.5 m"]);
    expect(texts("SI").get("PriceTotal")).toBe("$1,234.5");
  });

  it("says what is still to fill, and leaves out what a workbook does not have", () => {
    const glance = readGlance(shown("US", (name) => (name === "PriceTotal" ? undefined : "")));
    expect(glance).toHaveLength(NAMES.length - 1);
    expect(new Set(glance.map(({ text }) => text))).toEqual(new Set(["to fill"]));
  });

  it("is empty for a workbook that is none of ours", () => {
    expect(readGlance(shown("feet", () => "1"))).toEqual([]);
    expect(readGlance(GLANCE_PLACES.map(() => undefined))).toEqual([]);
  });
});
