import { afterAll, beforeAll, expect, it } from "vitest";
import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { unzipSync, zipSync } from "fflate";
import { readXlsx } from "hucre/xlsx";
import { areaName, type Area } from "../../src/xlsx/address";
import { smallTemplate } from "../host/smallTemplate";
import { ALL } from "../effort";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { placesIn } from "./places";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");
const KEEPS_NOTHING = "This browser keeps nothing here; save the file before you leave.";

describeInBrowser("what the bench keeps in the browser", () => {
  let site: Site;
  let fall: Area;
  beforeAll(async () => {
    fall = (await placesIn(readFileSync(DEMO)))("FallTyped");
    site = await startSite();
  });
  afterAll(() => site?.close());

  const kept = (bench: BenchPage) => bench.page.locator("#kept", { hasText: "kept in this browser" });

  async function openOwn(bench: BenchPage, name: string): Promise<void> {
    await bench.takeFile(name, await smallTemplate());
  }

  it("brings typed cells and placed pictures back after the page crashed", async () => {
    const { context, page } = await site.open();
    const bench = new BenchPage(page, site.address);
    await bench.open();
    await bench.goTo(areaName(fall));
    await bench.type("2.65");
    await bench.goTo("Site!F30");
    await bench.showTab("Drawings");
    await page.selectOption("#drawing", { label: "Plan" });
    await page.locator(".drawing svg title", { hasText: "Plan" }).first().waitFor({ state: "attached" });
    await page.getByRole("button", { name: "Place in the workbook" }).click();
    await page.locator(".foot [role=status]", { hasText: "Plan is on the sheet Site" }).waitFor();
    await page.waitForTimeout(1500);
    // A crash gives the page no time to tidy up.
    const inspector = await context.newCDPSession(page);
    void inspector.send("Page.crash").catch(() => undefined);
    await page.waitForEvent("crash");
    const next = await context.newPage();
    const again = new BenchPage(next, site.address);
    await again.open();
    await next.locator(".notice", { hasText: "Your changes to rillwright-us-demo.xlsx" }).waitFor();
    const saved = await again.save();
    const { sheets } = await readXlsx(saved, { readStyles: true });
    const site2 = sheets.find(({ name }) => name === "Site");
    expect(site2?.cells?.get(`${fall.top},${fall.left}`)?.value).toBe(2.65);
    expect(Object.keys(unzipSync(saved)).some((part) => /^xl\/media\/rillwright\d+\.png$/.test(part))).toBe(true);
    expect(site2?.images?.some(({ altText, anchor }) => altText === "Plan" && anchor.from.row === 29)).toBe(true);
    await context.close();
  }, 120_000);

  it.runIf(ALL)(
    "keeps the jobs of two open pages apart, and offers the one that was closed",
    async () => {
      const { context, page } = await site.open();
      const one = new BenchPage(page, site.address);
      await one.open();
      await openOwn(one, "one.xlsx");
      await one.goTo("Site!B4");
      await one.type("1.1");
      await kept(one).waitFor();
      const two = new BenchPage(await context.newPage(), site.address);
      await two.open();
      expect(await two.page.locator("#file-name").innerText()).toBe("rillwright-us-demo.xlsx");
      await openOwn(two, "two.xlsx");
      await two.goTo("Site!B4");
      await two.type("2.2");
      await kept(two).waitFor();
      for (const [bench, name, typed] of [
        [one, "one.xlsx", 1.1],
        [two, "two.xlsx", 2.2],
      ] as const) {
        await bench.page.reload();
        await bench.ready();
        expect(await bench.page.locator("#file-name").innerText()).toBe(name);
        const { sheets } = await readXlsx(await bench.save(), { readStyles: true });
        expect(sheets.find((sheet) => sheet.name === "Site")?.cells?.get("3,1")?.value).toBe(typed);
        await bench.goTo("Site!B4");
        await bench.type(String(typed + 1));
        await kept(bench).waitFor();
      }
      await two.page.close();
      await one.page.reload();
      await one.ready();
      await one.page
        .locator(".notice", { hasText: "Another job with unsaved changes is kept here: two.xlsx" })
        .waitFor();
      await context.close();
    },
    180_000,
  );

  it.runIf(ALL)(
    "hands over as a file what it cannot bring back",
    async () => {
      const { context, page } = await site.open();
      const bench = new BenchPage(page, site.address);
      await bench.open();
      await openOwn(bench, "mine.xlsx");
      await bench.goTo("Site!B4");
      await bench.type("1.3");
      await kept(bench).waitFor();
      // What is kept becomes a file the bench refuses, and the page that goes does not keep its own any more.
      const refused = zipSync({ ...unzipSync(await smallTemplate()), "xl/vbaProject.bin": new Uint8Array(1) });
      await page.evaluate(
        (bytes) =>
          new Promise((resolve) => {
            indexedDB.open("rillwright").onsuccess = ({ target }) => {
              const change = (target as IDBOpenDBRequest).result.transaction("drafts", "readwrite");
              const drafts = change.objectStore("drafts");
              const kept = drafts.get("current");
              kept.onsuccess = () => drafts.put({ ...kept.result, bytes: new Uint8Array(bytes) }, "current");
              change.oncomplete = () => {
                IDBObjectStore.prototype.put = () => {
                  throw new Error("this page is going");
                };
                resolve(undefined);
              };
            };
          }),
        [...refused],
      );
      await page.reload();
      await bench.ready();
      expect(await page.locator("#file-name").innerText()).toBe("rillwright-us-demo.xlsx");
      const told = page.locator(".notice", { hasText: "Your changes to mine.xlsx" });
      const [file] = await Promise.all([
        page.waitForEvent("download"),
        told.getByRole("button", { name: "Save them as a file" }).click(),
      ]);
      const { sheets } = await readXlsx(new Uint8Array(await readFile(await file.path())), { readStyles: true });
      expect(sheets.find(({ name }) => name === "Site")?.cells?.get("3,1")?.value).toBe(1.3);
      // It is told of again until it is deleted.
      await page.reload();
      await bench.ready();
      await told.getByRole("button", { name: "Delete them" }).click();
      await page.waitForTimeout(300);
      await page.reload();
      await bench.ready();
      expect(await told.count()).toBe(0);
      await context.close();
    },
    120_000,
  );

  it.each([
    [
      "blocked",
      () => {
        for (const store of ["localStorage", "sessionStorage", "indexedDB", "caches"]) {
          Object.defineProperty(globalThis, store, {
            get: () => {
              throw new DOMException("The operation is insecure.", "SecurityError");
            },
          });
        }
      },
    ],
    [
      "full",
      () => {
        IDBObjectStore.prototype.put = () => {
          throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
        };
        Storage.prototype.setItem = () => {
          throw new DOMException("The quota has been exceeded.", "QuotaExceededError");
        };
      },
    ],
  ])("goes on where the storage is %s, and says that nothing is kept", async (_, spoil) => {
    const { context, page, faults } = await site.open();
    await context.addInitScript(spoil);
    const bench = new BenchPage(page, site.address);
    await bench.open();
    await bench.showTab("Job");
    const head = await bench.glance("DesignHead");
    await bench.goTo(areaName(fall));
    await bench.type("3.4");
    await page.locator("#kept", { hasText: KEEPS_NOTHING }).waitFor();
    await expect.poll(() => bench.glance("DesignHead")).not.toBe(head);
    for (const tab of ["Lists", "Drawings", "Help"]) await bench.showTab(tab);
    const { sheets } = await readXlsx(await bench.save(), { readStyles: true });
    expect(sheets.find(({ name }) => name === "Site")?.cells?.get(`${fall.top},${fall.left}`)?.value).toBe(3.4);
    expect(faults).toEqual([]);
    await context.close();
  });
});
