import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { BrowserContext, Page } from "playwright-core";
import { recalculate } from "../../src/workbook/recalculate";
import { copyMadeAt } from "../../src/workbook/copy/valuesCopy";
import { parseArea } from "../../src/xlsx/address";
import { BenchPage } from "./benchPage";
import { readPdf, type PrintedPage } from "../papers/readPdf";
import { describeInBrowser, startSite, type Site } from "./browser";

describeInBrowser("papers from the bench", () => {
  let site: Site;
  let bench: BenchPage;
  let page: Page;
  let context: BrowserContext;

  beforeAll(async () => {
    site = await startSite();
    ({ page, context } = await site.open());
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    bench = new BenchPage(page, site.address);
    await bench.open();
  });
  afterAll(() => site?.close());

  it("prints a sheet's print area alone, under the job's name, with page and margins as its file says", async () => {
    // The page's own print is held, so that what it would print can be looked at.
    await page.evaluate(() => {
      window.print = () => void (document.body.dataset.printed = document.title);
    });
    await bench.goTo("Quote!A1");
    await page.getByRole("button", { name: "Print sheet" }).click();
    await page.waitForFunction(() => document.body.dataset.printed !== undefined);
    expect(await page.evaluate(() => document.body.dataset.printed)).toBe("rillwright-us-demo");
    const paper = page.locator(".paper");
    expect(await paper.isVisible()).toBe(false);
    await page.emulateMedia({ media: "print" });
    const text = await paper.innerText();
    expect(text).toContain("A basin under gravel at its foot");
    // The demo's prices are invented, so that its quote is a draft.
    expect(text).toContain("Draft: not to be signed");
    expect(await page.locator("#bar").isVisible()).toBe(false);
    const rules = await page.locator("body > style").last().textContent();
    // The file: Letter, portrait, and the margins of its page set-up.
    expect(rules).toBe("@page { size: letter portrait; margin: 0.65in 0.5in 0.6in 0.5in; }");
    await page.emulateMedia({ media: "screen" });
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    await paper.waitFor({ state: "detached" });
    expect(await page.title()).toBe("Rillwright bench");
  });

  it("hands over a copy of the values, marked as one", async () => {
    await bench.showTab("Job");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save a copy of values" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^rillwright-us-demo values \d{4}-\d\d-\d\d \d\d\.\d\d\.xlsx$/);
    const bytes = new Uint8Array(readFileSync(await download.path()));
    expect(copyMadeAt(bytes)).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d$/);
    expect((await recalculate(bytes)).results.size).toBe(0);
  });

  it("gives each reader's papers as a PDF, and the order to the supplier who is chosen", async () => {
    await bench.showTab("Job");
    const given = async (label: string): Promise<{ name: string; pages: PrintedPage[] }> => {
      const [download] = await Promise.all([
        page.waitForEvent("download", { timeout: 120_000 }),
        page.getByRole("button", { name: label }).click(),
      ]);
      const pages = await readPdf(new Uint8Array(readFileSync(await download.path())));
      return { name: download.suggestedFilename(), pages };
    };
    const client = await given("Client: quote and drawing");
    expect(client.name).toBe("rillwright-us-demo client.pdf");
    const quote = client.pages.map(({ text }) => text).join(" ");
    expect(quote).toContain("Brindle & Moss Streamworks");
    expect(quote).toMatch(/Section: \d drops of/);
    expect((await given("Crew: two pages for the site")).pages).toHaveLength(2);
    const suppliers = page.getByRole("combobox", { name: "Supplier" });
    const names = await suppliers.locator("option").allInnerTexts();
    await suppliers.selectOption(names[1]!);
    const order = await given("Supplier: the order to");
    const said = order.pages.map(({ text }) => text).join(" ");
    expect(said).toContain(names[1]);
    expect(said).not.toContain(names[0]);
  }, 300_000);

  it("puts a table whose columns stand in another order under its own headings, after asking", async () => {
    const names = (await recalculate(await bench.save())).names;
    const items = parseArea(names.get("OrderItems") ?? "")!;
    const row = items.top + 19;
    await page.evaluate(
      (copied) => navigator.clipboard.writeText(copied),
      "Item\tUnit\tAmount\tQty\tOrder no.\tPrice\nGRAVEL\tton\t92.5\t2\tHB-999\t46.25\nLINER\tft²\t\t30\tHB-999\t0.02875",
    );
    await bench.goTo(`Orders!B${row + 1}`);
    await page.keyboard.press("Control+V");
    const question = page.locator("#ask-question");
    await question.waitFor();
    expect(await question.innerText()).toBe(
      "The first row you pasted names columns. Put each under its own heading here (Order no., Item, Quantity, Unit, Price ($))? " +
        "Left out: Amount ($) (worked out here).",
    );
    await page.getByRole("button", { name: "By the headings" }).click();
    await page.waitForTimeout(500);
    const after = await recalculate(await bench.save());
    const line = (at: number) => after.named("OrderBook")?.[at]?.slice(1, 6);
    expect(line(19)).toEqual(["HB-999", "GRAVEL", 2, "ton", 46.25]);
    expect(line(20)).toEqual(["HB-999", "LINER", 30, "ft²", 0.02875]);
  });

  it("shows the verdicts of Reconcile beside the pane on a small screen", async () => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await bench.goTo("Reconcile!E28");
    const sheet = (await page.locator("#sheet").boundingBox())!;
    // Widths of the first five columns as the file says, in characters of 7 dots and 5 more, and the row numbers.
    const right = 46 + [18, 15, 14, 8, 40].reduce((sum, width) => sum + width * 7 + 5, 0);
    expect(right).toBeLessThanOrEqual(sheet.width);
  });
});
