import axe from "axe-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { describeInBrowser } from "./browser";
import { faultsOf } from "./axe";
import { showTab, startPane, TABS } from "./panePage";

describeInBrowser("the pane's looks", () => {
  let site: Awaited<ReturnType<typeof startPane>>;

  beforeAll(async () => {
    site = await startPane();
  });
  afterAll(() => site?.close());

  describe.each([
    ["light", { colorScheme: "light" }],
    ["dark", { colorScheme: "dark" }],
    ["the system's own colours", { forcedColors: "active" }],
  ] as const)("in %s", (_, options) => {
    it("fits 320 px on every tab and passes axe", async () => {
      const { context, page, faults } = await site.openPane(options);
      for (const name of TABS) {
        await showTab(page, name);
        await page.waitForTimeout(300);
        const [content, room] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
        expect(content, name).toBeLessThanOrEqual(room ?? 0);
        expect(await faultsOf(page), name).toEqual([]);
      }
      expect(faults).toEqual([]);
      await context.close();
    });
  });

  it("carries axe's own rules", () => {
    // Guards the checks above: a build of axe without rules would pass everything.
    expect(axe.getRules(["wcag2aa"]).length).toBeGreaterThan(0);
  });
});
