import { beforeAll, describe, expect, it } from "vitest";
import { basin } from "../../../src/workbook/sheets/basin";
import { ground } from "../../../src/workbook/sheets/ground";
import { liner } from "../../../src/workbook/sheets/liner";
import { pump } from "../../../src/workbook/sheets/pump";
import { site } from "../../../src/workbook/sheets/site";
import { stone } from "../../../src/workbook/sheets/stone";
import { water } from "../../../src/workbook/sheets/water";
import { Tried, type Typed } from "./tried";

const SHEETS = [site, ground, water, pump, basin, liner, stone];
/** Without shots the stream's piece is the rectangle over drops and treads. */
const UNSHOT: Typed = { Shots: Array.from({ length: 11 }, () => ["", "", "", "", "", ""]) };
const demo = (system: "US" | "SI", typed: Typed = {}): Promise<Tried> =>
  Tried.of(SHEETS, system, "demo", { ...UNSHOT, ...typed });

describe("the Liner sheet", () => {
  let us: Tried;
  let si: Tried;
  beforeAll(async () => {
    us = await demo("US");
    si = await demo("SI");
  });

  it("shows no error in either system, nor in the blank workbook", async () => {
    for (const one of [us, si, await Tried.of(SHEETS, "US", "blank"), await Tried.of(SHEETS, "SI", "blank")])
      expect(one.errors("Liner")).toEqual([]);
  });

  it("sizes stream and basin by hand", () => {
    // 2.75 + 9.5 + 4 × 0.25 + 2 = 15.25, up to 15.5 ft. Bank stones reach back 10 in and stand on the sheet:
    // 3.25 + 2 × 10/12 + 2 × 0.9 + 2 = 8.717, up to 9 ft
    expect([us.number("LinerPieces", 1, 2), us.number("LinerPieces", 1, 3)]).toEqual([15.5, 9]);
    // 9 + 2 × 2.25 + 2 = 15.5 ft; 6.5 + 4.5 + 2 = 13 ft
    expect(us.number("LinerPieces", 2, 2)).toBeCloseTo(15.5, 9);
    expect(us.number("LinerPieces", 2, 3)).toBeCloseTo(13, 9);
    // 0.95 + 3.4 + 5 × 0.08 + 0.6 = 5.35, up to 5.4 m; 1.1 + 2 × 0.25 + 2 × 0.3 + 0.6 = 2.8 m
    expect(si.number("LinerPieces", 1, 2)).toBeCloseTo(5.4, 9);
    expect(si.number("LinerPieces", 1, 3)).toBeCloseTo(2.8, 9);
  });

  it("buys neither liner nor fabric while the stream's piece is not known, unless it was taken out by hand", async () => {
    const open = await demo("US", { DropCount: [[""]] });
    for (const name of ["PieceCount", "LinerBuyArea", "LinerBuyLength", "LinerCost", "FabricBuyArea", "HeaviestPiece"])
      expect([name, open.value(name)]).toEqual([name, ""]);
    // Basin and skirts alone: 15.5 × 13 ft off the 15 ft roll, the skirts beside it, and no stream.
    const without = await demo("US", { LinerPieces: [["", "", "", ""]] });
    expect(without.number("PieceCount")).toBe(3);
    expect(without.number("LinerBuyArea")).toBeGreaterThan(15.5 * 13);
  });

  it("buys no less than the pieces, at the prices of the rolls", () => {
    // 15.5 × 9 + 15.5 × 13 + 6.5 × 4 + 2 × 4.5 × 2.5 = 389.5 ft²
    expect(us.number("LinerBuyArea") * (1 - us.number("LinerWasteShare"))).toBeCloseTo(389.5, 4);
    // The 15 ft roll is the cheapest by area: 14.60 / 15 a ft².
    expect(us.number("LinerCost")).toBeGreaterThan((389.5 * 14.6) / 15);
    const lengths = [1, 2, 3].map((row) => us.number("RollBuyLengths", row));
    const [cut = 0, byArea = 0, full = 0] = lengths;
    expect(us.number("LinerCost")).toBeCloseTo(cut * 14.6 + byArea * 20 * 1.02 + (full / 50) * 930, 1);
    expect(us.number("LinerBuyLength")).toBeCloseTo(cut + byArea + full, 9);
    expect(us.value("LinerPlanState")).toBe("proven least cost");
  });

  it("covers stream, basin and skirts with fabric by hand", () => {
    // Two layers, 6 ft roll, 0.5 ft lap. Stream: across (15.5 − 0.5) / 5.5 = 2.7, 3 of 9 ft = 27; along
    // (9 − 0.5) / 5.5 = 1.5, 2 of 15.5 ft = 31. Basin: across 3 of 13 ft = 39; along (13 − 0.5) / 5.5 = 2.3, 3 of 15.5.
    // Skirts: 2 × (6.5 × 4 + 2 × 4.5 × 2.5) = 97 ft², and a tenth more.
    expect(us.number("FabricBuyArea")).toBeCloseTo(6 * 2 * (27 + 39) + 106.7, 6);
    expect(us.number("FabricBuyLength")).toBeCloseTo(898.7 / 6, 6);
    // 898.7 ft² of 8 oz/yd²: 99.856 yd² × 0.5 lb
    expect(us.number("FabricWeight")).toBeCloseTo(49.928, 3);
  });

  it("says what to carry", () => {
    // 15.5 × 13 × 0.29 = 58.4 lb; 50 lb to a person
    expect(us.number("HeaviestPiece")).toBeCloseTo(58.435, 2);
    expect(us.number("LinerCarriers")).toBe(2);
  });

  it("follows the stream and the walls of the pit", async () => {
    const sloped = await demo("US", { BasinSideSlope: 1, DropCount: 5 });
    // 9 + 2 × 2.25 × √2 + 2 = 17.36, up to 17.5 ft
    expect(sloped.number("LinerPieces", 2, 2)).toBeCloseTo(17.5, 9);
    // one drop more is 0.25 ft of slack more: 15.5 ft
    expect(sloped.number("LinerPieces", 1, 2)).toBeCloseTo(15.5, 9);
    const deeper = await demo("US", { SlackPerDrop: 0.5 });
    expect(deeper.number("LinerPieces", 1, 2)).toBeCloseTo(16.5, 9);
  });

  it("asks for a wider roll or a seam, and seams when that is allowed", async () => {
    const rolls = [
      [10, 9.4, "length", 100],
      ["", "", "", ""],
      ["", "", "", ""],
    ];
    const narrow = await demo("US", { LinerRolls: rolls });
    expect(narrow.verdict("Liner", "Pieces wider")).toBe("FIX");
    expect(narrow.value("PieceFits", 2)).toBe("needs a seam");
    const seamed = await demo("US", { LinerRolls: rolls, SeamLap: 4, SeamPrice: 20 });
    expect(seamed.verdict("Liner", "Pieces wider")).toBe("OK");
    expect(seamed.errors("Liner")).toEqual([]);
    // The basin is 15.5 by 13 ft; at 20 a ft one seam along its shorter side, and a tenth more of tape.
    expect(seamed.number("SeamTapeLength")).toBeCloseTo(1.1 * 13, 6);
    expect(seamed.value("LinerPlanState")).toBe("proven least cost of the partings tried");
  });

  it("looks at thickness, fabric and waste", async () => {
    const thin = await demo("US", { LinerThickness: 30, FabricUnder: 0, FabricOver: 0 });
    expect(thin.verdict("Liner", "Thickness")).toBe("LOOK");
    expect(thin.verdict("Liner", "Fabric under")).toBe("LOOK");
    expect(thin.number("FabricBuyArea")).toBe(0);
    expect(us.verdict("Liner", "Waste")).toBe("OK");
    const wide = await demo("US", {
      LinerRolls: [
        [40, 40, "length", 100],
        ["", "", "", ""],
        ["", "", "", ""],
      ],
    });
    expect(wide.verdict("Liner", "Waste")).toBe("LOOK");
  });
});
