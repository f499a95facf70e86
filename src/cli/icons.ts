import { readFileSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { installedBrowser } from "./browser";

const folder = path.join(import.meta.dirname, "../../manifest/icons");

/** Which drawing serves which file; small sizes have their own drawing on whole pixels. */
const ICONS: readonly (readonly [drawing: string, file: string, pixels: number])[] = [
  ["on16", "icon-16", 16],
  ["on20", "icon-20", 20],
  ["on24", "icon-24", 24],
  ["on16", "icon-32", 32],
  ["on20", "icon-40", 40],
  ["on24", "icon-48", 48],
  ["large", "icon-64", 64],
  ["large", "icon-80", 80],
  ["large", "icon-128", 128],
  ["color", "color", 192],
  ["outline", "outline", 32],
];

/** Draws every PNG of the manifests from its SVG, with the browser of this machine. */
async function main(): Promise<void> {
  const executablePath = installedBrowser();
  if (!executablePath) throw new Error("no Chromium, Chrome or Edge is installed; the icons need one");
  const browser = await chromium.launch({ executablePath });
  for (const [drawing, file, size] of ICONS) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const svg = readFileSync(path.join(folder, `${drawing}.svg`), "utf8");
    await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
    await page.screenshot({ path: path.join(folder, `${file}.png`), omitBackground: true });
    await page.close();
  }
  await browser.close();
  console.log(`${ICONS.length} icons drawn`);
}

await main();
