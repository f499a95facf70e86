import type { BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { ALL } from "../effort";
import { BenchPage } from "./benchPage";
import { describeInBrowser, startSite, type Site } from "./browser";
import { startChangingSite, type ChangingSite } from "./changingSite";

/** Room for the page's drafts, and for a third of its files. */
const SMALL_STORAGE = 4_000_000;

describeInBrowser("the copy of the site that the browser keeps", () => {
  let browser: Site;
  let site: ChangingSite;
  let context: BrowserContext;
  let page: Page;
  let bench: BenchPage;
  beforeAll(async () => {
    [browser, site] = await Promise.all([startSite(), startChangingSite()]);
  });
  afterAll(async () => {
    await browser?.close();
    site?.close();
  });
  beforeEach(async () => {
    site.mood = "good";
    context = await browser.browser.newContext();
    page = await context.newPage();
    bench = new BenchPage(page, site.address);
  });
  afterEach(() => context.close());

  const active = (): Promise<unknown> =>
    page.evaluate(() => navigator.serviceWorker.ready.then(({ active }) => active?.state));
  const kept = (): Promise<number> =>
    page.evaluate(async () => {
      const shelves = await caches.keys();
      const sizes = await Promise.all(shelves.map(async (name) => (await (await caches.open(name)).keys()).length));
      return sizes.reduce((sum, size) => sum + size, 0);
    });
  const build = (): Promise<string | undefined> => page.evaluate(() => document.documentElement.dataset.build);
  const guideBuild = (): Promise<string | null> =>
    page.evaluate(async () => {
      const text = await (await fetch("help/guide.html")).text();
      return new DOMParser().parseFromString(text, "text/html").documentElement.getAttribute("data-build");
    });
  async function limitStorage(bytes: number): Promise<void> {
    const inspector = await context.newCDPSession(page);
    await inspector.send("Storage.overrideQuotaForOrigin", { origin: site.address, quotaSize: bytes });
  }

  it.runIf(ALL)(
    "opens on every visit where the storage has no room for it, and keeps no piece of it",
    async () => {
      await page.goto(`${site.address}/licences.txt`);
      await limitStorage(SMALL_STORAGE);
      for (let visit = 0; visit < 3; visit++) {
        await bench.open();
        await page.waitForTimeout(1500);
      }
      expect(await kept()).toBe(0);
    },
    120_000,
  );

  it.runIf(ALL)(
    "stays on one whole build when a newer one finds no room, says so, and can still load it",
    async () => {
      await bench.open();
      await expect.poll(active, { timeout: 30_000 }).toBe("activated");
      await page.reload();
      await bench.ready();
      await limitStorage(SMALL_STORAGE);
      site.mood = "newer build";
      await page.reload();
      await bench.ready();
      const told = page.locator(".notice", { hasText: "A newer version of this page is on the server" });
      await told.waitFor({ timeout: 30_000 });
      for (let visit = 0; visit < 2; visit++) {
        expect(await build()).toBeUndefined();
        expect(await guideBuild()).toBeNull();
        await page.reload();
        await bench.ready();
      }
      await told.first().getByRole("button", { name: "Load the newer one without keeping it" }).click();
      await expect.poll(() => build().catch(() => undefined), { timeout: 30_000 }).toBe("newer");
      await bench.ready();
      expect(await guideBuild()).toBe("newer");
    },
    180_000,
  );

  it.each(ALL ? (["bad gateway", "sign-in page"] as const) : (["bad gateway"] as const))(
    "opens from the kept copy when the server answers with a %s, and keeps it",
    async (mood) => {
      await bench.open();
      await expect.poll(active, { timeout: 30_000 }).toBe("activated");
      const files = await kept();
      expect(files).toBeGreaterThan(70);
      site.mood = mood;
      for (let visit = 0; visit < 2; visit++) {
        await page.goto(`${site.address}/bench.html`);
        await bench.ready();
        await page.waitForTimeout(500);
      }
      await page.goto(`${site.address}/help/tdh.html`);
      expect(await page.locator("h1").innerText()).toContain("TDH");
      site.mood = "good";
      await bench.open();
      expect(await kept()).toBe(files);
    },
    120_000,
  );

  it.runIf(ALL)(
    "goes over to a newer build whole, at the next load with no other page open, and drops the old one",
    async () => {
      await bench.open();
      await expect.poll(active, { timeout: 30_000 }).toBe("activated");
      const files = await kept();
      await page.reload();
      await bench.ready();
      const other = await context.newPage();
      await new BenchPage(other, site.address).open();
      site.mood = "newer build";
      await page.reload();
      await bench.ready();
      await expect
        .poll(() => page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting)), {
          timeout: 30_000,
        })
        .toBe(true);
      await page.reload();
      await bench.ready();
      // The other page still works with the older build.
      await page.locator(".notice", { hasText: "A newer version of this page is kept" }).waitFor();
      expect([await build(), await guideBuild()]).toEqual([undefined, null]);
      await other.close();
      await page.waitForTimeout(1000);
      await page.reload();
      await expect.poll(() => build().catch(() => undefined), { timeout: 30_000 }).toBe("newer");
      await bench.ready();
      expect(await guideBuild()).toBe("newer");
      expect(await kept()).toBe(files);
    },
    180_000,
  );
});
