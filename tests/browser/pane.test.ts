import { readFile } from "node:fs/promises";
import type { BrowserContextOptions } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { FakeWorkbook } from "../host/fakeWorkbook";
import { describeInBrowser } from "./browser";
import { faultsOf } from "./axe";
import { NARROW, OFFICE, said, showTab, startPane, TABS } from "./panePage";

declare const workbook: FakeWorkbook;

describeInBrowser("the pane", () => {
  let site: Awaited<ReturnType<typeof startPane>>;

  beforeAll(async () => {
    site = await startPane();
  });
  afterAll(() => site?.close());

  const openPane = (options?: BrowserContextOptions) => site.openPane(options);

  it("keeps its frames in the system's colours when they are forced", async () => {
    const { context, page } = await openPane({ forcedColors: "active" });
    const border = await page
      .getByRole("button", { name: "Download" })
      .or(page.locator("a.button"))
      .first()
      .evaluate((element) => getComputedStyle(element).borderTopWidth);
    expect(border).toBe("1px");
    await context.close();
  });

  it("loads nothing but office.js from elsewhere, and associates every function", async () => {
    const { context, page, foreign, faults } = await openPane();
    for (const name of TABS) await showTab(page, name);
    expect([...new Set(foreign)]).toEqual([OFFICE]);
    expect(faults).toEqual([]);
    const associated = await page.evaluate(() => [
      ...(CustomFunctions as unknown as { associated: Map<string, unknown> }).associated.keys(),
    ]);
    const listed = (await (await fetch(`${site.address}/functions.json`)).json()) as { functions: { id: string }[] };
    expect(associated.sort()).toEqual(listed.functions.map(({ id }) => id).sort());
    await context.close();
  });

  it("is reached and worked by keyboard alone", async () => {
    const { context, page } = await openPane();
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Start");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Follow the sheet");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("function-search");
    await page.keyboard.type("FTIN");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("FTIN");
    await context.close();
  });

  it("stays with an option that is tried while its facts are changed on other sheets", async () => {
    const { context, page } = await openPane();
    await page.evaluate(() => {
      for (const sheet of ["Price", "Water"]) workbook.addSheet(sheet);
      workbook.select("Price!A1");
    });
    const job = page.getByRole("tab", { name: "Job" });
    await expect.poll(() => job.getAttribute("aria-selected")).toBe("true");
    await page.getByText("Try an option").click();
    await page.getByRole("button", { name: "Remember this job" }).click();
    await page.getByText("Remembered.").waitFor();
    await page.evaluate(() => workbook.select("Water!A1"));
    await page.getByRole("button", { name: "Follow the sheet", pressed: false }).waitFor();
    expect(await job.getAttribute("aria-selected")).toBe("true");
    await context.close();
  });

  it("inserts a function at the selected cell with the right blanks", async () => {
    const { context, page } = await openPane();
    await page.evaluate(() => {
      workbook.addSheet("Own");
      workbook.select("Own!C3");
    });
    await showTab(page, "Functions");
    await page.fill("#function-search", "FTIN");
    await page.locator(".row", { hasText: "FTIN" }).first().click();
    await page.getByRole("button", { name: "Insert", exact: true }).click();
    await page.locator("[role=alert]", { hasText: "length is needed" }).waitFor();
    await page.getByLabel("length").first().fill("StaticLift");
    await page.getByRole("button", { name: "Insert", exact: true }).click();
    await said(page).filter({ hasText: "is in Own!C3" }).waitFor();
    expect(await page.evaluate(() => workbook.cell("Own!C3")?.formula)).toBe("=RILL.FTIN(StaticLift,,Units)");
    // A second insertion would replace it, so it asks first.
    await page.getByRole("button", { name: "Insert", exact: true }).click();
    await page.locator("[role=alert]", { hasText: "Press Insert again to replace it" }).waitFor();
    await context.close();
  });

  it("leads from a check to its cell, and follows changes", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Job");
    const head = await page.locator("[data-name=DesignHead]").innerText();
    expect(head).toMatch(/^[\d.,]+ ft$/);
    await page.locator("summary[data-key=good]").click();
    const check = page.locator(".check").first();
    const where = (await check.locator(".quiet").innerText()).replace("Go to ", "");
    await check.click();
    await said(page).filter({ hasText: where }).waitFor();
    expect(await page.evaluate(() => workbook.selection.sheet)).toBe(where.split(":")[0]);
    const place = await page.evaluate(() => workbook.names.get("DesignHead") ?? "");
    await page.evaluate((address) => {
      const [sheet = "", cell = ""] = address.replace(/\$/g, "").split("!");
      const held = workbook.sheet(sheet)?.cells.get(cell);
      if (held) held.value = 99.5;
      for (const listener of workbook.changeListeners) void listener();
    }, place);
    await page.locator("[data-name=DesignHead]", { hasText: "99.5 ft" }).waitFor();
    await context.close();
  });

  it("draws the job in the pane's width, enlarges every drawing, saves it and places it as a picture", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Drawings");
    const titles = await page.locator("#drawing option").allInnerTexts();
    expect(titles).toContain("Cut plan");
    const saved = async (button: string): Promise<Buffer> => {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: button }).click(),
      ]);
      return readFile(await download.path());
    };
    for (const title of titles) {
      await page.selectOption("#drawing", { label: title });
      const opening = title === "Pump and system curves" ? "Pump" : title;
      await page
        .locator(".drawing svg title", { hasText: new RegExp(`^${opening}`) })
        .first()
        .waitFor({ state: "attached" });
      const drawn = page.locator(".drawing svg").first();
      expect((await drawn.boundingBox())?.width, title).toBeLessThanOrEqual(320);
      await page.getByRole("button", { name: "Place in the workbook" }).click();
      await said(page)
        .filter({ hasText: `${title} is on the sheet Drawings` })
        .waitFor();
      const png = await saved("Save PNG");
      // The first bytes of a PNG, and the width in its header: three pixels for each of the drawing's 360 units.
      expect(png.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
      expect(png.readUInt32BE(16)).toBe(1080);
      expect((await saved("Save SVG")).toString("utf8")).toMatch(
        /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[^]*<\/svg>$/,
      );
    }
    expect(await page.evaluate(() => workbook.sheet("Drawings")?.pictures.map((picture) => picture.title))).toEqual(
      titles,
    );
    await page.setViewportSize({ width: 900, height: 700 });
    const enlarge = page.getByRole("button", { name: "Enlarge" });
    await enlarge.focus();
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor();
    expect((await page.locator("dialog svg").boundingBox())?.width).toBeGreaterThan(600);
    expect(await faultsOf(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "hidden" });
    expect(await enlarge.evaluate((button) => button === document.activeElement)).toBe(true);
    await context.close();
  });

  it("shows every cut of the liner in the cut plan", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Drawings");
    await page.selectOption("#drawing", { label: "Cut plan" });
    await page
      .locator(".drawing svg title", { hasText: /^Cut plan/ })
      .first()
      .waitFor({ state: "attached" });
    const drawn = (await page.locator(".drawing svg").first().textContent()) ?? "";
    const pieces = await page.evaluate(() => {
      const [sheet = "", area = ""] = (workbook.names.get("LinerPieces") ?? "").replace(/\$/g, "").split("!");
      const rows = area.split(":").map((cell) => Number(cell.replace(/\D/g, "")));
      const cells = workbook.sheet(sheet)?.cells;
      const names: string[] = [];
      for (let row = rows[0] ?? 0; row <= (rows[1] ?? 0); row++) names.push(String(cells?.get(`A${row}`)?.value ?? ""));
      return names.filter((name) => name !== "");
    });
    expect(pieces.length).toBeGreaterThan(0);
    for (const piece of pieces) expect(drawn).toContain(piece);
    for (const cut of ["Basin", "Stream"]) expect(drawn).toContain(cut);
    await context.close();
  });

  it("says in each part what is missing in a workbook of another kind, and breaks nowhere", async () => {
    const { context, page, faults } = await openPane();
    await page.evaluate(() => {
      workbook.names.clear();
      workbook.sheets.splice(0);
      workbook.addSheet("Own");
      workbook.select("Own!A1");
    });
    await showTab(page, "Job");
    await page
      .locator("#page-2", { hasText: "This workbook has no list of checks. Start a job to get one." })
      .waitFor();
    await showTab(page, "Drawings");
    await page.locator("#page-4", { hasText: "start a job to get one" }).waitFor();
    expect(await page.getByRole("button", { name: "Enlarge" }).isVisible()).toBe(false);
    await showTab(page, "Lists");
    for (const name of ["Save orders as CSV", "Save price list as CSV"]) {
      await page.getByRole("button", { name }).click();
      await said(page).filter({ hasText: "start a job to get one" }).waitFor();
    }
    expect(faults).toEqual([]);
    await context.close();
  });

  it("says what to do while a cell is being edited, or when several blocks are selected", async () => {
    const { context, page, faults } = await openPane();
    await showTab(page, "Functions");
    await page.fill("#function-search", "FTIN");
    await page.evaluate(() => (workbook.refuses = "InvalidOperationInCellEditMode"));
    await page.locator("#page-3 .row", { hasText: "FTIN" }).first().click();
    await said(page).filter({ hasText: "press Enter or Esc in the sheet, then try again" }).waitFor();
    await page.evaluate(() => (workbook.refuses = "InvalidSelection"));
    await page.getByRole("button", { name: "Use selection for length" }).click();
    await said(page).filter({ hasText: "Select one block of cells first" }).waitFor();
    expect(faults).toEqual([]);
    await context.close();
  });

  it("repairs formulas that lost their binding, and says how many", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Help");
    await page.getByRole("button", { name: "Repair formulas" }).click();
    await said(page).filter({ hasText: "nothing was changed" }).waitFor();
    await page.evaluate(() => workbook.addSheet("Old", { A1: { value: "#NAME?", formula: "=RILL.FTIN(2)" } }));
    await page.getByRole("button", { name: "Repair formulas" }).click();
    await said(page).filter({ hasText: "1 of 1 formulas were entered again" }).waitFor();
    await context.close();
  });

  it("leads to pages that are there", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Help");
    const links = await page
      .locator(".pane a")
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    expect(links.length).toBeGreaterThan(3);
    for (const link of links) expect((await fetch(link)).status, link).toBe(200);
    await context.close();
  });

  it("saves the orders and takes a price list in, showing what would change first", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Lists");
    const save = async (button: string): Promise<string> => {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: button }).click(),
      ]);
      return readFile(await download.path(), "utf8");
    };
    expect(await save("Save orders as CSV")).toMatch(/^\uFEFFOrder,Supplier,Wanted,Code,Description,Which,/);
    const [heading = "", first = ""] = (await save("Save price list as CSV")).split("\r\n");
    const [code = "", description = ""] = first.split(",");
    const place = await page.evaluate(() => workbook.names.get("RateCosts")?.split(":")[0] ?? "");
    const before = await page.evaluate((cell) => workbook.cell(cell)?.value, place);
    const file = `${heading.replace("\uFEFF", "").split(",").slice(0, 2).join(",")},Cost\r\n${code},${description},123.45\r\nNEW-1,A new item,6.5\r\n`;
    await page.setInputFiles("#price-file", { name: "supplier.csv", mimeType: "text/csv", buffer: Buffer.from(file) });
    await page.locator("h3", { hasText: "What the file would change" }).waitFor();
    expect(await faultsOf(page)).toEqual([]);
    expect(await page.evaluate((cell) => workbook.cell(cell)?.value, place)).toBe(before);
    await page.getByRole("button", { name: "Apply the marked prices" }).click();
    await said(page).filter({ hasText: "cells of the price list were changed" }).waitFor();
    expect(await page.evaluate((cell) => workbook.cell(cell)?.value, place)).toBe(123.45);
    await context.close();
  });

  it("opens a job in a new workbook", async () => {
    const { context, page } = await openPane();
    await showTab(page, "Start");
    await page.getByLabel("SI: meters").check();
    await page.getByRole("button", { name: "Open in a new workbook" }).click();
    await said(page).filter({ hasText: "open in a new Excel window" }).waitFor();
    expect(await page.evaluate(() => workbook.opened.length)).toBe(1);
    await context.close();
  });

  it("says where the bench is when it stands outside Excel", async () => {
    const opened = await site.open({ viewport: NARROW });
    await opened.page.goto(`${site.address}/taskpane.html`);
    await opened.page.getByRole("link", { name: "the bench" }).waitFor();
    await opened.context.close();
  });
});
