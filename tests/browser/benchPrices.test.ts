import { readFileSync } from "node:fs";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { ALL } from "../effort";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");
const PRICE = 987.65;
const TEXT = '=HYPERLINK("http://x")';

describeInBrowser("a price list on the bench", () => {
  let site: Site;
  beforeAll(async () => {
    site = await startSite();
  });
  afterAll(() => site?.close());

  it.runIf(ALL)(
    "is applied as it was shown, and taken back by one undo",
    async () => {
      const { context, page, faults } = await site.open();
      const bench = new BenchPage(page, site.address);
      await bench.open();
      await bench.takeFile("job.xlsx", readFileSync(DEMO));
      await bench.ready();
      const before = await recalculate(readFileSync(DEMO));
      const code = String(before.named("RateCodes")?.[0]?.[0]);
      const rowOf = (job: Recalculated, wanted: string): number =>
        (job.named("RateCodes") ?? []).findIndex(([cell]) => cell === wanted);

      await bench.showTab("Lists");
      const file = `Code,Description,Cost,Pack\r\n${code},,${PRICE},\r\nNEW-1,"'${TEXT.replace(/"/g, '""')}",6.5,4\r\n`;
      await page.setInputFiles("#price-file", { name: "s.csv", mimeType: "text/csv", buffer: Buffer.from(file) });
      await page.getByText("1 item changes, 1 new").waitFor();
      await page.getByRole("button", { name: "Apply the marked prices" }).click();
      await page.getByText("6 cells of the price list were changed.").waitFor({ timeout: 60_000 });

      const taken = await recalculate(await bench.save());
      const [known, added] = [rowOf(taken, code), rowOf(taken, "NEW-1")];
      expect(taken.named("RateCosts")?.[known]?.[0]).toBe(PRICE);
      // What the file leaves blank stays as it was.
      for (const name of ["RateDescriptions", "RatePacks"])
        expect(taken.named(name)?.[known]?.[0]).toEqual(before.named(name)?.[known]?.[0]);
      expect([taken.named("RateCosts")?.[added]?.[0], taken.named("RatePacks")?.[added]?.[0]]).toEqual([6.5, 4]);
      // A text from elsewhere that looks like a formula is still a text.
      expect(taken.named("RateDescriptions")?.[added]?.[0]).toBe(`'${TEXT}`);

      await page.click("#undo");
      let back = taken;
      await expect
        .poll(async () => rowOf((back = await recalculate(await bench.save())), "NEW-1"), { timeout: 60_000 })
        .toBe(-1);
      expect(back.named("RateCosts")).toEqual(before.named("RateCosts"));
      expect(faults).toEqual([]);
      await context.close();
    },
    240_000,
  );
});
