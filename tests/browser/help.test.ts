import { afterAll, beforeAll, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { functionPath } from "../../src/help/functionPage";
import { ALL } from "../effort";
import { faultsOf } from "./axe";
import { describeInBrowser, startSite, type Site } from "./browser";

/** One page of each kind, and the two functions with the widest tables. */
const PAGES = [
  "index.html",
  ...["index", "guide", "limits", "support", "privacy", "terms", "pumprank", "reconcile"].map((p) => `help/${p}.html`),
];

/** All pages share their colors; the short run looks at them in the dark, where contrast is harder to keep. */
const SCHEMES = ALL ? (["light", "dark"] as const) : (["dark"] as const);

describeInBrowser("the help pages in a browser", () => {
  let site: Site;
  beforeAll(async () => {
    site = await startSite();
  });
  afterAll(() => site.close());

  it.each(PAGES.flatMap((path) => SCHEMES.map((scheme) => [path, scheme] as const)))(
    "%s is accessible, narrow and quiet in %s",
    async (path, scheme) => {
      const { context, page, foreign, faults } = await site.open({
        viewport: { width: 320, height: 640 },
        colorScheme: scheme,
      });
      await page.goto(`${site.address}/${path}`);
      expect(await faultsOf(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe(scheme);
      expect(foreign).toEqual([]);
      expect(faults).toEqual([]);
      await context.close();
    },
  );

  it("opens the page of every function without a fault", async () => {
    const { context, page, faults } = await site.open();
    for (const { name } of catalogue) {
      await page.goto(`${site.address}/${functionPath(name)}`, { waitUntil: "domcontentloaded" });
      expect(await page.locator("h1").innerText()).toBe(`RILL.${name}`);
    }
    expect(faults).toEqual([]);
    await context.close();
  });

  it("finds a function by what it is about, with the keyboard alone", async () => {
    const { context, page } = await site.open();
    await page.goto(`${site.address}/help/index.html`);
    await page.getByLabel("Find a function").focus();
    await page.keyboard.type("friction pipe");
    expect(await page.locator(".topic li:visible a").allInnerTexts()).toContain("PIPELOSS");
    expect(await page.locator("#found").innerText()).toMatch(/^\d+ of \d+ functions$/);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForURL(/help\/[a-z]+\.html$/);
    await context.close();
  });

  it("skips to the content on the first Tab", async () => {
    const { context, page } = await site.open();
    await page.goto(`${site.address}/help/guide.html`);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("content");
    await context.close();
  });
});
