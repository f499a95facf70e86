import { readFileSync } from "node:fs";
import path from "node:path";
import { strToU8, unzipSync, zipSync } from "fflate";
import { readXlsx, writeXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, expect, it } from "vitest";
import { areaName } from "../../src/xlsx/address";
import { smallTemplate } from "../host/smallTemplate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { hold } from "./held";
import { placesIn } from "./places";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");
/** As many cells as take a moment to read, lay out and write. */
const LARGE_ROWS = 9000;

describeInBrowser("files on the bench", () => {
  let site: Site;
  let bench: BenchPage;
  let faults: string[];
  const notice = (text: string) => bench.page.locator(".notice", { hasText: text });
  const openFileName = () => bench.page.locator("#file-name").innerText();

  beforeAll(async () => {
    site = await startSite();
    const opened = await site.open();
    ({ faults } = opened);
    bench = new BenchPage(opened.page, site.address);
    await bench.open();
  });
  afterAll(() => site?.close());

  it("opens a workbook that is dropped on the page", async () => {
    await bench.drop({ files: [{ name: "own.xlsx", bytes: await smallTemplate() }] });
    await bench.page.locator("#file-name", { hasText: "own.xlsx" }).waitFor();
    expect(await bench.page.locator("#drop").isVisible()).toBe(false);
  });

  it.each<[string, Parameters<BenchPage["drop"]>[0], string]>([
    [
      "a picture",
      { files: [{ name: "site.png", bytes: new Uint8Array([0x89, 0x50, 0x4e, 0x47]) }] },
      "is not an .xlsx workbook",
    ],
    ["a link", { text: "https://example.org/own.xlsx" }, "Only a workbook file can be dropped here"],
    [
      "two files",
      { files: ["a.xlsx", "b.xlsx"].map((name) => ({ name, bytes: strToU8("PK") })) },
      "drop one workbook at a time",
    ],
    ["an empty file", { files: [{ name: "none.xlsx", bytes: new Uint8Array() }] }, "none.xlsx is empty"],
  ])("says what is wrong with %s, and keeps what is open", async (_, things, sentence) => {
    await bench.drop(things);
    await notice(sentence).waitFor();
    expect(await openFileName()).toBe("own.xlsx");
    expect(new URL(bench.page.url()).pathname).toBe("/bench.html");
  });

  it("says how far the opening of a large workbook is, and lets it be stopped", async () => {
    const rows = Array.from({ length: LARGE_ROWS }, (_, r) => Array.from({ length: 14 }, (_, c) => r * c));
    const bytes = await writeXlsx({ sheets: [{ name: "Large", rows }] });
    const cover = bench.page.locator("#busy");
    const large = (): Promise<unknown> => bench.page.locator("#file-name", { hasText: "large.xlsx" }).waitFor();

    // Stopped before the open workbook is put away, and after: both times it stands as it was.
    for (const step of ["Laying out the sheets", "Showing the sheets"]) {
      await stopAt(bench, step);
      await bench.openFile("large.xlsx", bytes);
      await notice("large.xlsx was not opened; own.xlsx is as it was").getByRole("button", { name: "Close" }).click();
      expect(await cover.isVisible()).toBe(false);
      expect(await openFileName()).toBe("own.xlsx");
      await bench.goTo("Site!B4");
    }

    await bench.openFile("large.xlsx", bytes);
    // A person sees the cover, how far it is, and the button.
    await cover.getByRole("button", { name: "Cancel" }).waitFor();
    expect(Number(await cover.locator("progress").getAttribute("max"))).toBeGreaterThan(1);
    await large();
    await stopAt(bench, "Writing large.xlsx");
    await bench.page.click("#save");
    await notice("large.xlsx was not saved: you stopped it").waitFor();
  });

  it("says before saving what the file will not hold", async () => {
    await bench.takeFile("own.xlsx", await smallTemplate());
    // Dragging the border between two columns makes the first wider.
    const canvases = await bench.page.locator("#sheet canvas").all();
    const boxes = await Promise.all(canvases.map((canvas) => canvas.boundingBox()));
    const sheet = boxes.find((box) => box !== null && box.height > 200);
    if (!sheet) throw new Error("the sheet is not in sight");
    const edge = await columnEdge(bench, sheet);
    await bench.page.mouse.move(edge, sheet.y + 10);
    await bench.page.mouse.down();
    await bench.page.mouse.move(edge + 60, sheet.y + 10, { steps: 4 });
    await bench.page.mouse.up();
    await bench.page.click("#save");
    const dialog = bench.page.getByRole("dialog");
    await dialog.getByText("will not hold widths and heights changed here").waitFor();
    await bench.page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    const [download] = await Promise.all([
      bench.page.waitForEvent("download"),
      bench.page.click("#save").then(() => dialog.getByRole("button", { name: "Save without them" }).click()),
    ]);
    expect(download.suggestedFilename()).toBe("own.xlsx");
  });

  it("tells what it keeps without showing, keeps it, and leaves results it cannot work out", async () => {
    const own = unzipSync(
      await writeXlsx({
        sheets: [
          {
            name: "Own",
            rows: [],
            cells: new Map([
              ["0,0", { value: 1 }],
              ["1,0", { value: 42, formula: 'GETPIVOTDATA("Cost",B9)', formulaResult: 42 }],
              ["2,0", { value: 43, formula: "A1+A2", formulaResult: 43 }],
            ]),
          },
        ],
      }),
    );
    const chart = strToU8("<c:chart/>");
    const bytes = zipSync({ ...own, "xl/charts/chart1.xml": chart, "xl/comments1.xml": strToU8("<comments/>") });
    await bench.openFile("theirs.xlsx", bytes);
    await notice("Kept in the file, but not shown here: 1 chart and 1 sheet with notes.").waitFor();
    await notice("1 formulas use what the bench cannot work out").waitFor();
    await bench.goTo("Own!A1");
    await bench.type("8");
    await bench.page.locator("#kept", { hasText: "kept in this browser" }).waitFor();
    const saved = await bench.save();
    expect(unzipSync(saved)["xl/charts/chart1.xml"]).toEqual(chart);
    const cells = (await readXlsx(saved, { readStyles: true })).sheets[0]?.cells;
    expect(cells?.get("1,0")).toMatchObject({ formula: 'GETPIVOTDATA("Cost",B9)', formulaResult: 42 });
    // 8 typed into A1 and the 42 of the file.
    expect(cells?.get("2,0")).toMatchObject({ formula: "A1+A2", formulaResult: 50 });
  });

  it("tells of results it cannot work out, however late the calculation comes", async () => {
    const { context, page } = await site.open();
    const late = new BenchPage(page, site.address);
    const release = await hold(page, "calculation.js");
    await late.open();
    const cells = new Map([["0,0", { value: 42, formula: 'GETPIVOTDATA("Cost",B9)', formulaResult: 42 }]]);
    await late.takeFile("late.xlsx", await writeXlsx({ sheets: [{ name: "Own", rows: [], cells }] }));
    const told = page.locator(".notice", { hasText: "1 formulas use what the bench cannot work out" });
    await page.waitForTimeout(1000);
    expect(await told.count()).toBe(0);
    release();
    await told.waitFor();
    await context.close();
  }, 120_000);

  it("keeps a day that was typed into a plain cell a day, after a reload too", async () => {
    await bench.takeFile("plain.xlsx", await writeXlsx({ sheets: [{ name: "Own", rows: [["due", null, 4]] }] }));
    await bench.goTo("Own!B1");
    await bench.type("2026-11-26");
    await bench.page.locator("#kept", { hasText: "kept in this browser" }).waitFor();
    await bench.page.reload();
    await bench.ready();
    const { sheets } = await readXlsx(await bench.save(), { readStyles: true });
    expect(sheets[0]?.rows[0]).toEqual(["due", new Date(Date.UTC(2026, 10, 26)), 4]);
  });

  it("keeps charts, rules and names of a job of ours when it saves", async () => {
    const before = readFileSync(DEMO);
    await bench.takeFile("demo.xlsx", before);
    await bench.goTo(areaName((await placesIn(before))("FallTyped")));
    await bench.type("2.6");
    await bench.page.locator("#kept", { hasText: "kept in this browser" }).waitFor();
    const [was, now] = [unzipSync(before), unzipSync(await bench.save())];
    for (const name of Object.keys(was)) {
      if (/^xl\/(drawings|styles|theme|workbook\.xml)|_rels/.test(name)) expect(now[name], name).toEqual(was[name]);
      // What a chart stores of its cells follows the edit; the rest of it stays.
      if (name.startsWith("xl/charts/")) expect(withoutCaches(now[name]), name).toBe(withoutCaches(was[name]));
    }
    const rules = (parts: Record<string, Uint8Array>): string[] =>
      Object.entries(parts)
        .filter(([name]) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name))
        .flatMap(
          ([, part]) =>
            new TextDecoder().decode(part).match(/<(conditionalFormatting|dataValidations)\b.*?<\/\1>/gs) ?? [],
        );
    expect(rules(was).length).toBeGreaterThan(10);
    expect(rules(now)).toEqual(rules(was));
    expect(faults).toEqual([]);
  });
});

