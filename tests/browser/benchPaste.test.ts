import { readFileSync } from "node:fs";
import path from "node:path";
import { readXlsx, writeXlsx } from "hucre/xlsx";
import type { BrowserContext } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { areaName, type Area } from "../../src/xlsx/address";
import type { Grid } from "../../src/host/port";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { areaTyped } from "./places";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");

describeInBrowser("copying and pasting in the bench", () => {
  let site: Site;
  let bench: BenchPage;
  let context: BrowserContext;
  let demo: Recalculated;

  beforeAll(async () => {
    demo = await recalculate(readFileSync(DEMO));
    site = await startSite();
    const opened = await site.open();
    ({ context } = opened);
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    bench = new BenchPage(opened.page, site.address);
    await bench.open();
  });
  afterAll(() => site?.close());

  const areaOf = (name: string): Area => areaTyped(name, demo.names);
  const cellOf = (name: string, row = 0): string => {
    const { sheet, top, left } = areaOf(name);
    return areaName({ sheet, top: top + row, left, bottom: top + row, right: left });
  };
  const held = async (name: string): Promise<Grid | undefined> => (await recalculate(await bench.save())).named(name);
  const notice = (words: string) => bench.page.locator(".notice", { hasText: words });
  const paste = async (cell: string, text?: string): Promise<void> => {
    if (text !== undefined) await bench.page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
    await bench.goTo(cell);
    await bench.page.keyboard.press("Control+V");
    await bench.page.waitForTimeout(300);
  };

  it("takes a column copied elsewhere in as values, in the look of the sheet", async () => {
    const looks = async () => {
      const { sheet, top, left } = areaOf("PumpPrices");
      const { sheets } = await readXlsx(await bench.save(), { readStyles: true });
      return [0, 1].map((row) => sheets.find(({ name }) => name === sheet)?.cells?.get(`${top + row},${left}`)?.style);
    };
    const before = await looks();
    await paste(cellOf("PumpPrices"), "431\r\n$398.50\r\n");
    expect((await held("PumpPrices"))?.slice(0, 2)).toEqual([[431], [398.5]]);
    expect(await looks()).toEqual(before);
  });

  it("takes it back in one step", async () => {
    await bench.page.click("#undo");
    await expect
      .poll(async () => (await held("PumpPrices"))?.slice(0, 2))
      .toEqual(demo.named("PumpPrices")?.slice(0, 2));
  });

  it("pastes what was copied here as it is, not as it is shown", async () => {
    await bench.goTo(cellOf("DesignHead"));
    await bench.page.keyboard.press("Control+C");
    await paste(cellOf("PumpPrices"));
    const [[head]] = demo.named("DesignHead") as [[number]];
    expect(Math.abs(((await held("PumpPrices"))?.[0]?.[0] as number) - head)).toBeLessThan(1e-9);
    expect(head * 1000).not.toBeCloseTo(Math.round(head * 1000), 3);
  });

  it("moves what was cut", async () => {
    await bench.goTo(cellOf("PumpPrices"));
    await bench.type("512");
    await bench.goTo(cellOf("PumpPrices"));
    await bench.page.keyboard.press("Control+X");
    await paste(cellOf("PumpPrices", 1));
    expect((await held("PumpPrices"))?.slice(0, 2)).toEqual([[""], [512]]);
    await paste(cellOf("PumpPrices", 2), "7");
    expect((await held("PumpPrices"))?.slice(1, 3)).toEqual([[512], [7]]);
  });

  it("leaves results alone and says so", async () => {
    const before = await held("PriceTotal");
    await paste(cellOf("PriceTotal"), "1");
    await notice("Nothing was pasted").waitFor();
    expect(await held("PriceTotal")).toEqual(before);
  });

  it("pastes into the cell's editor while it is open", async () => {
    await bench.page.evaluate((copied) => navigator.clipboard.writeText(copied), "3.25");
    await bench.goTo(cellOf("FallTyped"));
    await bench.page.keyboard.press("F2");
    await bench.page.keyboard.press("Control+A");
    await bench.page.keyboard.press("Control+V");
    await bench.page.keyboard.press("Enter");
    await expect.poll(async () => (await held("FallTyped"))?.[0]?.[0]).toBe(3.25);
  });

  it("pastes a formula of a person's own as one that reads the cells beside it, and a cut one as it was", async () => {
    const formula = 'A1*$A$1&IF(A1>2," ""more""","")';
    const cells = new Map([
      ["0,0", { value: 2 }],
      ["1,0", { value: 3 }],
      ["0,1", { value: "4", formula, formulaResult: "4" }],
    ]);
    const sheets = [
      { name: "One", rows: [], cells },
      { name: "Two", rows: [] },
    ];
    await bench.takeFile("own.xlsx", await writeXlsx({ sheets }));
    const saved = async (sheet: string, key: string) => {
      const book = await readXlsx(await bench.save(), { readStyles: true });
      const cell = book.sheets.find(({ name }) => name === sheet)?.cells?.get(key);
      return cell && [cell.formula ?? "", cell.formulaResult ?? cell.value];
    };
    await bench.goTo("One!B1");
    await bench.page.keyboard.press("Control+C");
    await paste("One!B2");
    // 3 times 2, and 3 is more than 2.
    expect(await saved("One", "1,1")).toEqual(['A2*$A$1&IF(A2>2," ""more""","")', '6 "more"']);
    await bench.page.click("#undo");
    await expect.poll(() => saved("One", "1,1")).toBeUndefined();
    // To the left of A there is nothing to read.
    await paste("One!A5");
    expect(await saved("One", "4,0")).toEqual(['#REF!*$A$1&IF(#REF!>2," ""more""","")', "#REF!"]);
    await bench.goTo("One!B1");
    await bench.page.keyboard.press("Control+X");
    await paste("One!D7");
    expect(await saved("One", "6,3")).toEqual([formula, "4"]);
    await bench.goTo("One!D7");
    await bench.page.keyboard.press("Control+X");
    await paste("Two!C2");
    expect(await saved("Two", "1,2")).toEqual(['\'One\'!A1*\'One\'!$A$1&IF(\'One\'!A1>2," ""more""","")', "4"]);
  });
});
