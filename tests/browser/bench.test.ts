import { readFileSync } from "node:fs";
import path from "node:path";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, expect, it } from "vitest";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { GLANCE } from "../../src/workbook/glance";
import { smallTemplate } from "../host/smallTemplate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { storedAgree } from "./storedResults";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");

describeInBrowser("the bench", () => {
  let site: Site;
  let bench: BenchPage;
  let foreign: string[];
  let faults: string[];
  let demo: Recalculated;
  const placeOf = (name: string): string => demo.names.get(name)?.split(":")[0] ?? name;

  beforeAll(async () => {
    demo = await recalculate(readFileSync(DEMO));
    site = await startSite();
    const opened = await site.open();
    ({ foreign, faults } = opened);
    bench = new BenchPage(opened.page, site.address);
    await bench.open();
    await bench.showTab("Job");
  });
  afterAll(() => site?.close());

  it("opens the demo with the numbers that the headless estimate gives", async () => {
    for (const { name } of GLANCE) {
      const value = demo.named(name)?.[0]?.[0];
      if (typeof value !== "number") continue;
      const shown = (await bench.glance(name)).replace(/[^\d.-]/g, "");
      const lastDigit = 10 ** -(shown.split(".")[1]?.length ?? 0);
      expect(Math.abs(Number(shown) - value), name).toBeLessThanOrEqual(0.501 * lastDigit);
    }
  });

  it("follows a changed fall in the head and the price", async () => {
    const [head, price] = [await bench.glance("DesignHead"), await bench.glance("PriceTotal")];
    await bench.goTo(placeOf("FallTypedYours"));
    await bench.type("3.5");
    await expect.poll(() => bench.glance("DesignHead")).not.toBe(head);
    await expect.poll(() => bench.glance("PriceTotal")).not.toBe(price);
  });

  it("saves what Node calculates again to the same results, cell by cell", async () => {
    const saved = await bench.save();
    const again = await recalculate(saved);
    expect(again.named("FallTyped")).toEqual([[3.5]]);
    expect(again.named("PriceTotal")?.[0]?.[0]).not.toBe(demo.named("PriceTotal")?.[0]?.[0]);
    expect(await storedAgree(saved, again)).toEqual([]);
  });

  it("takes an edit back, and again", async () => {
    const after = await bench.glance("DesignHead");
    await bench.page.click("#undo");
    await expect.poll(() => bench.glance("DesignHead")).not.toBe(after);
    await bench.page.click("#redo");
    await expect.poll(() => bench.glance("DesignHead")).toBe(after);
  });

  it("keeps results from being typed over, kindly", async () => {
    const before = await bench.glance("PriceTotal");
    await bench.goTo(placeOf("PriceTotal"));
    await bench.type("1");
    await bench.page.locator(".notice", { hasText: "is protected" }).waitFor();
    expect(await bench.glance("PriceTotal")).toBe(before);
    await bench.page.keyboard.press("Delete");
    await bench.page.locator(".notice", { hasText: "taken back" }).waitFor();
    await expect.poll(() => bench.glance("PriceTotal")).toBe(before);
  });

  it("says what belongs into a cell, and why one is in error", async () => {
    await bench.goTo(placeOf("FallTypedYours"));
    expect((await bench.page.locator("#hint").innerText()).length).toBeGreaterThan(10);
    await bench.openFile("own.xlsx", await smallTemplate());
    await bench.page.getByRole("button", { name: "Open without saving" }).click();
    await bench.page.locator("#file-name", { hasText: "own.xlsx" }).waitFor();
    await bench.goTo("Notes!D4");
    await bench.type('=RILL.FTIN("no length")');
    await bench.goTo("Notes!D4");
    await expect.poll(() => bench.page.locator("#why").innerText()).toContain("length");
  });

  it("saves a workbook of the person's own with only the typed cells changed", async () => {
    await bench.goTo("Notes!C1");
    await bench.type("12.5");
    const { sheets } = await readXlsx(await bench.save(), { readStyles: true });
    const notes = sheets.find(({ name }) => name === "Notes");
    expect(notes?.rows[0]?.slice(0, 3)).toEqual(["Your own sheet & more", 1, 12.5]);
    expect(notes?.cells?.get("3,3")).toMatchObject({ formula: '_xldudf_RILL_FTIN("no length")', value: "#VALUE!" });
    expect(sheets.find(({ name }) => name === "Site")?.dataValidations).toHaveLength(1);
  });

  it.each([
    ["notes.txt", Buffer.from("liner; 4"), "is not an .xlsx workbook"],
    ["locked.xlsx", Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0, 0, 0, 0]), "is an old .xls file"],
    ["torn.xlsx", readFileSync(DEMO).subarray(0, 2000), "is damaged"],
  ])("refuses %s in a sentence and keeps the open workbook", async (name, bytes, sentence) => {
    await bench.openFile(name, bytes);
    await bench.page.locator(".notice", { hasText: sentence }).waitFor();
    expect(await bench.page.locator("#file-name").innerText()).toContain("own.xlsx");
  });

  it("brings unsaved work back after the page was closed in the middle of it", async () => {
    await bench.goTo("Site!B4");
    await bench.type("1.25");
    await expect.poll(() => bench.page.locator("#kept").innerText()).toContain("kept in this browser");
    await bench.page.reload();
    await bench.ready();
    await bench.page.locator(".notice", { hasText: "Your changes to own.xlsx" }).waitFor();
    const { sheets } = await readXlsx(await bench.save(), { readStyles: true });
    expect(sheets.find(({ name }) => name === "Site")?.cells?.get("3,1")?.value).toBe(1.25);
    expect(sheets.find(({ name }) => name === "Notes")?.rows[0]?.[2]).toBe(12.5);
  });

  it("opens without a network once it was loaded", async () => {
    await bench.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    // Its own files, the templates, a page of help for each function, and the guide's pictures, which come last.
    const kept = (): Promise<string[]> =>
      bench.page.evaluate(async () => {
        const [shelf = ""] = await caches.keys();
        return (await (await caches.open(shelf)).keys()).map(({ url }) => url);
      });
    expect((await kept()).length).toBeGreaterThan(70);
    expect(await kept()).toContainEqual(expect.stringContaining("help/pictures/"));
    await bench.page.context().setOffline(true);
    try {
      await bench.page.reload();
      await bench.ready();
      expect(await bench.page.locator("#file-name").innerText()).toContain("own.xlsx");
      await bench.showTab("Start");
      await bench.page.getByLabel("SI: meters").check();
      await bench.page.getByRole("button", { name: "Open here" }).click();
      await bench.page.locator("#file-name", { hasText: "rillwright-si-blank.xlsx" }).waitFor();
      const help = await bench.page.context().newPage();
      for (const [page, heading] of [
        ["tdh", "TDH"],
        ["guide", "A job, start to end"],
      ] as const) {
        await help.goto(new URL(`help/${page}.html`, bench.page.url()).href);
        expect(await help.locator("h1").innerText()).toContain(heading);
        expect(await help.evaluate(() => document.styleSheets[0]?.cssRules.length)).toBeGreaterThan(10);
        for (const picture of await help.locator("img").all()) {
          await picture.scrollIntoViewIfNeeded();
          const width = (): Promise<number> => picture.evaluate((one: HTMLImageElement) => one.naturalWidth);
          await expect.poll(width, { message: (await picture.getAttribute("src")) ?? "" }).toBeGreaterThan(0);
        }
      }
      await help.close();
    } finally {
      await bench.page.context().setOffline(false);
    }
  });

  it("asked for nothing outside its own address, and broke no rule of its own", () => {
    expect(foreign).toEqual([]);
    expect(faults).toEqual([]);
  });
});