function withoutCaches(chart: Uint8Array | undefined): string {
  return new TextDecoder().decode(chart).replace(/<c:(numCache|strCache)>.*?<\/c:\1>/gs, "");
}

/** Presses Cancel as soon as the cover says that a step has begun. */
function stopAt(bench: BenchPage, step: string): Promise<void> {
  return bench.page.evaluate((words) => {
    const cover = document.querySelector("#busy");
    const watch = new MutationObserver(() => {
      if (!cover?.querySelector("p")?.textContent?.startsWith(words)) return;
      watch.disconnect();
      cover.querySelector("button")?.click();
    });
    if (cover) watch.observe(cover, { childList: true, subtree: true, characterData: true });
  }, step);
}

/** Where the right edge of the first column lies: the pointer turns into a resizing one over it, as a person sees. */
async function columnEdge(bench: BenchPage, sheet: { x: number; y: number }): Promise<number> {
  await bench.goTo("Notes!A1");
  for (let x = sheet.x + 50; x < sheet.x + 500; x += 1) {
    await bench.page.mouse.move(x, sheet.y + 10);
    const cursors = await bench.page
      .locator("#sheet canvas")
      .evaluateAll((canvases) => canvases.map((canvas) => (canvas as HTMLElement).style.cursor).join(" "));
    if (cursors.includes("resize")) return x + 1;
  }
  throw new Error("no edge of a column was found");
}
