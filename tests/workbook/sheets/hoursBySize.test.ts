import { expect, it } from "vitest";
import { placeOf } from "../../../src/workbook/reckoning/places";
import { FACTS } from "../../../src/job/facts";
import { demoOf } from "../../job/agreement/workbooks";

/*
 * The demo's steps: pipe up to 3 in takes its rate's hours once, up to 4 in 1.25 times; lip stones up to 350 lb once, up to
 * 4,000 lb 3.6 times. Its route is 4 ft of 2 1/2 in and 31 ft of 3 in, at 0.11 h a foot; 4 lip stones at 1.4 h; the site
 * is 1.15 times as hard as a plain one.
 */
it("takes more hours for wider pipe and heavier lip stones, and none for a size beyond the last step", async () => {
  const book = await demoOf("US");
  const second = (book.names.get("RouteSizes") ?? "")
    .replace(/\$/g, "")
    .replace(/^(.*!)([A-Z]+)(\d+):.*$/, (_, s, c, r) => {
      return `${String(s)}${String(c)}${Number(r) + 1}`;
    });
  const lip = (key: "lipStoneLength" | "lipStoneWidth" | "lipStoneHeight"): string =>
    placeOf(FACTS[key], book.names).cell;
  const tried = (cells: readonly (readonly [string, number])[]) => {
    const done = book.recalculate(new Map(cells));
    const hours = (task: string): unknown =>
      done.named("LaborTable")?.find(([name]) => String(name).startsWith(task))?.[6];
    return { pipe: hours("Pipe"), lips: hours("Lip stones"), standing: done.named("PriceStanding")?.[0]?.[0] };
  };
  const plain = tried([]);
  // 35 ft × 0.11 h × 1.15, and 4 × 1.4 h × 1.15.
  expect(plain.pipe).toBeCloseTo(4.4275, 9);
  expect(plain.lips).toBeCloseTo(6.44, 9);
  // (4 × 1 + 31 × 1.25) / 35 = 1.2214 times that.
  expect(tried([[second, 4]]).pipe).toBeCloseTo(5.407875, 9);
  const beyond = tried([[second, 10]]);
  expect(beyond.pipe).toBe("");
  expect(beyond.standing).toContain("labor");
  // 60 × 48 × 12 in of granite, 165.43 lb/ft³, is 3,309 lb: 3.6 times.
  const heavy = [
    [lip("lipStoneLength"), 60],
    [lip("lipStoneWidth"), 48],
    [lip("lipStoneHeight"), 12],
  ] as const;
  expect(tried(heavy).lips).toBeCloseTo(23.184, 9);
});
