import { describe, expect, it } from "vitest";
import { defineSheet } from "../../../src/workbook/layout";
import { site } from "../../../src/workbook/sheets/site";
import { start } from "../../../src/workbook/sheets/start";
import { Tried, type Typed } from "./tried";

/** What Water makes of the fall that was typed: here it was measured from finished grade. */
const water = defineSheet({
  name: "Given",
  order: 3,
  build(s) {
    s.result({ name: "Fall", label: "Fall", kind: "length", formula: "FallTyped", needs: ["FallTyped"] });
  },
});

const demo = (system: "US" | "SI", typed: Typed): Promise<Tried> =>
  Tried.of([start, site, water], system, "demo", typed);

describe("Site", () => {
  it("calls a feature steeper than 1 in 1 a wall", async () => {
    expect((await demo("US", { FallTyped: 4, Run: 3.9 })).verdict("Site", "Slope")).toBe("LOOK");
    expect((await demo("US", {})).verdict("Site", "Slope")).toBe("OK");
  });

  it("leads to the cell of a check that has no name by its address", async () => {
    const small = defineSheet({
      name: "Small",
      order: 4,
      build(s) {
        s.title("Small", "A check.");
        s.check({ label: "Steep", value: "=FallTyped", limit: 0, cure: "Less.", fix: "Small!B9" });
      },
    });
    const one = await Tried.of([start, site, small], "US", "demo", {});
    const rows = [1, 2, 3, 4].map((row) => [1, 6].map((column) => one.value("Checks", row, column)));
    expect(rows).toContainEqual(["Steep", "Small!B9"]);
  });

  it("asks for more drops where one would be tall", async () => {
    // 2.75 ft in one drop is more than 2 ft; 0.95 m in one is more than 0.6 m, in two 0.475 m.
    expect((await demo("US", { DropCount: 1 })).verdict("Site", "Fall of one drop")).toBe("LOOK");
    expect((await demo("SI", { DropCount: 1 })).verdict("Site", "Fall of one drop")).toBe("LOOK");
    expect((await demo("SI", { DropCount: 2 })).verdict("Site", "Fall of one drop")).toBe("OK");
  });

  it("counts the inputs that are still blank, and Start adds them up", async () => {
    const without = await demo("US", { FallTyped: "", ClientName: "" });
    expect(without.verdict("Site", "Inputs still blank")).toBe("FIX");
    expect(without.verdict("Site", "Slope")).toBe("to fill");
    // Two checks need the fall; the blank inputs are one more to fix.
    expect([without.number("ChecksToFix"), without.number("ChecksToFill"), without.number("ChecksOk")]).toEqual([
      1, 2, 0,
    ]);
  });

  it("names the first input that is still blank, on its sheet and on Start", async () => {
    // Label, value, unit, limit, verdict, where, and what to do; the check of blank inputs comes first.
    const cure = async (typed: Typed): Promise<unknown> => (await demo("US", typed)).value("Checks", 1, 7);
    expect(await cure({ FallTyped: "", ClientName: "" })).toBe("Fill in: Client and 1 more.");
    expect(await cure({ FallTyped: "" })).toBe("Fill in: Fall, up to the top lip.");
    expect(await cure({ Run: "14 ft", ClientName: "" })).toBe("No number in: Run. Type one, or use =RILL.QTY.");
    expect(await cure({})).toBe("Fill in what is marked and still blank.");
  });
});
