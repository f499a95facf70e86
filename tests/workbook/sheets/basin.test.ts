import { beforeAll, describe, expect, it } from "vitest";
import { basin } from "../../../src/workbook/sheets/basin";
import { pump } from "../../../src/workbook/sheets/pump";
import { site } from "../../../src/workbook/sheets/site";
import { water } from "../../../src/workbook/sheets/water";
import { Tried, type Typed } from "./tried";

const SHEETS = [site, water, pump, basin];
const demo = (system: "US" | "SI", typed: Typed = {}): Promise<Tried> => Tried.of(SHEETS, system, "demo", typed);

describe("the Basin sheet, demo", () => {
  let us: Tried;
  let si: Tried;
  beforeAll(async () => {
    us = await demo("US");
    si = await demo("SI");
  });

  it("shows no error in either system, nor in the blank workbook", async () => {
    for (const one of [us, si, await Tried.of(SHEETS, "US", "blank"), await Tried.of(SHEETS, "SI", "blank")])
      expect(one.errors("Basin")).toEqual([]);
  });

  it("adds up the basin by hand", () => {
    // 9 × 6.5 × 2.25 = 131.625 ft³; modules 6 × 4.5 × 1.5 = 40.5 (0.95); well π/4 × 2² × 2.25 = 7.0686 (1);
    // gravel 84.0564 (0.40): 38.475 + 7.0686 + 33.6226 = 79.1662 ft³ = 592.2 gal
    expect(us.number("BasinHold")).toBeCloseTo(592.2, 1);
    expect(us.number("VoidFraction")).toBeCloseTo(79.1662 / 131.625, 5);
    // 40.5 + 7.0686 ft³ in yd³; 40.5 ft³ of modules of 2 × 1.5 × 0.75 = 2.25 ft³
    expect(us.number("ModuleVolume")).toBeCloseTo(47.5686 / 27, 4);
    expect(us.number("ModuleCount")).toBe(18);
    // SI: 2.9 × 2.1 × 0.75 = 4.5675; modules 1.08 × 0.95; well π/4 × 0.36 × 0.75 = 0.212058; gravel 3.275442 × 0.4
    expect(si.number("BasinHold")).toBeCloseTo(1026 + 212.06 + 1310.18, 1);
  });

  it("takes the level drop from the gravel above the modules", () => {
    // there the share is (0.4 × (58.5 - π) + π) / 58.5 = 0.43222 over 58.5 ft²
    const drop = us.number("DrainBack") / 7.480519 / (58.5 * 0.432221);
    expect(us.number("LevelDrop") / drop).toBeCloseTo(1, 5);
    expect(us.number("BasinVerdict", 4, 2) / drop).toBeCloseTo(1, 5);
  });

  it("counts the lift from the running level, which more drain-back lowers", async () => {
    // full level 99.4 - 3/12 = 99.15 ft
    expect(us.number("FullLevel")).toBeCloseTo(99.15, 9);
    expect(us.number("RunningLevel")).toBeCloseTo(99.15 - us.number("LevelDrop"), 9);
    // to the water over the lip, three quarters of an inch
    expect(us.number("StaticLift")).toBeCloseTo(102.15 + 0.75 / 12 - us.number("RunningLevel"), 9);
    const more = await demo("US", { SheetWanted: 1.25 });
    expect(more.number("DrainBack")).toBeGreaterThan(us.number("DrainBack"));
    expect(more.number("StaticLift")).toBeGreaterThan(us.number("StaticLift"));
    expect(more.number("DesignHead")).toBeGreaterThan(us.number("DesignHead"));
  });

  it("draws on into the layer of the modules once the gravel above them is empty", async () => {
    // tall modules: 1.9 of 2.25 ft leave 58.5 × 0.35 ft, of it well 1.0996 ft³, gravel 19.3754 × 0.4: 66.20 gal on top;
    // a pool of 120 ft² gives back more
    const tall = await demo("US", {
      BasinParts: [
        ["modules", 6, 4.5, 1.9],
        ["round well", 2, "", 2.25],
      ],
      PoolTable: [[120, 22]],
    });
    const [top, hold, back] = [tall.number("TopLayerWater"), tall.number("BasinHold"), tall.number("DrainBack")];
    expect(top).toBeCloseTo((1.0996 + 19.3754 * 0.4) * 7.480519, 1);
    expect(back).toBeGreaterThan(top);
    expect(tall.number("LevelDrop")).toBeCloseTo(0.35 + (1.9 * (back - top)) / (hold - top), 9);
    expect(tall.number("BasinVerdict", 4, 2)).toBeCloseTo(tall.number("LevelDrop"), 5);
  });

  it("keeps its sums without any module, and with modules as high as the water", async () => {
    const gravel = await demo("US", {
      BasinParts: [
        ["", "", "", ""],
        ["", "", "", ""],
      ],
    });
    // 131.625 ft³ × 0.4 × 7.480519 = 393.85 gal; the drop is even over 58.5 ft² × 0.4
    expect(gravel.number("BasinHold")).toBeCloseTo(393.85, 1);
    expect(gravel.number("LevelDrop")).toBeCloseTo(gravel.number("DrainBack") / 7.480519 / 58.5 / 0.4, 6);
    expect(gravel.number("LowWater")).toBeCloseTo((393.85 * 0.5) / 2.25, 1);
    expect(gravel.errors("Basin")).toEqual([]);
    const full = await demo("US", { BasinParts: [["modules", 6, 4.5, 2.25]] });
    expect(full.number("TopLayerWater")).toBe(0);
    expect(full.number("LevelDrop")).toBeCloseTo((2.25 * full.number("DrainBack")) / full.number("BasinHold"), 9);
    expect(full.errors("Basin")).toEqual([]);
  });

  it("sums need and margin, and finds the depth at which the need fits", () => {
    const need = us.number("DrainBack") + us.number("LowWater") + us.number("ReserveDays") * us.number("LossPerDay");
    expect(us.number("BasinVerdict", 1, 2)).toBeCloseTo(need, 6);
    expect(us.number("BasinVerdict", 3, 2)).toBeCloseTo(592.204 - need, 2);
    // upright walls: need / (area × mean share)
    const depth = need / 7.480519 / (58.5 * us.number("VoidFraction"));
    expect(us.number("NeedDepth")).toBeCloseTo(depth, 5);
  });

  it("says when the basin is short, when it spills and when the pump would suck air", async () => {
    expect(us.verdict("Basin", "Spare water")).toBe("OK");
    const long = await demo("US", { ReserveDays: 60 });
    expect(long.verdict("Basin", "Spare water")).toBe("FIX");
    expect(long.verdict("Basin", "Water that spills")).toBe("OK");
    const small = await demo("US", {
      BasinLength: 3,
      BasinWidth: 2,
      BasinParts: [
        ["", "", "", ""],
        ["", "", "", ""],
      ],
    });
    expect(small.verdict("Basin", "Water that spills")).toBe("FIX");
    expect(small.verdict("Basin", "Water over the floor")).toBe("FIX");
    expect(small.errors("Basin")).toEqual([]);
  });

  it("says when a part does not fit and when a row is incomplete, without breaking the rest", async () => {
    const deep = await demo("US", { BasinWaterDepth: 1 });
    expect(deep.verdict("Basin", "Modules and wells")).toBe("FIX");
    const half = await demo("US", { PoolTable: [[3.4, ""]] });
    expect(half.verdict("Basin", "Pools, beds and pipes")).toBe("FIX");
  });

  it("looks at the rim and at the gravel's share", async () => {
    expect((await demo("SI", { RimBelowGrade: 300 })).verdict("Basin", "Rim below")).toBe("LOOK");
    expect((await demo("SI", { GravelVoids: 0.67 })).verdict("Basin", "Room for water")).toBe("LOOK");
    expect(si.verdict("Basin", "Rim below")).toBe("OK");
  });

  it("looks at the water that a pump stronger than wanted keeps in the stream", async () => {
    // Hold 592.2, low water 150.1 and 24 days of 16.08 gal leave 56.2: room for the drain-back of 38.5 gal. Demo C delivers
    // 1.85 times the flow, which keeps up to 1.85^(2/3) = 1.51 times as much in the stream: 58 gal.
    const typed = { ReserveDays: 24, ChosenPump: "Demo C, large (invented)" };
    const strong = await demo("US", typed);
    expect(strong.verdict("Basin", "Spare water beyond")).toBe("OK");
    expect(strong.verdict("Basin", "Spare water at the flow")).toBe("LOOK");
    const chosen = await demo("US", { ReserveDays: 24 });
    expect(chosen.verdict("Basin", "Spare water at the flow")).toBe("OK");
  });

  it("keeps the pipe's water where a check valve holds it", async () => {
    const held = await demo("SI", { CheckValve: "yes" });
    // 63 mm and 75 mm PN10 bores over the demo's lengths: what the table shows without the valve
    const pipes = si.number("DrainParts", 7, 2) + si.number("DrainParts", 8, 2);
    expect(held.number("DrainBack")).toBeCloseTo(si.number("DrainBack") - pipes, 6);
  });
});
