import { afterAll, beforeAll, expect, it } from "vitest";
import { readXlsx, writeXlsx } from "hucre/xlsx";
import { BenchPage } from "./benchPage";
import { describeInBrowser, startSite, type Site } from "./browser";

describeInBrowser("lists of choices in the bench", () => {
  let site: Site;
  let bench: BenchPage;

  beforeAll(async () => {
    site = await startSite();
    const { page } = await site.open();
    bench = new BenchPage(page, site.address);
    await bench.open();
    const list = (range: string) => ({ type: "list" as const, range, values: ["gravel", "boulders"] });
    const bytes = await writeXlsx({
      sheets: [
        {
          name: "One",
          rows: [["stone"]],
          // B1 to D1 as one, and B2 alone.
          merges: [{ startRow: 0, endRow: 0, startCol: 1, endCol: 3 }],
          dataValidations: [list("B1"), list("B2")],
        },
      ],
    });
    await bench.takeFile("own.xlsx", bytes);
  });
  afterAll(() => site?.close());

  /** The middle of the arrow that the canvas shows at the right end of a cell, by the library's usual sizes. */
  const arrow = async (row: number, column: number): Promise<[x: number, y: number]> => {
    const boxes = await Promise.all((await bench.page.locator("#sheet canvas").all()).map((one) => one.boundingBox()));
    const sheet = boxes.find((box) => box !== null && box.height > 200);
    if (!sheet) throw new Error("the sheet is not in sight");
    const [head, width, height] = [{ across: 46, down: 20 }, 64, 20];
    return [sheet.x + head.across + width * column - 9, sheet.y + head.down + height * (row - 0.5)];
  };

  it.each([
    ["a cell", 2, 2],
    ["a cell merged from several", 1, 4],
  ])("open by one click on the arrow of %s, and put in what is picked", async (_, row, last) => {
    await bench.goTo("One!A9");
    await bench.page.mouse.click(...(await arrow(row, last)));
    await bench.page.getByText("boulders", { exact: true }).click();
    const picked = async () => (await readXlsx(await bench.save())).sheets[0]?.rows[row - 1]?.[1];
    await expect.poll(picked).toBe("boulders");
    // What was said about saving stands above the sheet and moves it down.
    await bench.page.locator(".notice").getByRole("button", { name: "Close" }).click();
  });
});
