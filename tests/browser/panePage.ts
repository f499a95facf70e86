import type { BrowserContextOptions, Page } from "playwright-core";
import { officeStub } from "./bundleStub";
import { startSite, type Site } from "./browser";

export const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
/** The width of the narrowest pane a host gives. */
export const NARROW = { width: 320, height: 700 };
export const TABS = ["Start", "Book", "Job", "Functions", "Drawings", "Lists", "Help"];

export type Opened = Awaited<ReturnType<Site["open"]>>;

/** The site with the pane's page, beside the fake host in place of office.js. */
export async function startPane(): Promise<Site & { openPane(options?: BrowserContextOptions): Promise<Opened> }> {
  const stub = await officeStub();
  const site = await startSite();
  return {
    ...site,
    async openPane(options = {}) {
      const opened = await site.open({ viewport: NARROW, ...options });
      await opened.context.route(OFFICE, (route) => {
        opened.foreign.push(OFFICE);
        return route.fulfill({ contentType: "text/javascript", body: stub });
      });
      await opened.page.goto(`${site.address}/taskpane.html`);
      await opened.page.getByRole("tab", { name: "Start" }).waitFor();
      return opened;
    },
  };
}

export const showTab = (page: Page, name: string) => page.getByRole("tab", { name, exact: true }).click();
/** The line at the foot, which says what was done. */
export const said = (page: Page) => page.locator(".foot [role=status]");
