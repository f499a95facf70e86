import { beforeAll, describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { defineSheet } from "../../../src/workbook/layout";
import { type CellValue, type WorkbookModel } from "../../../src/workbook/model";
import { pump } from "../../../src/workbook/sheets/pump";
import { site } from "../../../src/workbook/sheets/site";
import { calculate } from "../calculated";
import { typeInto } from "../jobs";
import { shownIn, verdictIn } from "./tried";
import { Epanet } from "../../published/epanet";

/** What Water, Basin and Price would hand over. */
const given = defineSheet({
  name: "Given",
  order: 3,
  build(s) {
    s.title("Given", "Stands in for other sheets.");
    const level = (name: string, demo: { US: number; SI: number }): void => {
      s.input({ name, label: name, kind: "number", demo, min: -1e6, max: 1e6, message: "A number." });
    };
    level("DesignFlow", { US: 3000, SI: 10_800 });
    level("TopLipLevel", { US: 102.15, SI: 50.77 });
    level("RunningLevel", { US: 98.9, SI: 49.7 });
    level("MoneyDigits", { US: 2, SI: 2 });
    // Lip, flow, and the sheet over it.
    const text = { message: "A word." };
    const number = { min: 0, max: 1e6, message: "A number." };
    s.table({
      name: "LipSplit",
      rows: 1,
      columns: [
        { key: "lip", title: "Lip", kind: "text", input: text },
        { key: "flow", title: "Flow", kind: "flow", input: number },
        { key: "sheet", title: "Sheet", kind: "size", input: number },
      ],
      demo: { US: [["Lip 1", 3000, 0.75]], SI: [["Lip 1", 10_800, 20]] },
    });
  },
});

interface Changes {
  readonly [name: string]: CellValue | "" | readonly (readonly (CellValue | "")[])[];
}

async function pumpSheet(system: "US" | "SI", filled: "demo" | "blank", changes: Changes = {}): Promise<PumpSheet> {
  const model = assemble([site, given, pump], system, filled);
  for (const [name, value] of Object.entries(changes)) typeInto(model, name, Array.isArray(value) ? value : [[value]]);
  await calculate(model);
  return new PumpSheet(model);
}

class PumpSheet {
  private readonly sheet;
  constructor(private readonly model: WorkbookModel) {
    const sheet = model.sheets.find(({ name }) => name === "Pump");
    if (!sheet) throw new Error("no Pump sheet");
    this.sheet = sheet;
  }

  value(name: string): unknown {
    const found = this.model.names.find((one) => one.name === name);
    return found && shownIn(this.sheet, found.area.top, found.area.left);
  }

  /** The verdict of the check whose label begins so. */
  verdict(label: string): unknown {
    return verdictIn([this.sheet], label);
  }

  results(): unknown[] {
    return [...this.sheet.rows.values()].flatMap((cells) => [...cells.values()].map(({ result }) => result)).flat(2);
  }
}

const isError = (value: unknown): boolean => typeof value === "string" && /^#|^ERROR$|^error$/.test(value);

describe("the Pump sheet, demo", () => {
  let us: PumpSheet;
  let si: PumpSheet;
  beforeAll(async () => {
    us = await pumpSheet("US", "demo");
    si = await pumpSheet("SI", "demo");
  });

  it("shows no error in either system", () => {
    for (const sheet of [us, si]) expect(sheet.results().filter(isError)).toEqual([]);
  });

  it("adds up the head as by hand", () => {
    // 3000 gph = 50 gpm, lift from water to water 102.15 + 0.75/12 - 98.9 = 3.3125 ft.
    // 2 1/2 in (2.469): V = 0.4085 × 50 / 2.469² = 3.351 ft/s, V²/2g = 0.1745; K = 0.9 + 0.06 + 2.5 + 0.04 + 0.5 + 0.2 = 4.2: 0.733;
    //   hf = 0.2083 (100/150)^1.852 50^1.852 / 2.469^4.8655 = 1.695 ft per 100 ft, 4 ft: 0.068
    // 3 in (3.068): V = 2.170 ft/s, V²/2g = 0.0732; K = 2 × 0.6 + 2 × 0.4 = 2: 0.146; hf = 0.589 per 100 ft, 31 ft: 0.183; outlet 0.073
    // 3.3125 + 0.068 + 0.733 + 0.183 + 0.146 + 0.073 = 4.516 ft
    expect(us.value("StaticLift")).toBeCloseTo(3.3125, 9);
    // 50.77 + 0.020 - 49.7 m
    expect(si.value("StaticLift")).toBeCloseTo(1.09, 9);
    expect(us.value("PipeTotalLength")).toBe(35);
    expect(us.value("DesignHead")).toBeCloseTo(4.516, 2);
    expect(us.value("PipeSpeed")).toBeCloseTo(3.351, 2);
  });

  it("delivers what EPANET says", async () => {
    const epanet = await Epanet.start();
    const gallon = 3.785411784 / 3600;
    const foot = 0.3048;
    const { flow } = epanet.solve({
      from: 0,
      to: 3.3125 * foot,
      method: "H-W",
      viscosity: 1,
      curve: [
        [0, 11.4],
        [1200, 10.5],
        [2400, 8.4],
        [3300, 5.5],
        [4000, 2.6],
        [4500, 0.6],
      ].map(([q = 0, h = 0]) => [q * gallon, h * foot] as const),
      pumps: 1,
      speed: 1,
      pipes: [
        { bore: 2.469 * 25.4, length: 4 * foot, roughness: 150, k: 4.2 },
        { bore: 3.068 * 25.4, length: 31 * foot, roughness: 150, k: 3 },
      ],
    });
    expect(Math.abs((us.value("DeliveredFlow") as number) / (flow / gallon) - 1)).toBeLessThan(0.002);
  });

  it("calculates electricity and ownership by hand: 0.265 kW × 16 h × 235 d × 0.174 = 173.37; 418 + 8 × 173.37", () => {
    expect(us.value("YearlyEnergyCost")).toBeCloseTo(173.37, 9);
    expect(us.value("PumpOwnCost")).toBeCloseTo(1804.96, 9);
  });

  it("takes the power with the cube of the speed: 265 W at 0.8 is 265 × 0.512 = 135.68 W, two pumps twice that", async () => {
    const slow = await pumpSheet("US", "demo", { PumpSpeed: 0.8 });
    expect(slow.value("PumpWatts")).toBeCloseTo(135.68, 9);
    // 0.13568 kW × 16 h × 235 d × 0.174 = 88.77
    expect(slow.value("YearlyEnergyCost")).toBeCloseTo(88.77, 9);
    const two = await pumpSheet("US", "demo", { PumpSpeed: 0.8, PumpCount: 2 });
    expect(two.value("PumpWatts")).toBeCloseTo(271.36, 9);
  });

  it("reads the head to spare by hand", () => {
    // 3000 gph lies two thirds of the way from 8.4 ft at 2400 to 5.5 ft at 3300, on the line 6.46667 ft. Slopes per 1000 gph:
    // lines -1.75, -3.22222, -4.14286; at 2400 (900 × -1.75 + 1200 × -3.22222) / 2100 = -2.59127, at 3300
    // (700 × -3.22222 + 900 × -4.14286) / 1600 = -3.74008. a = 0.63095 × 0.6 = 0.37857, b = 0.51786 × 0.3 = 0.15536,
    // a b / (a + b) = 0.11015: 6.577 ft, 46 % over 4.516 ft.
    expect(us.value("HeadAtWanted")).toBeCloseTo(6.5768, 3);
    expect(us.verdict("Head to spare")).toBe("OK");
  });

  it("suggests the pump that serves, and finds nothing amiss", () => {
    for (const sheet of [us, si]) {
      expect(sheet.value("SuggestedPump")).toBe("Demo A, middle (invented)");
      for (const label of [
        "Lift",
        "Water speed",
        "Shut-off head above",
        "Works on",
        "Flow delivered",
        "Flow not",
        "Curve in",
      ]) {
        expect(sheet.verdict(label), label).toBe("OK");
      }
    }
  });
});

describe("the Pump sheet catches", () => {
  const small = "Demo B, small (invented)";
  it.each<[string, Changes, string, string]>([
    ["a top lip below the water", { TopLipLevel: 98 }, "Lift", "FIX"],
    ["a pipe too narrow", { RouteSizes: 1.5 }, "Water speed in the pipe", "LOOK"],
    ["a pump without a price", { PumpPrices: "" }, "Pumps with blanks", "FIX"],
    ["a pump that cannot lift", { ChosenPump: small, TopLipLevel: 107 }, "Shut-off head above", "FIX"],
    ["a pump too weak", { ChosenPump: small }, "Flow delivered", "FIX"],
    ["a pump far too strong", { ChosenPump: "Demo C, large (invented)" }, "Flow not far over", "LOOK"],
    [
      "a flat curve, which meets the flow with little head to spare",
      {
        PumpTable: [["Demo A, middle (invented)", 418, 265, 5, 1200, 4.9, 2400, 4.8, 3300, 4.7, 4000, 4.6, 4500, 4.5]],
      },
      "Head to spare",
      "LOOK",
    ],
    ["a dear choice", { ChosenPump: "Demo C, large (invented)" }, "Cheapest pump that serves", "LOOK"],
    ["two pumps without a check valve each", { PumpCount: 2 }, "Check valve for", "FIX"],
    [
      "two pumps with risers, and a check valve in the shared pipe only",
      { PumpCount: 2, RiserSizes: 2.5 },
      "Check valve for",
      "FIX",
    ],
    ["two pumps with a check valve in each riser", { PumpCount: 2, RiserFittings7: 1 }, "Check valve for", "OK"],
    ["two pumps where one serves", { PumpCount: 2 }, "Cheapest pump that serves", "LOOK"],
    ["no tariff", { Tariff: "" }, "Power and tariff", "FIX"],
    [
      "gpm typed as gph",
      { PumpTable: [["Demo A, middle (invented)", 418, 265, 11.4, 20, 10.5, 40, 8.4, 55, 5.5, 67, 2.6, 75, 0.6]] },
      "Curve in gph",
      "FIX",
    ],
    [
      "a curve that ends too soon",
      { PumpTable: [["Demo A, middle (invented)", 418, 265, 11.4, 1200, 10.5, 2400, 8.4, "", "", "", "", "", ""]] },
      "Works on its curve",
      "FIX",
    ],
  ])("%s", async (_, changes, label, verdict) => {
    expect((await pumpSheet("US", "demo", changes)).verdict(label)).toBe(verdict);
  });
});

describe("the Pump sheet, worked with", () => {
  it("gives more water with a second pump, but not twice as much, and counts its power", async () => {
    const one = await pumpSheet("SI", "demo");
    const two = await pumpSheet("SI", "demo", { PumpCount: 2 });
    const ratio = (two.value("DeliveredFlow") as number) / (one.value("DeliveredFlow") as number);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(2);
    expect(two.value("PumpWatts")).toBe(430);
  });

  it("counts power with the cube of the speed: 265 W × 0.8³ = 135.68 W", async () => {
    expect((await pumpSheet("US", "demo", { PumpSpeed: 0.8 })).value("PumpWatts")).toBeCloseTo(135.68, 9);
  });

  it("sends half the flow through each riser of two pumps", async () => {
    const riser = { PumpCount: 2, RiserTable: [[2.5, 4, "Sch 40 PVC", 4.2]] };
    const two = await pumpSheet("US", "demo", { ...riser, RouteTable: [[3, 31, "Sch 40 PVC", 2]] });
    // By hand: each 2 1/2 in riser 25 gpm, V = 0.4085 × 25 / 2.469² = 1.6754 ft/s, V²/2g = 0.04362, × 4.2 = 0.1832 ft, friction
    // 10.67 × 1.2192 × 0.00157725^1.852 / (150^1.852 × 0.0627126^4.8704) = 0.00565 m = 0.0185 ft; two rows of 31 ft of 3 in with
    // K 2 each (the second is the demo's): friction 2 × 0.1800 ft, V²/2g = 0.07317, × (4 + 1 for the outlet) = 0.3659 ft.
    // 3.3125 + 0.0185 + 0.1832 + 0.3601 + 0.3659 = 4.2402 ft
    expect(two.value("DesignHead")).toBeCloseTo(4.2402, 3);
    // 31 + 31 + 2 × 4 ft
    expect(two.value("PipeTotalLength")).toBe(70);
  });

  it("suggests as many of a pump as the flow needs, where none serves alone", async () => {
    const pumps = [["Little (invented)", 100, 60, 7.6, 600, 7, 1200, 5.8, 1800, 4.1, 2300, 2.1, 2650, 0.5]];
    const sheet = await pumpSheet("US", "demo", { PumpTable: pumps, ChosenPump: "Little (invented)", PumpCount: 2 });
    expect(sheet.value("SuggestedPump")).toBe("2 of Little (invented)");
    // 0.06 kW × 16 h × 235 d × 0.174 = 39.25 each; 2 × (100 + 8 × 39.25), what the sheet calculates for two of them too
    expect(sheet.value("PumpOwnCost")).toBeCloseTo(828, 0);
    expect(sheet.verdict("Cheapest pump")).toBe("OK");
  });

  it("lets the sum of K be typed over", async () => {
    const typed = await pumpSheet("US", "demo", { RouteTable: [[2.5, 4, "Sch 40 PVC", 0]] });
    // 4.516 less the 0.733 of the fittings
    expect(typed.value("DesignHead")).toBeCloseTo(3.783, 2);
  });

  it.each(["US", "SI"] as const)("asks to be filled when blank, with no error: %s", async (system) => {
    const blank = await pumpSheet(system, "blank");
    expect(blank.results().filter(isError)).toEqual([]);
    expect(blank.verdict("Flow delivered")).toBe("to fill");
    expect(blank.verdict("Inputs still blank on Pump")).toBe("FIX");
  });
});
