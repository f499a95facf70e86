import { readFileSync } from "node:fs";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { areaName } from "../../src/xlsx/address";
import { faultsOf } from "./axe";
import { BenchPage } from "./benchPage";
import { ALL } from "../effort";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { placesIn } from "./places";

const BLANK = path.join(SITE_FOLDER, "templates/rillwright-si-blank.xlsx");

/** The embedded spreadsheet draws its cells on a canvas and is another project's work. */
const NOT_OURS = ["#sheet"];
const TABS = ["Start", "Job", "Functions", "Drawings", "Lists", "Help"];

describeInBrowser("the bench's looks", () => {
  let site: Site;
  beforeAll(async () => {
    site = await startSite();
  });
  afterAll(() => site?.close());

  describe.each([
    ["light", { colorScheme: "light" }],
    ["dark", { colorScheme: "dark" }],
    ["the system's own colours", { forcedColors: "active" }],
  ] as const)("in %s", (scheme, options) => {
    it.runIf(ALL || scheme === "dark")(
      "pass axe on every tab, on a desk's and on tablets' widths, and never scroll sideways",
      async () => {
        const { context, page } = await site.open(options);
        const bench = new BenchPage(page, site.address);
        await bench.open();
        for (const width of [1280, 1024, 768]) {
          await page.setViewportSize({ width, height: 900 });
          await page.waitForTimeout(300);
          const across = await page.evaluate(() => document.documentElement.scrollWidth);
          expect(across, `${width}`).toBeLessThanOrEqual(width);
          const [sheet, pane] = [await page.locator("#sheet").boundingBox(), await page.locator("#pane").boundingBox()];
          expect(sheet?.height).toBeGreaterThan(250);
          expect(sheet?.width).toBeGreaterThan(300);
          expect(pane?.width).toBeGreaterThanOrEqual(320);
          expect(pane?.height).toBeGreaterThanOrEqual(160);
          expect(await faultsOf(page, NOT_OURS), `${width}`).toEqual([]);
        }
        for (const tab of TABS) {
          await bench.showTab(tab);
          await page.waitForTimeout(200);
          expect(await faultsOf(page, NOT_OURS), tab).toEqual([]);
        }
        await context.close();
      },
      120_000,
    );
  });

  it("leave the sheet, whose cells are drawn for white paper, as it is in the system's own colours", async () => {
    const { context, page } = await site.open({ colorScheme: "dark", forcedColors: "active" });
    await new BenchPage(page, site.address).open();
    const { x, y } = (await page.locator("#sheet").boundingBox()) ?? { x: 0, y: 0 };
    // The name box, the formula bar and the first cells.
    const seen = async (): Promise<string> =>
      (await page.screenshot({ clip: { x, y, width: 600, height: 300 } })).toString("base64");
    // The grid draws on for a moment after it can be used: what is compared is what stays.
    const settled = async (): Promise<string> => {
      for (let before = await seen(); ;) {
        await page.waitForTimeout(500);
        const now = await seen();
        if (now === before) return now;
        before = now;
      }
    };
    const forced = await settled();
    await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
    expect(await settled()).toBe(forced);
    await context.close();
  });

  it("let the pane below the sheet be made higher on a tablet, and keep both in sight", async () => {
    const { context, page } = await site.open({ viewport: { width: 768, height: 1024 }, hasTouch: true });
    await new BenchPage(page, site.address).open();
    const height = async (id: string): Promise<number> => (await page.locator(id).boundingBox())?.height ?? 0;
    const divider = page.locator("#divider");
    expect(await divider.getAttribute("aria-orientation")).toBe("horizontal");
    const before = await height("#pane");
    await divider.focus();
    await page.keyboard.press("ArrowUp");
    expect(await height("#pane")).toBeGreaterThan(before);
    const box = await divider.boundingBox();
    if (!box) throw new Error("the divider is not in sight");
    await page.mouse.move(box.x + 100, box.y + 3);
    await page.mouse.down();
    await page.mouse.move(box.x + 100, 20, { steps: 5 });
    await page.mouse.up();
    expect(await height("#sheet")).toBeGreaterThan(180);
    expect(await height("#pane")).toBeGreaterThan(before);
    await page.getByRole("button", { name: "Hide pane" }).click();
    expect(await page.locator("#pane").isVisible()).toBe(false);
    await page.getByRole("button", { name: "Show pane" }).click();
    expect(await page.locator("#pane").isVisible()).toBe(true);
    await context.close();
  });

  it("let the keyboard alone reach every part and leave it again", async () => {
    const { context, page } = await site.open();
    await new BenchPage(page, site.address).open();
    const focused = (): Promise<string> =>
      page.evaluate(() => {
        const at = document.activeElement;
        return at?.closest("#sheet") ? "sheet" : (at?.textContent ?? "");
      });
    const cell = page.locator("#selected-cell");
    const until = async (text: string): Promise<void> => {
      for (let presses = 0; (await focused()) !== text; presses++) {
        if (presses > 3) throw new Error(`F6 does not lead to ${text}`);
        await page.keyboard.press("F6");
      }
    };
    await until("sheet");
    const before = await cell.innerText();
    await page.keyboard.press("Tab");
    // In a sheet Tab leads to the next cell.
    await expect.poll(() => cell.innerText()).not.toBe(before);
    expect(await focused()).toBe("sheet");
    await page.keyboard.press("Alt+PageDown");
    await cell.filter({ hasText: "Site!" }).waitFor();
    // The pane follows the sheet: beside Site stands its drawing.
    await until("Drawings");
    await page.keyboard.press("ArrowRight");
    expect(await focused()).toBe("Lists");
    await page.keyboard.press("Tab");
    const ring = await page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle);
    expect(ring).not.toBe("none");
    await until("Open…");
    for (const next of ["Save .xlsx", "Print sheet", "↶", "↷", "Hide pane"]) {
      await page.keyboard.press("Tab");
      expect(await focused()).toBe(next);
    }
    await context.close();
  });

  it("let the pane be made wider with the keyboard, within bounds", async () => {
    const { context, page } = await site.open();
    await new BenchPage(page, site.address).open();
    const width = async (): Promise<number> => (await page.locator("#pane").boundingBox())?.width ?? 0;
    const before = await width();
    await page.locator("#divider").focus();
    await page.keyboard.press("ArrowLeft");
    expect(await width()).toBeGreaterThan(before);
    await page.keyboard.press("Home");
    expect(await width()).toBe(320);
    await page.keyboard.press("End");
    expect(await width()).toBe(720);
    await page.reload();
    await page.locator("body[data-ready]").waitFor();
    expect(await width()).toBe(720);
    await context.close();
  });

  it("take what was said about a job away with it", async () => {
    const { context, page } = await site.open();
    const bench = new BenchPage(page, site.address);
    await bench.open();
    const greeting = page.locator(".notice", { hasText: "This is a demo job" });
    await greeting.waitFor();
    await page.getByLabel("SI: meters").check();
    await page.getByRole("button", { name: "Open here" }).click();
    await page.locator("#file-name", { hasText: "rillwright-si-blank.xlsx" }).waitFor();
    await greeting.waitFor({ state: "detached" });
    // After a reload the pane offers the units of the job that is open.
    await bench.goTo(areaName((await placesIn(readFileSync(BLANK)))("FeatureName")));
    await bench.type("Pond corner (invented)");
    await page.locator("#kept", { hasText: "kept in this browser" }).waitFor();
    await page.reload();
    await bench.ready();
    const back = page.locator(".notice", { hasText: "are back" });
    await back.waitFor();
    await expect.poll(() => page.getByLabel("SI: meters").isChecked()).toBe(true);
    await page.getByRole("button", { name: "Open here" }).click();
    await page.getByRole("button", { name: "Open without saving" }).click();
    await back.waitFor({ state: "detached" });
    await context.close();
  }, 120_000);

  it("greet a first visit once", async () => {
    const { context, page } = await site.open();
    const bench = new BenchPage(page, site.address);
    await bench.open();
    await page.locator(".notice", { hasText: "This is a demo job" }).getByRole("button", { name: "Close" }).click();
    await page.reload();
    await bench.ready();
    expect(await page.locator(".notice", { hasText: "This is a demo job" }).count()).toBe(0);
    await context.close();
  });
});
