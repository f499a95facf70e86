import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { FakeWorkbook } from "../host/fakeWorkbook";
import { describeInBrowser } from "./browser";
import { said, showTab, startPane } from "./panePage";

declare const workbook: FakeWorkbook;

/** Steps that went wrong only in the wrong order: what was shown and what is done must stay one. */
describeInBrowser("the pane, step by step", () => {
  let site: Awaited<ReturnType<typeof startPane>>;
  beforeAll(async () => {
    site = await startPane();
  });
  afterAll(() => site?.close());

  const list = (page: Page) =>
    page.evaluate(() => {
      const [codes, costs] = ["RateCodes", "RateCosts"].map((name) => (workbook.names.get(name) ?? "").split(":")[0]);
      return [codes ?? "", costs ?? ""] as const;
    });
  const valueOf = (page: Page, cell: string) => page.evaluate((at) => workbook.cell(at)?.value, cell);
  const readFile = async (page: Page, text: string): Promise<void> => {
    await page.setInputFiles("#price-file", { name: "s.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
    await page.locator("h3", { hasText: "What the file would change" }).waitFor();
  };

  it("writes no price into a list that changed since the file was read", async () => {
    const { context, page } = await site.openPane();
    await showTab(page, "Lists");
    const [codes, costs] = await list(page);
    const [code, before] = [await valueOf(page, codes), await valueOf(page, costs)];
    await readFile(page, `Code,Cost\r\n${String(code)},987.65\r\n`);
    // Someone puts another item into that row.
    await page.evaluate((at) => {
      const held = workbook.cell(at);
      if (held) held.value = "ANOTHER-ITEM";
    }, codes);
    await page.getByRole("button", { name: "Apply the marked prices" }).click();
    await said(page).filter({ hasText: "nothing was written. Read the file again" }).waitFor();
    expect(await valueOf(page, costs)).toBe(before);
    await context.close();
  });

  it("says of each price what it was and would be, and takes only the marked ones", async () => {
    const { context, page } = await site.openPane();
    await showTab(page, "Lists");
    const [codes, costs] = await list(page);
    const [code, before] = [await valueOf(page, codes), await valueOf(page, costs)];
    await readFile(page, `Code,Cost,Taxable,Supplier's code\r\n${String(code)},987.65,no,T-1\r\n`);
    const entry = page.locator("li.choice", { hasText: String(code) });
    expect(await entry.innerText()).toContain(
      `cost ${before === "" ? "blank" : String(before)} → 987.65, taxable yes → no, supplier's code blank → T-1`,
    );
    await entry.getByRole("checkbox").uncheck();
    await page.getByRole("button", { name: "Apply the marked prices" }).click();
    await said(page).filter({ hasText: "0 cells of the price list were changed" }).waitFor();
    expect(await valueOf(page, costs)).toBe(before);
    await context.close();
  });

  it("never saves one drawing under another's name", async () => {
    const { context, page } = await site.openPane();
    await showTab(page, "Drawings");
    const shown = page.locator(".drawing svg").first();
    await shown.waitFor();
    await page.evaluate(() => (workbook.refuses = "InvalidOperationInCellEditMode"));
    await page.selectOption("#drawing", { label: "Plan" });
    await said(page).filter({ hasText: "press Enter or Esc" }).waitFor();
    // The section is no longer in sight, so that it cannot be saved as a plan.
    expect(await shown.isVisible()).toBe(false);
    expect(await page.getByRole("button", { name: "Save SVG" }).isVisible()).toBe(false);
    await context.close();
  });

  it("gives a job the name of the file that was fetched, whatever is chosen meanwhile", async () => {
    const { context, page } = await site.openPane();
    const asked: string[] = [];
    await page.route("**/templates/*.xlsx", async (route) => {
      asked.push(route.request().url().split("/").pop() ?? "");
      await page.getByLabel("SI: meters").check();
      await route.fulfill({ status: 404, body: "" });
    });
    await page.getByLabel("US: feet").check();
    await page.getByRole("button", { name: "Open in a new workbook" }).click();
    await said(page).filter({ hasText: "could not be fetched" }).waitFor();
    expect(asked).toEqual(["rillwright-us-blank.xlsx"]);
    expect(await said(page).innerText()).toMatch(/^rillwright-us-blank\.xlsx could not be fetched/);
    await context.close();
  });

  it("does one long thing at a time", async () => {
    const { context, page } = await site.openPane();
    const open = page.getByRole("button", { name: "Open in a new workbook" });
    await open.evaluate((button: HTMLButtonElement) => {
      button.click();
      button.click();
    });
    await said(page).filter({ hasText: "open in a new Excel window" }).waitFor();
    expect(await page.evaluate(() => workbook.opened.length)).toBe(1);
    await context.close();
  });

  it("says where a formula would go as the selection moves", async () => {
    const { context, page } = await site.openPane();
    await page.evaluate(() => {
      workbook.addSheet("Own");
      workbook.select("Own!C3");
    });
    await showTab(page, "Functions");
    await page.locator(".row").first().click();
    await page.getByText("now Own!C3.").waitFor();
    await page.evaluate(() => workbook.select("Own!D9"));
    await page.getByText("now Own!D9.").waitFor();
    await context.close();
  });
});
