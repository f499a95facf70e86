import axe from "axe-core";
import type { Page } from "playwright-core";

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds on a page, as "rule: element"; parts under `except` are left out. */
export async function faultsOf(page: Page, except: readonly string[] = []): Promise<string[]> {
  await page.evaluate(axe.source);
  const violations = await page.evaluate(
    async ({ values, exclude }) => {
      const results = await (globalThis as unknown as { axe: typeof axe }).axe.run(
        { exclude },
        { runOnly: { type: "tag", values } },
      );
      return results.violations.map(({ id, nodes }) => ({ id, nodes: nodes.map(({ html }) => html) }));
    },
    { values: TAGS, exclude: [...except] },
  );
  return violations.flatMap(({ id, nodes }) => nodes.map((html) => `${id}: ${html.slice(0, 160)}`));
}
