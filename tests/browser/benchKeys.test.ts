import { afterAll, beforeAll, expect, it } from "vitest";
import { writeXlsx } from "hucre/xlsx";
import { BenchPage } from "./benchPage";
import { describeInBrowser, startSite, type Site } from "./browser";

describeInBrowser("the keyboard in the bench's cells", () => {
  let site: Site;
  let bench: BenchPage;

  beforeAll(async () => {
    site = await startSite();
    const { page } = await site.open();
    bench = new BenchPage(page, site.address);
    await bench.open();
    const rows = Array.from({ length: 9 }, (_, row) => [row, 2 * row, 3 * row]);
    const day = { value: new Date(Date.UTC(2026, 2, 15)), style: { numFmt: "dd/mm/yyyy" } };
    const rule = { type: "date", operator: "greaterThan", range: "F2", formula1: "46000" } as const;
    const bytes = await writeXlsx({
      sheets: [{ name: "One", rows, cells: new Map([["1,5", day]]), dataValidations: [rule] }],
    });
    await bench.takeFile("own.xlsx", bytes);
  });
  afterAll(() => site?.close());

  const at = (): Promise<string> => bench.page.locator("#selected-cell").innerText();

  it.each([
    ["Tab", "One!C4"],
    ["Shift+Tab", "One!A4"],
    ["Enter", "One!B5"],
    ["Shift+Enter", "One!B3"],
    ["Home", "One!A4"],
    ["Control+Home", "One!A1"],
    ["Control+ArrowDown", "One!B9"],
    // The last row and the last column that hold something.
    ["Control+End", "One!F9"],
  ])("%s leads from B4 to %s", async (key, place) => {
    await bench.goTo("One!B4");
    await bench.page.keyboard.press(key);
    await expect.poll(at).toBe(place);
  });

  it("pages down as far as is in sight, and back", async () => {
    await bench.goTo("One!B2");
    await bench.page.keyboard.press("PageDown");
    const row = async (): Promise<number> => Number(/^One!B(\d+)$/.exec(await at())?.[1]);
    await expect.poll(row).toBeGreaterThan(12);
    await bench.page.keyboard.press("PageUp");
    await expect.poll(row).toBeLessThan(5);
  });

  it("leaves Home and End to the text of a cell that is open", async () => {
    await bench.goTo("One!B6");
    await bench.page.keyboard.type("7");
    await bench.page.keyboard.press("Home");
    await bench.page.keyboard.type("1");
    expect(await at()).toBe("One!B6");
    await bench.page.keyboard.press("Escape");
  });

  it("takes a day into a cell that shows days with the day first", async () => {
    await bench.goTo("One!F2");
    await bench.type("3/16/2026");
    await expect.poll(at).toBe("One!F3");
    expect(await bench.page.getByRole("dialog").count()).toBe(0);
  });
});
