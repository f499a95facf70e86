import { readFileSync } from "node:fs";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { BenchPage } from "./benchPage";
import { describeInBrowser, SITE_FOLDER, startSite, type Site } from "./browser";
import { answerCell } from "../../src/workbook/yoursName";

const DEMO = path.join(SITE_FOLDER, "templates/rillwright-us-demo.xlsx");

/** What a person types as it is said, in the demo's own cells. */
describeInBrowser("typing on the bench", () => {
  let site: Site | undefined;
  let bench: BenchPage;
  let demo: Recalculated;
  beforeAll(async () => {
    demo = await recalculate(readFileSync(DEMO));
    site = await startSite();
    const { page } = await site.open();
    bench = new BenchPage(page, site.address);
    await bench.open();
  });
  afterAll(() => site?.close());

  const place = (name: string): string => answerCell(name, demo.names)?.split(":")[0] ?? "";
  const value = async (name: string): Promise<unknown> => (await recalculate(await bench.save())).named(name)?.[0]?.[0];
  const dialog = () => bench.page.getByRole("dialog").last();

  it("takes what a tape says in the cell's own unit", async () => {
    await bench.goTo(place("Run"));
    await bench.type("9'4");
    // 9 ft 4 in = 9 + 4/12 ft.
    await expect.poll(() => value("Run")).toBeCloseTo(9 + 4 / 12, 9);
    await bench.goTo(place("BedWidth"));
    await bench.type("38 in");
    await expect.poll(() => value("BedWidth")).toBeCloseTo(38 / 12, 9);
    // A formula of the person's own.
    await bench.goTo(place("Run"));
    await bench.type("=2*5.5");
    await expect.poll(() => value("Run")).toBe(11);
  });

  it("takes 8, 8% and 0.08 for eight percent", async () => {
    for (const text of ["8", "8%", "0.08"]) {
      await bench.goTo(place("TaxRate"));
      await bench.type(text);
      await expect.poll(() => value("TaxRate"), { message: text }).toBeCloseTo(0.08, 12);
    }
  });

  it("refuses with what was typed, what is right, and an example in the cell's own kind", async () => {
    for (const [name, text, sentence] of [
      [
        "LipTable",
        "1200",
        `"1200" is not taken here; this cell takes 1 to 480 in, written like 6 1/2", 6.5 in or 16.5 cm.`,
      ],
      ["LipTable", "about nine", "is not understood"],
      ["Markups", "2000", "0% to 1000%, written like 8, 8% or 0.08"],
    ] as const) {
      const before = await value(name);
      await bench.goTo(place(name));
      await bench.type(text);
      await dialog().getByText(sentence).waitFor();
      await dialog().getByRole("button").last().click();
      await bench.page.keyboard.press("Escape");
      expect(await value(name), text).toBe(before);
    }
  });

  it("takes what a fact's own cell cannot use, and says in its row what would be right", async () => {
    for (const [name, text, used] of [
      ["Run", "1200", "#N/A"],
      ["Run", "about nine", "#VALUE!"],
      ["TaxRate", "95", "#N/A"],
    ] as const) {
      await bench.goTo(place(name));
      await bench.type(text);
      await expect.poll(() => value(name), { message: text }).toBe(used);
      const saved = await recalculate(await bench.save());
      expect(saved.named("FactsWrong"), text).toEqual([[1]]);
      await bench.goTo(place(name));
      await bench.type(String(demo.named(`${name}Yours`)?.[0]?.[0] ?? '=""'));
    }
  });

  it("hands a text in a formula to the function as it stands", async () => {
    await bench.goTo(place("Run"));
    await bench.type(`=RILL.QTY("9'4","ft")`);
    await expect.poll(() => value("Run")).toBeCloseTo(9 + 4 / 12, 9);
    const { formulas } = await recalculate(await bench.save());
    expect(formulas.get(place("Run"))).toBe(`RILL.QTY("9'4","ft")`);
  });

  it("says in its cells and above the sheet that formulas go in a circle, until they do no more", async () => {
    await bench.goTo(place("Run"));
    await bench.type("=BedWidth");
    await bench.goTo(place("BedWidth"));
    await bench.type("=Run");
    const notice = bench.page.locator(".notice", { hasText: "A circle of formulas" });
    await notice.getByText(`${place("Run")}`).waitFor();
    await bench.goTo(place("Run"));
    await bench.page.locator("#why", { hasText: place("BedWidth") }).waitFor();
    await bench.goTo(place("BedWidth"));
    await bench.type("3");
    await notice.waitFor({ state: "detached" });
    await expect.poll(() => value("Run")).toBe(3);
  });
});
