import { mkdirSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { serve } from "../site/serve";
import { installedBrowser } from "./browser";

const top = path.join(import.meta.dirname, "../..");
const target = path.join(top, "src/help/pictures");

/** The sheets that the guide shows. */
const SHEETS = ["Site", "Pump", "Price", "Reconcile"];

/** Takes the guide's pictures of the demo job from the built bench, with the browser of this machine. */
async function main(): Promise<void> {
  const executablePath = installedBrowser();
  if (!executablePath) throw new Error("no Chromium, Chrome or Edge is installed; the pictures need one");
  mkdirSync(target, { recursive: true });
  const { server, address } = await serve(path.join(top, "dist"), 0);
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  const page = await browser.newPage({ viewport: { width: 920, height: 760 }, colorScheme: "light" });
  await page.goto(`${address}/bench.html`);
  await page.locator("body[data-ready]").waitFor({ timeout: 60_000 });
  await page.getByRole("button", { name: "Close", exact: true }).click();
  await page.locator("#toggle-pane").click();
  for (const sheet of SHEETS) {
    await page
      .locator("[data-u-comp=slide-tab-item]", { hasText: new RegExp(`^${sheet}$`) })
      .first()
      .click();
    await page.locator("#selected-cell", { hasText: `${sheet}!` }).waitFor();
    // The spreadsheet paints on a canvas and says nothing when it is done.
    await page.waitForTimeout(1500);
    await page.locator("#sheet").screenshot({ path: path.join(target, `${sheet.toLowerCase()}.png`) });
  }
  await browser.close();
  server.close();
  console.log(`${SHEETS.length} pictures taken`);
}

await main();
