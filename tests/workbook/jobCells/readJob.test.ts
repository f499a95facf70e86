import { beforeAll, describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { yoursName } from "../../../src/workbook/yoursName";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import { openWorkbook, recalculate, type OpenedWorkbook } from "../../../src/workbook/recalculate";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";

const bytesOf = (system: "US" | "SI", filled: "demo" | "blank"): Promise<Uint8Array> =>
  writeWorkbook(assemble(sheets, system, filled), { charts: false });

let opened: OpenedWorkbook;
let cell: (name: string, row?: number, column?: number) => string;
beforeAll(async () => {
  opened = await openWorkbook(await bytesOf("US", "demo"));
  const { names } = assemble(sheets, "US", "demo");
  cell = (name, row = 1, column = 1) => {
    const found = names.find((one) => one.name === yoursName(name)) ?? names.find((one) => one.name === name);
    if (!found) throw new Error(`no name ${name}`);
    const { sheet, area } = found;
    return `${sheet}!${String.fromCharCode(64 + area.left + column - 1)}${area.top + row - 1}`;
  };
});

describe("a job read from a workbook", () => {
  it("is in SI, whatever it was typed in", () => {
    const { used: job, wrong } = readJob(opened.recalculate());
    expect(wrong).toEqual([]);
    expect(job.system).toBe("US");
    // By definition: 1 ft = 0.3048 m, 1 in = 0.0254 m, 1 mil = 0.0254 mm, 1 oz/yd² = 33.9057 g/m², 72 °F = 22.222 °C.
    expect(job.fallTyped).toBeCloseTo(2.75 * 0.3048, 12);
    expect(job.lips).toEqual([
      { width: 26 * 0.0254, level: 0 },
      { width: 14 * 0.0254, level: 0.25 * 0.0254 },
    ]);
    expect(job.linerThickness).toBeCloseTo(45 * 0.0254e-3, 12);
    expect(job.fabricMass).toBeCloseTo(8 * 0.0339057, 6);
    expect(job.airTemperature).toBeCloseTo(30, 9);
    expect(job.beds[1]?.slope).toBeCloseTo(0.04, 12);
    expect(job.soil).toBe("loam");
    expect(job.pumps.map(({ name }) => name)).toHaveLength(3);
    expect(job.flowTyped).toBeUndefined();
  });

  it("tells what was typed over a rule, and what was emptied, from what the rule gives", () => {
    const asBuilt = readJob(opened.recalculate()).job;
    expect(asBuilt.drops).toEqual([]);
    expect(asBuilt.pieces.map(({ length }) => length)).toEqual([undefined, undefined, 6.5 * 0.3048, 4.5 * 0.3048]);
    const typed = new Map<string, string | number>([
      [cell("Drops", 2), 0.5],
      [cell("Treads", 1), ""],
    ]);
    expect(readJob(opened.recalculate(typed)).job.drops).toEqual([{ tread: null }, { drop: 0.5 * 0.3048 }]);
  });

  it("names the cells that hold something else than their fact", () => {
    const typed = new Map<string, string | number>([
      [cell("FallTyped"), "about three feet"],
      [cell("CheckValve"), "maybe"],
    ]);
    const { job, wrong } = readJob(opened.recalculate(typed));
    expect(job.fallTyped).toBeUndefined();
    expect(job.checkValve).toBeUndefined();
    expect(wrong.map(({ cell: at, shown }) => [at, shown])).toEqual([
      [cell("FallTyped"), "about three feet"],
      [cell("CheckValve"), "maybe"],
    ]);
  });

  it("is nearly empty for a blank workbook", async () => {
    const { job } = readJob(await recalculate(await bytesOf("SI", "blank")));
    expect(job.system).toBe("SI");
    expect([job.fallTyped, job.basinLength, job.chosenPump]).toEqual([undefined, undefined, undefined]);
    expect([job.lips, job.pools, job.pumps, job.ownLines]).toEqual([[], [], [], []]);
  });

  it("has no crew hours, and no cost of them, while what they follow from is blank", async () => {
    const blank = await recalculate(await bytesOf("SI", "blank"));
    for (const name of ["LaborHours", "WorkingDays", "LaborCost", "MachineCost", "CrewHours", "CrewDays"])
      expect(blank.named(name), name).toEqual([[""]]);
  });
});

describe("a workbook that is opened once", () => {
  it("comes to what a fresh one comes to, whatever was typed before", async () => {
    const fresh = await recalculate(await bytesOf("US", "demo"));
    // Seven drops make several spills longer, an empty fall makes nearly all of them shorter.
    opened.recalculate(new Map([[cell("DropCount"), 7]]));
    opened.recalculate(new Map([[cell("FallTyped"), ""]]));
    expect([...opened.recalculate().results]).toEqual([...fresh.results]);
  });
});
