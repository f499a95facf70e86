import { readFile } from "node:fs/promises";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, expect, it } from "vitest";
import { smallTemplate } from "../host/smallTemplate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, startSite, type Site } from "./browser";

const fallIn = async (bytes: Uint8Array): Promise<unknown> =>
  (await readXlsx(bytes, { readStyles: true })).sheets.find(({ name }) => name === "Site")?.cells?.get("3,1")?.value;

describeInBrowser("what is typed without Enter", () => {
  let site: Site;
  let bench: BenchPage;
  beforeAll(async () => {
    site = await startSite();
    bench = new BenchPage((await site.open()).page, site.address);
    await bench.open();
    await bench.takeFile("own.xlsx", await smallTemplate());
  });
  afterAll(() => site?.close());

  async function typeFall(text: string): Promise<void> {
    await bench.goTo("Site!B4");
    await bench.page.keyboard.type(text);
  }

  it("is in the file that Save writes, and Enter afterwards is the sheet's", async () => {
    await typeFall("2.71");
    expect(await fallIn(await bench.save())).toBe(2.71);
    let again = false;
    bench.page.once("download", () => (again = true));
    await bench.page.keyboard.press("Enter");
    await bench.page.waitForTimeout(700);
    expect(again).toBe(false);
  });

  it("is in the file that Ctrl+S writes", async () => {
    await typeFall("2.72");
    const [download] = await Promise.all([bench.page.waitForEvent("download"), bench.page.keyboard.press("Control+s")]);
    expect(await fallIn(new Uint8Array(await readFile(await download.path())))).toBe(2.72);
  });

  it("is there after a reload", async () => {
    await typeFall("2.73");
    await bench.page.reload();
    await bench.ready();
    expect(await fallIn(await bench.save())).toBe(2.73);
  });

  it("is there when a button of the pane is pressed", async () => {
    await bench.showTab("Help");
    await typeFall("2.74");
    await bench.page.getByRole("button", { name: "Recalculate" }).click();
    await bench.page.locator(".foot [role=status]:not(:empty)").waitFor();
    await bench.page.keyboard.press("Escape");
    expect(await fallIn(await bench.save())).toBe(2.74);
  });

  it("counts as work when another file is opened", async () => {
    await typeFall("2.76");
    await bench.openFile("other.xlsx", await smallTemplate());
    const dialog = bench.page.getByRole("dialog");
    const [download] = await Promise.all([
      bench.page.waitForEvent("download"),
      dialog.getByRole("button", { name: "Save it, then open" }).click(),
    ]);
    expect(await fallIn(new Uint8Array(await readFile(await download.path())))).toBe(2.76);
    await bench.page.locator("#file-name", { hasText: "other.xlsx" }).waitFor();
  });

  it("keeps Save from saving where the cell's rule does not take it", async () => {
    await bench.goTo("Site!B3");
    await bench.page.keyboard.type("ells");
    let saved = false;
    bench.page.once("download", () => (saved = true));
    await bench.page.click("#save");
    await bench.page.locator(".notice", { hasText: "Site!B3 does not accept what you typed" }).waitFor();
    expect(saved).toBe(false);
  });
});
