import type { Page } from "playwright-core";

/** Holds back a file of the site, as a slow line would, until it is let go. */
export async function hold(page: Page, file: string): Promise<() => void> {
  let release = (): void => undefined;
  const held = new Promise<void>((resolve) => (release = resolve));
  await page.context().route(`**/${file}`, async (route) => {
    await held;
    await route.continue();
  });
  return release;
}
