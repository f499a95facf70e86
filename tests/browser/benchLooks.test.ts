import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { faultsOf } from "./axe";
import { BenchPage } from "./benchPage";
import { describeInBrowser, startSite, type Site } from "./browser";

/** The embedded spreadsheet draws its cells on a canvas and is another project's work. */
const NOT_OURS = ["#sheet"];

describeInBrowser("the bench's looks", () => {
  let site: Site;
  beforeAll(async () => {
    site = await startSite();
  });
  afterAll(() => site?.close());

  describe.each(["light", "dark"] as const)("in %s", (colorScheme) => {
    it("pass axe on a desk's and on a tablet's width, and never scroll sideways", async () => {
      const { context, page } = await site.open({ colorScheme });
      const bench = new BenchPage(page, site.address);
      await bench.open();
      for (const width of [1280, 768]) {
        await page.setViewportSize({ width, height: 900 });
        await page.waitForTimeout(300);
        const across = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(across, `${width}`).toBeLessThanOrEqual(width);
        expect(await faultsOf(page, NOT_OURS), `${width}`).toEqual([]);
        expect((await page.locator("#sheet").boundingBox())?.height).toBeGreaterThan(250);
      }
      await context.close();
    });
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
