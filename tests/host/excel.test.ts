import { strToU8, unzipSync, zipSync } from "fflate";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { createExcelHost } from "../../src/host/excel/excelHost";
import { HostRefusal, type Host } from "../../src/host/port";
import { installFakeExcel, PICTURE_HEIGHT } from "./fakeExcel";
import { FakeWorkbook } from "./fakeWorkbook";
import { smallTemplate } from "./smallTemplate";

let book: FakeWorkbook;
let host: Host;
const task = { signal: new AbortController().signal, progress: () => undefined, pause: () => Promise.resolve() };

beforeEach(() => {
  book = new FakeWorkbook();
  installFakeExcel(book);
  host = createExcelHost();
  book.addSheet(
    "Pump",
    { B2: { value: 4.75, formula: "=Fall+2" }, B3: { value: 7, locked: false }, B4: { value: 8, locked: false } },
    true,
  );
  book.addSheet("Own");
  book.names.set("StaticLift", "Pump!$B$2");
  book.names.set("Wanted", "Pump!$B$3:$B$4");
  book.names.set("Rate", "0.0825");
});

describe("reading", () => {
  it("gives values by name and by address, and nothing for what is not there", async () => {
    expect(await host.read(["StaticLift", "Pump!B3:B4", "Missing", "Gone!A1", "Rate"])).toEqual([
      [[4.75]],
      [[7], [8]],
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("takes two round trips however many places are read", async () => {
    await host.read(Array.from({ length: 40 }, () => "StaticLift"));
    // One for names and sheets, one for values, and the one with which every request ends.
    expect(book.syncs).toBe(3);
  });

  it("shows cells as the sheet does, as text", async () => {
    book.addSheet("Sums", { A1: { value: 1234.567 }, A2: { value: "yes" } });
    expect(await host.show(["Sums!A1:A2", "Missing"])).toEqual([[["1,234.57"], ["yes"]], undefined]);
  });

  it("gives the names that a person may use, each with its cells", async () => {
    book.names.set("Broken", "#REF!");
    book.names.set("_Own", "Pump!$B$2");
    book.hiddenNames.add("_Own");
    expect(await host.names()).toEqual([
      { name: "StaticLift", address: "Pump!B2", broken: false },
      { name: "Wanted", address: "Pump!B3:B4", broken: false },
      { name: "Rate", address: "", broken: false },
      { name: "Broken", address: "", broken: true },
    ]);
  });
});

describe("writing", () => {
  it("knows what may be written: unlocked cells, and any on a sheet without protection", async () => {
    // Half of the third is locked; the sheet of the fourth guards nothing.
    const places = ["Wanted", "StaticLift", "Pump!B2:B3", "Own!A1", "Missing"];
    expect(await host.canWrite(places)).toEqual([true, false, false, true, false]);
  });

  it("writes values and formulas into unlocked cells", async () => {
    await host.write([{ place: "Wanted", values: [[1.5], ["=A1*2"]] }]);
    expect(book.cell("Pump!B3")?.value).toBe(1.5);
    expect(book.cell("Pump!B4")?.formula).toBe("=A1*2");
  });

  it("changes nothing when one of the cells is locked", async () => {
    const changes = [
      { place: "Wanted", values: [[1], [2]] },
      { place: "StaticLift", values: [[3]] },
    ];
    await expect(host.write(changes)).rejects.toThrow("Pump!B2 holds results and is protected");
    expect(book.cell("Pump!B3")?.value).toBe(7);
  });

  it("refuses a grid of the wrong size and a place that is not there", async () => {
    await expect(host.write([{ place: "Wanted", values: [[1]] }])).rejects.toThrow("do not fit Pump!B3:B4");
    await expect(host.write([{ place: "Nowhere", values: [[1]] }])).rejects.toThrow(
      '"Nowhere" is not in this workbook, so nothing was written.',
    );
  });
});

describe("the selection", () => {
  it("is read with its value and formula", async () => {
    book.select("Pump!B2:C3");
    expect(await host.selected()).toEqual({ sheet: "Pump", address: "Pump!B2:C3", value: 4.75, formula: "=Fall+2" });
  });

  it("moves to a name", async () => {
    await host.select("Wanted");
    expect(book.selection).toMatchObject({ sheet: "Pump", top: 2, bottom: 3 });
  });

  it("takes a formula, but not into a locked cell", async () => {
    book.select("Own!D4");
    expect(await host.insertFormula("=RILL.FTIN(2)")).toBe("Own!D4");
    expect(book.cell("Own!D4")?.formula).toBe("=RILL.FTIN(2)");
    book.select("Pump!B2");
    await expect(host.insertFormula("=1")).rejects.toThrow("protected");
  });
});

describe("templates", () => {
  it("open in a new workbook", async () => {
    const bytes = await smallTemplate();
    expect((await host.takeTemplate({ file: "job.xlsx", bytes }, "open", task)).said).toContain("new Excel window");
    expect(book.opened).toHaveLength(1);
  });

  it("rebuild the names that an insertion broke", async () => {
    book.breaksNames = ["Fall"];
    book.names.delete("StaticLift");
    book.sheets.splice(0, 1);
    const report = await host.takeTemplate({ file: "job.xlsx", bytes: await smallTemplate() }, "insert", task);
    expect(report).toMatchObject({ mended: ["Fall"], broken: [] });
    expect(book.names.get("Fall")).toBe("Site!$B$4");
    expect(report.said).toContain("3 sheets");
  });

  it("have the formulas that came without their functions entered again", async () => {
    book.sheets.splice(0, 1);
    book.names.delete("StaticLift");
    book.bringsUnbound = true;
    const report = await host.takeTemplate({ file: "job.xlsx", bytes: await smallTemplate() }, "insert", task);
    expect(report.said).toContain("3 of 3 formulas were entered again");
    expect(book.cell("Pump!A1")?.formula).toBe("=RILL.FTIN(2)");
  });

  it("go into Excel on the web without their charts", async () => {
    (Office.context as { platform: unknown }).platform = Office.PlatformType.OfficeOnline;
    book.sheets.splice(0);
    book.names.clear();
    const bytes = zipSync({ ...unzipSync(await smallTemplate()), "xl/charts/chart1.xml": strToU8("<c:chart/>") });
    const insert = vi.spyOn(book, "insert");
    const report = await host.takeTemplate({ file: "job.xlsx", bytes }, "insert", task);
    expect(report.said).toContain("takes no charts along");
    const parts = Object.keys(unzipSync(insert.mock.calls[0]?.[0] ?? new Uint8Array()));
    expect(parts).toContain("xl/workbook.xml");
    expect(parts).not.toContain("xl/charts/chart1.xml");
  });

  it("are not inserted beside a sheet or name of the same name", async () => {
    const bytes = await smallTemplate();
    await expect(host.takeTemplate({ file: "job.xlsx", bytes }, "insert", task)).rejects.toThrow(
      "already has a sheet Pump",
    );
    expect(book.sheets).toHaveLength(2);
  });

  it.each([
    ["a sheet", () => book.addSheet("site"), "already has a sheet site"],
    ["a name", () => book.names.set("FALL", "Own!$A$1"), "already has the name FALL"],
  ])("are not inserted beside %s that differs in case only", async (_, clash, said) => {
    book.sheets.splice(0, 1);
    book.names.delete("StaticLift");
    clash();
    await expect(host.takeTemplate({ file: "job.xlsx", bytes: await smallTemplate() }, "insert", task)).rejects.toThrow(
      said,
    );
  });

  it("say that formulas remain to be looked through when that was stopped", async () => {
    book.sheets.splice(0, 1);
    book.names.delete("StaticLift");
    book.bringsUnbound = true;
    const stopped = new AbortController();
    const progress = (): void => stopped.abort();
    const report = await host.takeTemplate({ file: "job.xlsx", bytes: await smallTemplate() }, "insert", {
      ...task,
      signal: stopped.signal,
      progress,
    });
    expect(report.said).toContain("1 of 1 formulas were entered again. Press Repair formulas under Help");
  });
});

describe("a host that refuses", () => {
  it.each([
    ["InvalidOperationInCellEditMode", "press Enter or Esc"],
    ["InvalidSelection", "Select one block of cells"],
    ["AccessDenied", "protected or read-only"],
    ["ApiNotFound", "update Excel"],
    ["ApiNotAvailable", "update Excel"],
    ["InactiveWorkbook", "click into this one"],
    ["RequestPayloadSizeLimitExceeded", "fewer rows"],
    ["ItemNotFound", "not in this workbook"],
  ])("is explained: %s", async (code, cure) => {
    book.refuses = code;
    const asked = [
      () => host.selected(),
      () => host.insertFormula("=RILL.FTIN(2)"),
      () => host.write([{ place: "Wanted", values: [[1], [2]] }]),
      () => host.select("StaticLift"),
      () => host.read(["StaticLift"]),
      () => host.placePicture(new Uint8Array([1]), "Plan"),
      () => host.repairFormulas(task),
      () => host.recalculate(),
    ];
    for (const ask of asked) {
      const refusal = await ask().then(
        () => undefined,
        (error: unknown) => error,
      );
      expect(refusal).toBeInstanceOf(HostRefusal);
      expect((refusal as HostRefusal).message).toMatch(/^Could not .*\. /);
      expect((refusal as HostRefusal).message).toContain(cure);
    }
    book.refuses = undefined;
    expect(book.cell("Pump!B3")?.value).toBe(7);
    expect(book.cell("Own!A1")).toBeUndefined();
  });

  it("finds names again on a sheet that the user renamed", async () => {
    // Excel keeps names on their cells when a sheet is renamed.
    Object.assign(book.requireSheet("Pump"), { name: "Pump of the job" });
    book.names.set("StaticLift", "'Pump of the job'!$B$2");
    expect(await host.read(["StaticLift"])).toEqual([[[4.75]]]);
    await host.select("StaticLift");
    expect(book.selection.sheet).toBe("Pump of the job");
  });
});

describe("repair", () => {
  it("enters unbound formulas again, protected sheets included, and leaves all others", async () => {
    book.addSheet(
      "Old",
      { A1: { value: "#NAME?", formula: "=@RILL.TDH(1,2)" }, A2: { value: 3, formula: "=_xldudf_RILL_FTIN(2)" } },
      true,
    );
    const allows = { allowFormatColumns: true };
    Object.assign(book.requireSheet("Old"), { allows });
    const note = "A file writes _xldudf_RILL_FTIN";
    book.addSheet("Sound", { A1: { value: 3, formula: "=RILL.TDH(1,2)" }, A2: { value: note } });
    expect(await host.repairFormulas(task)).toEqual({ found: 2, repaired: 2, left: [], stopped: false });
    expect(book.cell("Old!A1")?.formula).toBe("=RILL.TDH(1,2)");
    expect(book.cell("Old!A2")?.formula).toBe("=RILL.FTIN(2)");
    expect(book.sheet("Old")).toMatchObject({ protected: true, allows });
    expect(book.cell("Sound!A2")?.value).toBe(note);
  });

  it("says how far it is, sheet by sheet", async () => {
    const told: number[][] = [];
    await host.repairFormulas({ ...task, progress: (done, total) => told.push([done, total]) });
    expect(told).toEqual([
      [1, 2],
      [2, 2],
    ]);
  });

  it("names the cells of sheets that a password keeps", async () => {
    const cells = { B3: { value: 1 }, C7: { value: "#NAME?", formula: "=RILL.TDH(1,2)" } };
    book.addSheet("Kept", cells, true).password = true;
    expect(await host.repairFormulas(task)).toEqual({ found: 1, repaired: 0, left: ["Kept!C7"], stopped: false });
  });

  it("stops when it is cancelled", async () => {
    const stopped = new AbortController();
    stopped.abort();
    book.addSheet("Old", { A1: { value: "#NAME?", formula: "=RILL.TDH(1,2)" } });
    expect(await host.repairFormulas({ ...task, signal: stopped.signal })).toEqual({
      found: 0,
      repaired: 0,
      left: [],
      stopped: true,
    });
  });
});

describe("pictures, settings and events", () => {
  it("places a picture at the cell, or on a sheet of its own beside a protected one", async () => {
    book.select("Own!B3");
    expect(await host.placePicture(new Uint8Array([1]), "Section")).toContain("sheet Own");
    expect(book.sheet("Own")?.pictures).toEqual([{ title: "Section", alt: "Section", left: 64, top: 40 }]);
    book.select("Pump!B2");
    expect(await host.placePicture(new Uint8Array([1]), "Plan")).toContain("Drawings, because Pump is protected");
    expect(book.sheet("Drawings")?.pictures).toEqual([{ title: "Plan", alt: "Plan", left: 0, top: 0 }]);
    // The next one must not lie on the first.
    await host.placePicture(new Uint8Array([1]), "Cut plan");
    expect(book.sheet("Drawings")?.pictures[1]?.title).toBe("Cut plan");
    expect(book.sheet("Drawings")?.pictures[1]?.top).toBeGreaterThan(PICTURE_HEIGHT);
  });

  it("keeps settings with the workbook", async () => {
    expect(await host.setting("view")).toBeUndefined();
    await host.keepSetting("view", "2");
    expect(await host.setting("view")).toBe("2");
  });

  it("tells of changes until it is stopped", async () => {
    let told = 0;
    const stop = host.onChange(() => (told += 1));
    await host.write([{ place: "Wanted", values: [[1], [2]] }]);
    expect(told).toBe(1);
    stop();
    await new Promise((resolve) => setTimeout(resolve, 20));
    await host.write([{ place: "Wanted", values: [[3], [4]] }]);
    expect(told).toBe(1);
  });

  it("stops watching a workbook that it could not watch without a fault", async () => {
    const faults: unknown[] = [];
    const note = (reason: unknown): number => faults.push(reason);
    process.on("unhandledRejection", note);
    book.refuses = "ApiNotFound";
    host.onChange(() => undefined)();
    await new Promise((resolve) => setTimeout(resolve, 20));
    process.off("unhandledRejection", note);
    expect(faults).toEqual([]);
  });

  it("recalculates everything", async () => {
    await host.recalculate();
    expect(book.calculations).toBe(1);
  });
});
