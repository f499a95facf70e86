import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { chromium, type Locator, type Page } from "playwright-core";
import { serve } from "../site/serve";
import { installedBrowser } from "./browser";
import { papers } from "./papers";

const top = path.join(import.meta.dirname, "../..");
const target = path.join(top, "src/help/pictures");

/** The sheets that the guide shows. */
const SHEETS = ["Site", "Ground", "Pump", "Price", "Reconcile"];

/** Pictures of the README: the bench, and the first page of the demo's quote. */
const README_PICTURES = path.join(top, "manifest/pictures");

/** Takes the guide's and the README's pictures of the demo job from the built bench, with the browser of this machine. */
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
  await page.setViewportSize({ width: 1180, height: 700 });
  // A sheet that is filled in, and the drawing that follows from it.
  await sheetTab(page, "Site").click();
  await page.getByRole("tab", { name: "Drawings", exact: true }).click();
  await page.getByLabel("Drawing", { exact: true }).selectOption({ label: "Client's drawing" });
  await page.waitForTimeout(2500);
  mkdirSync(README_PICTURES, { recursive: true });
  await page.screenshot({ path: path.join(README_PICTURES, "bench.png") });
  await page.setViewportSize({ width: 920, height: 760 });
  await page.locator("#toggle-pane").click();
  for (const sheet of SHEETS) {
    await sheetTab(page, sheet).click();
    await page.locator("#selected-cell", { hasText: `${sheet}!` }).waitFor();
    // The spreadsheet paints on a canvas and says nothing when it is done.
    await page.waitForTimeout(1500);
    await page.locator("#sheet").screenshot({ path: path.join(target, `${sheet.toLowerCase()}.png`) });
  }
  await browser.close();
  await quotePicture();
  server.close();
  console.log(`${SHEETS.length + 2} pictures taken`);
}

function sheetTab(page: Page, sheet: string): Locator {
  return page.locator("[data-u-comp=slide-tab-item]", { hasText: new RegExp(`^${sheet}$`) }).first();
}

/** The quote's first page as a picture, by poppler's own command, which Debian has. */
async function quotePicture(): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
  const quote = path.join(folder, "quote.pdf");
  await papers([path.join(top, "templates/rillwright-us-demo.xlsx"), "--pack", "client", "--out", quote]);
  const picture = ["-r", "72", "-f", "1", "-l", "1", "-singlefile", "-png", quote, path.join(README_PICTURES, "quote")];
  if (spawnSync("pdftoppm", picture).status !== 0) console.log("No pdftoppm here: the quote's picture is the old one.");
}

await main();
