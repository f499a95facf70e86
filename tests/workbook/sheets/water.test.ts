import { beforeAll, describe, expect, it } from "vitest";
import { basin } from "../../../src/workbook/sheets/basin";
import { pump } from "../../../src/workbook/sheets/pump";
import { site } from "../../../src/workbook/sheets/site";
import { water } from "../../../src/workbook/sheets/water";
import { Tried, type Typed } from "./tried";

const SHEETS = [site, water, pump, basin];
const demo = (system: "US" | "SI", typed: Typed = {}): Promise<Tried> => Tried.of(SHEETS, system, "demo", typed);

describe("the Water sheet, demo", () => {
  let us: Tried;
  let si: Tried;
  beforeAll(async () => {
    us = await demo("US");
    si = await demo("SI");
  });

  it("shows no error in either system, nor in the blank workbook", async () => {
    for (const one of [us, si, await Tried.of(SHEETS, "US", "blank"), await Tried.of(SHEETS, "SI", "blank")])
      expect(one.errors("Water")).toEqual([]);
  });

  it("works out the flow by hand: 2.63 L H^1.5 over each lip", () => {
    // 26 in under 0.75 in: 2.63 × 2.16667 ft × 0.0625^1.5 = 0.089036 ft³/s; 14 in under 0.50 in: 2.63 × 1.16667 × 0.0416667^1.5
    // = 0.026097; together 0.115133 × 448.8312 gpm × 60 = 3,100.5 gph
    expect(us.number("DesignFlow")).toBeCloseTo(3100.5, 0);
    // C = 2.63 × √0.3048 = 1.45199: 0.65 × 0.018^1.5 + 0.38 × 0.012^1.5 = 0.0020692 m; × 1.45199 × 3,600,000 = 10,816 L/h
    expect(si.number("DesignFlow") / 10816).toBeCloseTo(1, 3);
  });

  it("gives the split back as the lips it came from", () => {
    expect(us.number("LipSplit", 1, 3)).toBeCloseTo(0.75, 6);
    expect(us.number("LipSplit", 2, 3)).toBeCloseTo(0.5, 6);
    expect(us.number("LipSplit", 1, 2) + us.number("LipSplit", 2, 2)).toBeCloseTo(us.number("DesignFlow"), 6);
  });

  it("shares fall and run equally until the user types, and sets every lip's level", () => {
    // 2.75 ft / 4; 9.5 ft / 4; the third lip lies two drops under 99.4 + 2.75 ft
    expect(us.number("Drops", 4)).toBeCloseTo(0.6875, 9);
    expect(us.number("Treads", 1)).toBeCloseTo(2.375, 9);
    expect(us.value("Drops", 5)).toBe("");
    expect(us.number("TopLipLevel")).toBeCloseTo(102.15, 9);
    expect(us.number("Drops", 3, 3)).toBeCloseTo(102.15 - 2 * 0.6875, 9);
  });

  it("takes a typed flow instead of the lips', and splits that one", async () => {
    const own = await demo("US", { FlowTyped: 2500 });
    expect(own.number("DesignFlow")).toBe(2500);
    expect(own.number("LipSplit", 1, 2) + own.number("LipSplit", 2, 2)).toBeCloseTo(2500, 6);
  });

  it("shows the sheet at the brink, and the flow of an inch or 100 mm of lip", () => {
    // 26 in: 0.089036 ft³/s over 2.16667 ft are 0.041094 ft²/s; critical (0.041094² / 32.174)^(1/3) = 0.037443 ft; × 0.715 = 0.32126 in.
    // 0.089036 × 448.8312 × 60 = 2,397.7 gph; / 26 = 92.2 gph an inch.
    expect(us.number("LipSplit", 1, 5)).toBeCloseTo(0.3213, 3);
    expect(us.number("LipSplit", 1, 6)).toBeCloseTo(92.2, 1);
    // 1.45199 × 0.018^1.5 = 0.0035065 m²/s, 1,262.3 L/h each 100 mm; 0.715 × (0.0035065² / 9.80665)^(1/3) = 7.711 mm.
    expect(si.number("LipSplit", 1, 5)).toBeCloseTo(7.711, 2);
    expect(si.number("LipSplit", 1, 6)).toBeCloseTo(1262.3, 0);
  });

  it("takes the fall from the rim or from finished grade: the rim lies 3 in lower", async () => {
    // 2 ft 9 in from grade is 3 ft from the rim.
    const rim = await demo("US", { FallTyped: 3, FallFrom: "rim of the basin" });
    expect(rim.number("Fall")).toBeCloseTo(2.75, 9);
    expect(rim.number("TopLipLevel")).toBeCloseTo(102.15, 9);
    expect(rim.number("StaticLift")).toBeCloseTo(us.number("StaticLift"), 9);
    // The rim of a metric basin lies 75 mm lower.
    const metric = await demo("SI", { FallTyped: 1.025, FallFrom: "rim of the basin" });
    expect(metric.number("Fall")).toBeCloseTo(0.95, 9);
  });

  it("catches drops and treads that do not add up", async () => {
    const own = await demo("US", { Drops: [[0.9], [0.6], [0.7], [0.5]], Treads: [[3], [2], [2.5], [2]] });
    expect(own.verdict("Water", "Drops")).toBe("FIX"); // 2.70 of 2.75 ft
    expect(own.verdict("Water", "Treads")).toBe("OK"); // 9.5 ft
    expect(us.verdict("Water", "Drops")).toBe("OK");
  });

  it("says when a lip stays dry, when a bed shoots and when it leaves its banks", async () => {
    const dry = await demo("US", { FlowTyped: 300 });
    expect(dry.verdict("Water", "Least flow")).toBe("LOOK");
    const steep = await demo("US", { BedTable: [[2.2, 3.25, 40, "dug, gravel"]] });
    expect(steep.number("BedFroudes")).toBeGreaterThan(1);
    expect(steep.verdict("Water", "Highest Froude")).toBe("LOOK");
    expect((await demo("US", { BankHeight: 0.1 })).verdict("Water", "Deepest bed")).toBe("FIX");
    expect((await demo("US")).verdict("Water", "Wanted sheet")).toBe("OK");
    expect((await demo("US", { SheetWanted: 3 })).verdict("Water", "Wanted sheet")).toBe("LOOK");
  });

  it("draws steps of the drops down to the rim of the basin, and the two levels in it", () => {
    const drawn = us.points("Water");
    // the box 1 ft long, then two points for each drop of 0.6875 ft and tread of 2.375 ft, the last one repeated
    const bed = drawn.get("Bed") ?? [];
    expect(bed.slice(0, 5)).toEqual(
      [
        [0, 102.15],
        [1, 102.15],
        [1, 101.4625],
        [3.375, 101.4625],
        [3.375, 100.775],
      ].map((point) => point.map((value) => expect.closeTo(value, 9))),
    );
    for (const point of [bed[9], bed.at(-1)]) expect(point).toEqual([10.5, expect.closeTo(99.4, 9)]);
    expect(drawn.get("Basin")?.[2]).toEqual([19.5, expect.closeTo(99.15 - 2.25, 9)]);
    expect(drawn.get("Running level")?.[0]?.[1]).toBe(us.number("RunningLevel"));
  });
});
