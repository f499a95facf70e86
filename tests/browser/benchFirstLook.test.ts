import { readFileSync } from "node:fs";
import path from "node:path";
import { readXlsx, type Workbook } from "hucre/xlsx";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type Area } from "../../src/xlsx/address";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { hold } from "./held";
import { areaTyped } from "./places";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");

describeInBrowser("the bench while it opens", () => {
  let site: Site | undefined;
  let demo: Recalculated;
  let book: Workbook;
  beforeAll(async () => {
    demo = await recalculate(readFileSync(DEMO));
    book = await readXlsx(readFileSync(DEMO), { readStyles: true });
    site = await startSite();
  });
  afterAll(() => site?.close());

  /** What the file holds, whatever a calculation would come to. */
  const stored = (name: string): number => {
    const { sheet, top, left } = place(name);
    return book.sheets.find((one) => one.name === sheet)?.cells?.get(`${top},${left}`)?.formulaResult as number;
  };
  const place = (name: string): Area => areaTyped(name, demo.names);
  const cellOf = (name: string): string => `td[data-cell="${place(name).top},${place(name).left}"]`;

  it("shows the stored values at once, and loses nothing that is typed before the grid stands", async () => {
    if (!site) throw new Error("no site");
    const { context, page, faults } = await site.open();
    const bench = new BenchPage(page, site.address);
    // The grid comes as late as over a slow line.
    const release = await hold(page, "page.js");
    await page.goto(`${site.address}/bench.html`);
    const picture = page.locator(".first-look");
    await picture.getByText("Estimate of a recirculating stream").waitFor();
    const price = stored("PriceTotal");
    await picture
      .getByText(price.toLocaleString("en-US", { minimumFractionDigits: 2 }))
      .first()
      .waitFor();
    await picture.getByRole("button", { name: "Site", exact: true }).click();
    // A result is not to be typed over, here as later.
    await picture.locator('td[data-cell="4,1"]').click();
    expect(await picture.locator("input").count()).toBe(0);
    await picture.locator(cellOf("Run")).click();
    await page.keyboard.type("30'3");
    await page.keyboard.press("Enter");
    await picture.locator(cellOf("BankHeight")).click();
    await page.keyboard.type("1200");
    await page.keyboard.press("Enter");
    await picture.locator(cellOf("BedWidth")).click();
    await page.keyboard.type("2.5");
    // Still typing when the grid has come.
    release();
    await page.waitForTimeout(3000);
    // The grid is made beneath, out of sight.
    expect(
      await page.evaluate(() => {
        const { left, top, width, height } = document.getElementById("sheet")!.getBoundingClientRect();
        return document.elementFromPoint(left + width / 2, top + height / 2)?.closest(".first-look") !== null;
      }),
    ).toBe(true);
    await page.keyboard.type("5");
    // The cell below is open now, and as it was; it holds nothing up.
    await page.keyboard.press("Enter");
    await bench.ready();
    await picture.waitFor({ state: "detached" });

    const saved = await recalculate(await bench.save());
    // 30 ft 3 in.
    expect(saved.named("Run")?.[0]?.[0]).toBeCloseTo(30.25, 12);
    // What the cell cannot use is kept as it was typed, and wrong.
    expect([saved.named("BankHeightYours"), saved.named("BankHeight")]).toEqual([[[1200]], [["#N/A"]]]);
    expect(saved.named("BedWidth")?.[0]?.[0]).toBe(2.55);
    await bench.showTab("Job");
    await expect
      .poll(() => bench.glance("DesignHead"))
      .toContain(String((saved.named("DesignHead")?.[0]?.[0] as number).toFixed(2)));
    expect(faults).toEqual([]);
    await context.close();
  });
});
