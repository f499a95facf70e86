import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from "playwright-core";
import { describe } from "vitest";
import { installedBrowser } from "../../src/cli/browser";
import { serve } from "../../src/site/serve";
import { BUILT } from "../built";

const QUIET = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const found = installedBrowser();
if (!found) {
  const missing = "NO BROWSER: the tests in tests/browser need Chromium, Chrome or Edge; RILLWRIGHT_BROWSER names one.";
  if (process.env.CI) throw new Error(missing);
  console.warn(`\n${missing} They are skipped.\n`);
}

/** Tests that a real browser runs; skipped, loudly, on a machine without one. */
export const describeInBrowser = describe.skipIf(!found);

/** The built site, served to a browser. Everything it asks for elsewhere is noted, and refused. */
export interface Site {
  readonly address: string;
  readonly browser: Browser;
  open(
    options?: BrowserContextOptions,
  ): Promise<{ context: BrowserContext; page: Page; foreign: string[]; faults: string[] }>;
  close(): Promise<void>;
}

/** The folder of the site under test. */
export const SITE_FOLDER = process.env.RILLWRIGHT_SITE ?? BUILT;

export async function startSite(): Promise<Site> {
  const { server, address } = await serve(SITE_FOLDER, 0);
  const browser = await chromium.launch({ executablePath: found, args: QUIET });
  return {
    address,
    browser,
    async open(options = {}) {
      const context = await browser.newContext({
        viewport: { width: 1280, height: 800 },
        acceptDownloads: true,
        ...options,
      });
      const foreign: string[] = [];
      const faults: string[] = [];
      await context.route(
        (url) => url.origin !== address,
        (route) => {
          foreign.push(route.request().url());
          return route.abort();
        },
      );
      const page = await context.newPage();
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("console", (message) => {
        if (message.type() === "error") faults.push(message.text());
      });
      return { context, page, foreign, faults };
    },
    async close() {
      await browser.close();
      server.close();
    },
  };
}
