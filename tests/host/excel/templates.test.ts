import { unzipSync } from "fflate";
import { writeXlsx } from "hucre/xlsx";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Host } from "../../../src/host/port";
import { createExcelHost } from "../../../src/host/excel/excelHost";
import type { FakeWorkbook } from "../fakeWorkbook";
import { smallTemplate } from "../smallTemplate";
import { openBook, task } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

/** A workbook whose sheet shows a chart. */
function withChart(): Promise<Uint8Array> {
  const series = [{ name: "Bed", categories: "Section!$A$1:$A$2", values: "Section!$B$1:$B$2" }];
  const anchor = { from: { row: 3, col: 0 }, to: { row: 12, col: 5 } };
  const rows = [
    [1, 2],
    [2, 3],
  ];
  return writeXlsx({
    sheets: [{ name: "Section", rows, charts: [{ type: "scatter", title: "Section", series, anchor }] }],
  });
}

describe("templates", () => {
  // Sheets of a file can be inserted from ExcelApi 1.13 on, and never on a tablet; a new workbook opens from 1.8 on.
  it.each([
    ["PC", 1.13, ["download", "open", "insert"]],
    ["OfficeOnline", 1.13, ["download", "open", "insert"]],
    ["Mac", 1.12, ["download", "open"]],
    ["iOS", 1.17, ["download", "open"]],
    ["PC", 1.7, ["download"]],
  ])("are taken on %s with ExcelApi %d in the ways it has", (platform, newest, ways) => {
    const minor = (version: number | string): number => Number(String(version).split(".")[1]);
    const isSetSupported = (set: string, least: string): boolean => set === "ExcelApi" && minor(least) <= minor(newest);
    Object.assign(Office.context, { platform, requirements: { isSetSupported } });
    expect(createExcelHost().templateWays).toEqual(ways);
  });

  it("say what to do where Excel opens no new workbook, or a link does it", async () => {
    const template = { file: "job.xlsx", bytes: new Uint8Array([1]) };
    book.refuses = "GeneralException";
    await expect(host.takeTemplate(template, "open", task)).rejects.toThrow(
      "Excel could not open a new workbook; download the file and open it instead.",
    );
    await expect(host.takeTemplate(template, "download", task)).rejects.toThrow("Use the download link");
  });

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
    expect(report).toMatchObject({ repaired: ["Fall"], broken: [] });
    expect(book.names.get("Fall")).toBe("Site!$B$4");
    expect(report.said).toBe("The job's 3 sheets are in this workbook. Names rebuilt: Fall.");
  });

  it("say which names stay broken, and what to do instead", async () => {
    book.breaksNames = ["Fall", "Units"];
    book.losesNames = true;
    book.names.delete("StaticLift");
    book.sheets.splice(0, 1);
    const report = await host.takeTemplate({ file: "job.xlsx", bytes: await smallTemplate() }, "insert", task);
    expect(report.broken).toEqual(["Units", "Fall"]);
    expect(report.said).toContain("These names could not be rebuilt: Units, Fall. Download the file instead.");
  });

  it("have the formulas that came without their functions entered again", async () => {
    book.sheets.splice(0, 1);
    book.names.delete("StaticLift");
    book.bringsUnbound = true;
    const report = await host.takeTemplate({ file: "job.xlsx", bytes: await smallTemplate() }, "insert", task);
    expect(report.said).toBe("The job's 3 sheets are in this workbook. 3 of 3 formulas were entered again.");
    expect(book.cell("Pump!A1")?.formula).toBe("=RILL.FTIN(2)");
  });

  it("go into Excel on the web without their charts", async () => {
    (Office.context as { platform: unknown }).platform = Office.PlatformType.OfficeOnline;
    book.sheets.splice(0);
    book.names.clear();
    const bytes = await withChart();
    expect(Object.keys(unzipSync(bytes))).toContain("xl/charts/chart1.xml");
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
