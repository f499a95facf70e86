import { expect, it } from "vitest";
import { placeOf, tablePlaces } from "../../../src/workbook/jobCells/places";
import { FACTS } from "../../../src/job/facts";
import { TASKS } from "../../../src/workbook/sheets/labor/tasks";
import { demoOf, calculateBoth } from "../../job/agreement/workbooks";

/*
 * The demo's steps: pipe up to 3 in takes its rate's hours once, up to 4 in 1.25 times; lip stones up to 350 lb once, up to
 * 4,000 lb 3.6 times. Its route is 4 ft of 2 1/2 in and 31 ft of 3 in, at 0.11 h a foot; 4 lip stones at 1.4 h; the site
 * is 1.15 times as hard as a plain one.
 */
const FOOT = 0.3048;

it("takes a tub's hours by what it holds, and a machine for the large ones", async () => {
  const book = await demoOf("US");
  const tubs = (...volumes: readonly number[]) => {
    // A box of 4 x 4 x 2 ft is 239.38 gal (32 x 1728 / 231); a tub in it holds its share of that.
    const box = { kind: "tub", length: 4 * FOOT, width: 4 * FOOT, depth: 2 * FOOT } as const;
    const basinParts = volumes.map((volume) => ({ ...box, voids: (volume * 231) / (32 * 1728) }));
    const facts = { basinParts, basinLength: 30 * FOOT, basinWidth: 30 * FOOT };
    const { workbook, state } = calculateBoth(book, { system: "US", facts }, "all");
    const row = workbook.named("LaborTable")?.find(([task]) => String(task).startsWith("Tubs"));
    const [hours, machineHours] = [row?.[6], row?.[7]];
    // The job's own functions come to the same.
    const { tasks } = state.labor;
    expect([tasks[6]?.hours ?? "", tasks[6]?.machineHours ?? ""].map(String)).toEqual(
      [hours, machineHours].map(String),
    );
    return { hours, machineHours, standing: String(workbook.named("PriceStanding")?.[0]?.[0]) };
  };
  expect(tubs()).toMatchObject({ hours: 0, machineHours: 0 });
  // Up to 100 gal 0.6 times 3.2 h, carried; up to 300 gal once, with 0.6 machine hours; the site is 1.15 times as hard.
  expect(tubs(95).hours).toBeCloseTo(3.2 * 0.6 * 1.15, 9);
  expect(tubs(95).machineHours).toBe(0);
  expect(tubs(230).hours).toBeCloseTo(3.2 * 1.15, 9);
  expect(tubs(230).machineHours).toBeCloseTo(0.6 * 1.15, 9);
  // Both: 0.6 + 1 times the hours, and once the machine's.
  expect(tubs(95, 230).hours).toBeCloseTo(3.2 * 1.6 * 1.15, 9);
  expect(tubs(95, 230).machineHours).toBeCloseTo(0.6 * 1.15, 9);
});

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
  // No pipe at all has no mean to take, and counts as the usual size.
  const length = tablePlaces(FACTS.route, book.names).find(({ key }) => key === "length");
  const none = new Map([0, 1].map((row) => [length?.cell(row) ?? "", ""] as const));
  expect(book.recalculate(none).named("PipeSizeTimes")).toEqual([[1]]);
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

it("takes the hours of boulders by the weight of one, each size for its share", async () => {
  const book = await demoOf("US");
  const times = (...sizes: readonly (readonly [inches: number, share: number])[]) => {
    const boulderSizes = sizes.map(([inches, share]) => ({ size: (inches * FOOT) / 12, share }));
    const { workbook, state } = calculateBoth(book, { system: "US", facts: { boulderSizes } }, "all");
    const row = workbook.named("LaborTable")?.find(([task]) => String(task).startsWith("Boulders"));
    const [quantity, hours] = [row?.[1], row?.[6]];
    const same = state.labor.tasks[10]?.hours;
    if (typeof hours === "number") expect(same).toBeCloseTo(hours, 9);
    else expect([same, hours]).toEqual([undefined, ""]);
    // 1.9 h a ton, on a site 1.15 times as hard.
    return typeof hours === "number" ? hours / (Number(quantity) * 1.9 * 1.15) : hours;
  };
  // Granite of 165.43 lb/ft³: at half its cube to all of it, 13 in is 105 to 210 lb, 30 in 1,290 to 2,585 lb, 60 in over
  // 10,000 lb. The steps: up to 300 lb once, up to 5,000 lb at least 1.3 times, nothing beyond.
  expect(times([13, 1])).toBeCloseTo(1, 9);
  const large = times([30, 1]);
  expect([1.3, 1.6]).toContain(Number(Number(large).toFixed(9)));
  expect(times([13, 0.25], [30, 0.75])).toBeCloseTo(0.25 + 0.75 * Number(large), 9);
  expect(times([60, 1])).toBe("");
});

it("has a task for every line of the takeoff", async () => {
  const book = await demoOf("US");
  // What a hauler brings or takes, and freight, is priced by the load.
  const apart = /^(FREIGHT|)$/;
  const codes = (book.recalculate().named("TakeoffCodes") ?? []).map(([code]) => String(code ?? ""));
  const own = codes.slice(0, codes.indexOf("FREIGHT") + 1);
  expect(own.length).toBeGreaterThan(25);
  const without = own.filter((code) => !apart.test(code) && !TASKS.some(({ places }) => places?.test(code)));
  expect(without).toEqual([]);
});
