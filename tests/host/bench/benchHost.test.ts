import { beforeEach, describe, expect, it } from "vitest";
import { areaName, overlap, parseArea, type Area } from "../../../src/xlsx/address";
import type { BenchGrid, Write } from "../../../src/host/bench/benchGrid";
import { createBenchHost } from "../../../src/host/bench/benchHost";
import { HostRefusal, type Host } from "../../../src/host/port";

const area = (address: string): Area => {
  const found = parseArea(address);
  if (!found) throw new Error(address);
  return found;
};

let host: Host;
/** Every call that reached the grid; each is one step of undo. */
let steps: (readonly Write[])[];
let selection: string;
let settings: Map<string, string>;

beforeEach(() => {
  steps = [];
  selection = "Own!D4:E9";
  settings = new Map();
  const locked = area("Pump!B2:B3");
  const grid: Partial<BenchGrid> = {
    names: () => [
      { name: "StaticLift", address: "Pump!B2", broken: false },
      { name: "Wanted", address: "Pump!B4:B5", broken: false },
      { name: "Lost", address: "Gone!A1", broken: false },
    ],
    hasSheet: (sheet) => ["Pump", "Own"].includes(sheet),
    values: (at) => [[areaName(at)]],
    shown: (at) => [[`shown ${areaName(at)}`]],
    formulas: (at) => [[`=${areaName(at)}`]],
    locked: (at) => overlap(at, locked),
    write: (changes) => Promise.resolve(void steps.push(changes)),
    select: (at) => void (selection = areaName(at)),
    selected: () => ({ sheet: "Own", address: selection, value: "", formula: "" }),
    setting: (key) => settings.get(key),
    keepSetting: (key, value) => void settings.set(key, value),
  };
  host = createBenchHost(grid as BenchGrid);
});

describe("the bench as a host", () => {
  it("reads by name and by address, and nothing of what is not there", async () => {
    expect(await host.read(["staticlift", "Own!A1", "Missing", "Lost", "Gone!A1"])).toEqual([
      [["Pump!B2"]],
      [["Own!A1"]],
      undefined,
      undefined,
      undefined,
    ]);
    expect(await host.show(["Wanted", "Lost"])).toEqual([[["shown Pump!B4:B5"]], undefined]);
    expect(await host.formulas(["Wanted", "Lost"])).toEqual([[["=Pump!B4:B5"]], undefined]);
  });

  it("knows what may be written", async () => {
    expect(await host.canWrite(["Wanted", "StaticLift", "Pump!B3:B4", "Lost"])).toEqual([true, false, false, false]);
  });

  it("writes several places in one step that undo takes back", async () => {
    await host.write([
      { place: "Wanted", values: [[1], [2]] },
      { place: "Own!A1", values: [["x"]] },
    ]);
    expect(steps).toEqual([
      [
        { area: area("Pump!B4:B5"), values: [[1], [2]] },
        { area: area("Own!A1"), values: [["x"]] },
      ],
    ]);
  });

  it.each([
    ["a locked cell", { place: "StaticLift", values: [[1]] }, "Pump!B2 holds results and is protected"],
    ["a place that is not there", { place: "Missing", values: [[1]] }, '"Missing" is not in this workbook'],
    ["a grid of the wrong size", { place: "Wanted", values: [[1]] }, "do not fit Pump!B4:B5"],
  ])("writes nothing at all where one change is for %s", async (_, change, said) => {
    const writing = host.write([{ place: "Own!A1", values: [["x"]] }, change]);
    await expect(writing).rejects.toThrow(HostRefusal);
    await expect(writing).rejects.toThrow(said);
    await expect(writing).rejects.toThrow("nothing was written");
    expect(steps).toEqual([]);
  });

  it("inserts a formula into the first selected cell, unless that is locked", async () => {
    expect(await host.insertFormula("=RILL.FTIN(2)")).toBe("Own!D4");
    expect(steps).toEqual([[{ area: area("Own!D4"), values: [["=RILL.FTIN(2)"]] }]]);
    selection = "Pump!B3:B4";
    await expect(host.insertFormula("=1")).rejects.toThrow("Pump!B3 is protected; select an unlocked cell");
    expect(steps).toHaveLength(1);
  });

  it("goes to a place, and says when there is none", async () => {
    await host.select("Wanted");
    expect(selection).toBe("Pump!B4:B5");
    await expect(host.select("Missing")).rejects.toThrow('"Missing" is not in this workbook.');
  });

  it("keeps its settings apart from those of others in the same browser", async () => {
    await host.keepSetting("view", "2");
    expect([...settings]).toEqual([["rillwright.view", "2"]]);
    expect(await host.setting("view")).toBe("2");
  });
});
