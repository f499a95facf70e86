import { afterAll, beforeAll, expect, it } from "vitest";
import type { CDPSession, Page } from "playwright-core";
import { TOO_MUCH } from "../bench/tooMuchFiles";
import { BenchPage } from "./benchPage";
import { describeInBrowser, startSite, type Site } from "./browser";

/** Of the page's own work, whatever else the machine does. */
const MOST_MS = 3000;

describeInBrowser("files that ask for too much, opened in the bench", () => {
  let site: Site;
  let page: Page;
  let bench: BenchPage;
  let inspector: CDPSession;

  beforeAll(async () => {
    site = await startSite();
    const opened = await site.open();
    ({ page } = opened);
    inspector = await opened.context.newCDPSession(page);
    await inspector.send("Performance.enable", { timeDomain: "threadTicks" });
    bench = new BenchPage(page, site.address);
    await bench.open();
  });
  afterAll(() => site?.close());

  const workedMs = async (): Promise<number> => {
    const { metrics } = await inspector.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? NaN);
  };

  it.each(TOO_MUCH)("are refused in a sentence, soon, and leave the job as it was: %s", async (_, bytes, sentence) => {
    const file = await bytes();
    const before = await workedMs();
    await bench.openFile("much.xlsx", file);
    const notice = page.locator(".notice", { hasText: "much.xlsx" }).last();
    await notice.waitFor({ timeout: 30_000 });
    const worked = (await workedMs()) - before;
    expect(await notice.innerText()).toContain(sentence);
    expect(worked, `${Math.round(worked)} ms`).toBeLessThan(MOST_MS);
    expect(await page.locator("#file-name").innerText()).toBe("rillwright-us-demo.xlsx");
    await notice.getByRole("button", { name: "Close" }).click();
  });
});
