import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { FakeWorkbook } from "../host/fakeWorkbook";
import { describeInBrowser } from "./browser";
import { said, showTab, startPane, TABS } from "./panePage";

declare const workbook: FakeWorkbook;

/** Side of the square that WCAG 2.2 (2.5.8) asks of what is pressed, in pixels. */
const TARGET = 24;

describeInBrowser("the pane by keyboard and finger", () => {
  let site: Awaited<ReturnType<typeof startPane>>;
  beforeAll(async () => {
    site = await startPane();
  });
  afterAll(() => site?.close());

  /** Opens a tab at its fullest: everything unfolded, a function's form open. */
  const fill = async (page: Page, name: string): Promise<void> => {
    await showTab(page, name);
    await page.waitForTimeout(200);
    const folded = page.locator("details:not([open]) > summary:visible");
    while ((await folded.count()) > 0) await folded.first().click();
    if (name === "Functions") await page.locator(".row", { hasText: "BASINCHECK" }).first().click();
  };

  /** What has the focus, and whether its middle or a corner can be seen (WCAG 2.2, 2.4.11). */
  const focused = (page: Page) =>
    page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return undefined;
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const points = [
        [(left + right) / 2, (top + bottom) / 2],
        [left + 3, top + 3],
        [right - 3, bottom - 3],
      ] as const;
      const seen = points.some(([x, y]) => {
        const there = document.elementFromPoint(x, y);
        return there !== null && (element.contains(there) || there.contains(element));
      });
      return { what: `${element.tagName} ${(element.textContent ?? "").slice(0, 40)}`, seen };
    });

  it.each(["Job", "Functions", "Lists"])("hides nothing that has the focus on %s, forth and back", async (name) => {
    const { context, page } = await site.openPane({ viewport: { width: 320, height: 480 } });
    await fill(page, name);
    // Something to say at the foot takes room too.
    await page.evaluate(() => {
      const foot = document.querySelector(".foot p");
      if (foot) foot.textContent = "A sentence that says what was done. ".repeat(3);
    });
    for (const key of ["Tab", "Shift+Tab"]) {
      for (let steps = 0; steps < 60; steps++) {
        await page.keyboard.press(key);
        const now = await focused(page);
        if (!now) break;
        expect(now, key).toMatchObject({ seen: true });
      }
    }
    await context.close();
  });

  it("gives everything that is pressed room enough", async () => {
    const { context, page } = await site.openPane();
    for (const name of TABS) {
      await fill(page, name);
      const small = await page.evaluate((least) => {
        const targets = [...document.querySelectorAll<HTMLElement>("a, button, input, select, summary")]
          .filter((element) => element.checkVisibility() && !element.closest("p"))
          .map((element) => ({ element, box: element.getBoundingClientRect() }));
        const middle = ({ left, right, top, bottom }: DOMRect) => [(left + right) / 2, (top + bottom) / 2] as const;
        // A smaller one is enough where a circle of that width around it touches no other's.
        return targets
          .filter(({ box }) => Math.min(box.width, box.height) < least)
          .filter(({ element, box }) =>
            targets.some((other) => {
              const [[x, y], [a, b]] = [middle(box), middle(other.box)];
              return other.element !== element && Math.hypot(x - a, y - b) < least;
            }),
          )
          .map(({ element }) => element.outerHTML.slice(0, 80));
      }, TARGET);
      expect(small, name).toEqual([]);
    }
    await context.close();
  });

  it("keeps the focus and what is unfolded when a check changes", async () => {
    const { context, page } = await site.openPane();
    await fill(page, "Job");
    const check = page.locator("details .check").first();
    await check.focus();
    const label = await check.getAttribute("data-key");
    await page.evaluate(() => {
      const [sheet = "", area = ""] = (workbook.names.get("Checks") ?? "").replace(/\$/g, "").split("!");
      const [first = "A1", last = first] = area.split(":");
      const column = String.fromCharCode(first.charCodeAt(0) + 3);
      for (let row = Number(first.slice(1)); row <= Number(last.slice(1)); row++) {
        const held = workbook.sheet(sheet)?.cells.get(`${column}${row}`);
        if (held && held.value !== "") held.value = "another limit";
      }
      for (const listener of workbook.changeListeners) void listener();
    });
    await page.locator("details .check", { hasText: "another limit" }).first().waitFor();
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-key"))).toBe(label);
    await context.close();
  });

  it("gives the keyboard's place back when what held it goes", async () => {
    const { context, page } = await site.openPane();
    await showTab(page, "Lists");
    await page.setInputFiles("#price-file", {
      name: "s.csv",
      mimeType: "text/csv",
      buffer: Buffer.from("Code,Cost\r\nNEW-1,6.5\r\n"),
    });
    await page.getByRole("button", { name: "Leave the list as it is" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("price-file");
    // A long task that is cancelled by keyboard.
    await showTab(page, "Start");
    await page.route("**/templates/*.xlsx", () => undefined);
    await page.getByRole("button", { name: "Open in a new workbook" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Cancel" }).focus();
    await page.keyboard.press("Enter");
    await said(page).filter({ hasText: "was stopped" }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Open in a new workbook");
    await context.close();
  });

  it("carries in every button's name the words it shows", async () => {
    const { context, page } = await site.openPane();
    for (const name of TABS) {
      await fill(page, name);
      const other = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("[aria-label]")]
          .filter((element) => element.matches("button, a"))
          .filter((element) => !(element.ariaLabel ?? "").startsWith(element.innerText))
          .map((element) => element.outerHTML),
      );
      expect(other, name).toEqual([]);
    }
    await context.close();
  });
});
