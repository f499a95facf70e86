import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import path from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readBook } from "../../src/workbook/company/readBook";
import { recalculate } from "../../src/workbook/recalculate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER } from "./browser";
import { said, showTab, startPane } from "./panePage";

const FILE = path.join(SITE_FOLDER, "templates/rillwright-us-company.xlsx");
const PUMPS = "Pump;Price;Shut-off head (m);Flow 1 (L/min);Head 1 (kPa)\nFern 40;412,50;6,1;100;39,2266\nBad;1;2";

describeInBrowser("the company's book in the pane", () => {
  let site: Awaited<ReturnType<typeof startPane>>;
  beforeAll(async () => {
    site = await startPane();
  });
  afterAll(() => site?.close());
  const saved = async (page: Page, button: string): Promise<Uint8Array> => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: button }).click(),
    ]);
    return readFile(await download.path());
  };

  it("makes a new job of a book that is dropped on the bench, compares it, and takes a maker's curves in", async () => {
    const { context, page, faults } = await site.open();
    const bench = new BenchPage(page, site.address);
    await bench.open();
    await bench.drop({ files: [{ name: "ours.xlsx", bytes: readFileSync(FILE) }] });
    await page.getByText("ours.xlsx is a company book.").waitFor();
    await page.getByRole("button", { name: "New job from it" }).click();
    const foot = said(page);
    await foot.filter({ hasText: "It holds its own copy of the prices of ours.xlsx" }).waitFor({ timeout: 60_000 });

    // A price typed into the job differs from the book; the other way round it is news.
    const before = await recalculate(await bench.save());
    const row = (before.named("RateCodes") ?? []).findIndex(([code]) => code === "PIPE 3 Sch 40 PVC");
    expect(before.named("RateCosts")?.[row]?.[0]).toBe(4.15);
    const cell = /!\$?([A-Z]+)\$?(\d+)/.exec(before.names.get("RateCosts") ?? "");
    await bench.goTo(`Rates!${cell?.[1]}${Number(cell?.[2]) + row}`);
    await bench.type("4.9");
    await bench.showTab("Book");
    await page.getByRole("button", { name: "Bring the job's prices up to date" }).click();
    await page.getByText("PIPE 3 Sch 40 PVC price 4.90 → 4.15").waitFor({ timeout: 60_000 });
    await page.getByRole("button", { name: "Copy the marked rows into the job" }).click();
    await foot.filter({ hasText: "1 line of the job is as in the book now." }).waitFor({ timeout: 60_000 });
    const after = await recalculate(await bench.save());
    expect(after.named("RateCosts")?.[row]?.[0]).toBe(4.15);

    await page.setInputFiles("#pump-file", { name: "pumps.csv", mimeType: "text/csv", buffer: Buffer.from(PUMPS) });
    await page.getByText("1 pump read from pumps.csv.").waitFor({ timeout: 60_000 });
    await page.getByText("Row 3 (Bad): needs at least one point with a flow.").waitFor();
    await page.getByRole("button", { name: "Copy the marked pumps into the book" }).click();
    await foot.filter({ hasText: "1 row of the book is new" }).waitFor({ timeout: 60_000 });
    const { book } = await readBook("ours.xlsx", await saved(page, "Save the book"));
    // 100 L/min are 0.1 m³ in 60 s.
    expect(book.pumps.find(({ name }) => name === "Fern 40")?.curve[1]?.flow).toBeCloseTo(0.1 / 60, 8);

    await page.reload();
    await bench.ready();
    await bench.showTab("Book");
    await page.locator("#pane").getByText("ours.xlsx", { exact: true }).last().waitFor();
    expect(faults).toEqual([]);
    await context.close();
  }, 180_000);

  it("works without the browser's storage, and keeps the book it has where another cannot be read", async () => {
    const { context, page } = await site.openPane();
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("refused", "SecurityError");
      };
    });
    await page.reload();
    await showTab(page, "Book");
    await page.setInputFiles("#book-file", FILE);
    await page.locator("#page-1").getByText("This browser keeps nothing here").waitFor({ timeout: 60_000 });
    const job = path.join(SITE_FOLDER, "templates/rillwright-us-blank.xlsx");
    await page.setInputFiles("#book-file", job);
    await said(page).filter({ hasText: "rillwright-us-blank.xlsx is a job, not a company book" }).waitFor();
    const damaged = { name: "cut.xlsx", mimeType: "", buffer: readFileSync(FILE).subarray(0, 9000) };
    await page.setInputFiles("#book-file", damaged);
    await said(page).filter({ hasText: "cut.xlsx is damaged and cannot be read" }).waitFor();
    const made = await recalculate(await saved(page, "New job: download"));
    expect(made.named("RateCosts")?.flat()).toContain(4.15);
    await context.close();
  }, 120_000);
});
