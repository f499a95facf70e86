import { beforeAll, describe, expect, it } from "vitest";
import { evaluate } from "../../../src/job/evaluate";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import type { SomeFacts } from "../../../src/workbook/jobCells/typeJob";
import type { OpenedWorkbook } from "../../../src/workbook/recalculate";
import { demoOf, typedCells } from "../../job/agreement/workbooks";

const INCH = 0.0254;
const FOOT = 0.3048;

let workbook: OpenedWorkbook;
beforeAll(async () => {
  workbook = await demoOf("US");
});

/** What each line costs in the workbook and by the job's functions, which must be the same. */
function costs(
  facts: SomeFacts,
  packs: ReadonlyMap<string, number> = new Map(),
  renamed: ReadonlyMap<string, string> = new Map(),
): (codes: RegExp) => number {
  const calculated = workbook.recalculate(
    new Map([
      ...typedCells(workbook, { system: "US", facts }, "all"),
      ...listCells("RatePacks", packs),
      ...listCells("RateCodes", renamed),
    ]),
  );
  const state = evaluate(readJob(calculated).used);
  const column = (name: string) => (calculated.named(name) ?? []).map(([cell]) => cell ?? "");
  const [codes, amounts] = [column("TakeoffCodes"), column("TakeoffCosts")];
  state.takeoff.designLines.forEach(({ code, cost }, index) => {
    expect([codes[index], amounts[index]]).toEqual([code, cost ?? ""]);
  });
  return (wanted) =>
    Math.round(
      100 * codes.reduce<number>((sum, code, at) => sum + (wanted.test(String(code)) ? Number(amounts[at]) : 0), 0),
    ) / 100;
}

/** What is typed into a column of the price list, by the codes of its products. */
function listCells<T>(name: string, typed: ReadonlyMap<string, T>): [string, T][] {
  const [, sheet = "", column = "", top = ""] = /^(.*!)\$?([A-Z]+)\$?(\d+)/.exec(workbook.names.get(name) ?? "") ?? [];
  const codes = (workbook.recalculate().named("RateCodes") ?? []).map(([code]) => code);
  return [...typed].map(([code, value]) => [`${sheet}${column}${Number(top) + codes.indexOf(code)}`, value]);
}

/** The demo's route, 4 ft and 31 ft with its fittings, in another size. */
const route = (inches: number): SomeFacts => ({
  route: [
    {
      size: inches * INCH,
      length: 4 * FOOT,
      elbows: 1,
      ballValves: 1,
      checkValves: 1,
      unions: 1,
      intakes: 1,
      otherK: 0.2,
    },
    { size: inches * INCH, length: 31 * FOOT, sweeps: 2, halfElbows: 2 },
  ],
});

describe("the price follows the size", () => {
  it("of pipe and fittings: worked by hand in 2 in and in 4 in", () => {
    // 4 ft and 31 ft, 5 % more, in lengths of 10 ft: 10 ft and 40 ft.
    // 2 in: 50 ft × 2.45 = 122.50; 90 elbow 2.60, 2 sweeps × 5.70, 2 × 45 elbow × 3.20, ball 23, check 29, union 6.40.
    expect(costs(route(2))(/^(PIPE|FIT)-/)).toBe(122.5 + 2.6 + 11.4 + 6.4 + 23 + 29 + 6.4);
    // 4 in: 50 ft × 5.90 = 295.00; 16.50, 2 × 21.00, 2 × 14.50, 118, 132, 26.
    expect(costs(route(4))(/^(PIPE|FIT)-/)).toBe(295 + 16.5 + 42 + 29 + 118 + 132 + 26);
  });

  it("of fittings in several sizes, each by its own", () => {
    // A union on 2 in at 6.40 and two on 3 in at 11.90: 30.20; three at their mean of 10.0667.
    const mixed: SomeFacts = {
      route: [
        { size: 2 * INCH, length: FOOT, unions: 1 },
        { size: 3 * INCH, length: FOOT, unions: 2 },
      ],
    };
    expect(costs(mixed)(/^FIT-UNION/)).toBe(30.2);
  });

  it("of fittings that a book names with the pipe they fit, and of no other pipe's", () => {
    const one = { route: [{ size: 2 * INCH, length: FOOT, unions: 1 }] };
    const named = (type: string) => costs(one, undefined, new Map([["FIT-UNION 2", `FIT-UNION 2 ${type}`]]));
    // The same union at 6.40; on Sch 40 the one for Sch 80 has no place.
    expect([named("Sch 40 PVC")(/^FIT-UNION/), named("Sch 80 PVC")(/^FIT-UNION/)]).toEqual([6.4, 0]);
  });

  it("of fittings in several sizes, each in packs of its own", () => {
    // Unions: 4 on 2 in by boxes of 3 are 6 × 6.40, 5 on 3 in by bags of 4 are 8 × 11.90, 2 on 4 in one by one, 2 × 26.00:
    // 38.40 + 95.20 + 52.00 = 185.60. Eleven in the larger pack would be 12.
    const packs = new Map([
      ["FIT-UNION 2", 3],
      ["FIT-UNION 3", 4],
    ]);
    const unions = ([2, 3, 4] as const).map((size, row) => ({
      size: size * INCH,
      length: FOOT,
      unions: [4, 5, 2][row],
    }));
    expect(costs({ route: unions }, packs)(/^FIT-UNION/)).toBe(185.6);
  });

  it("of the basin: a tub in place of modules", () => {
    // 18 modules of 24 × 18 × 9 in at 46.50.
    expect(costs({})(/^(MODULE|TUB)$/)).toBe(837);
    // A tub of 4 × 3 × 1.5 ft that holds 95 of the 134.65 gal of its box: 312.00.
    const tub: SomeFacts = {
      basinParts: [{ kind: "tub", length: 4 * FOOT, width: 3 * FOOT, depth: 1.5 * FOOT, voids: 95 / 134.65 }],
    };
    expect(costs(tub)(/^(MODULE|TUB)$/)).toBe(312);
  });

  it("of a tub that is the basin: no liner below it, and no stone around it", () => {
    // 5.5 × 4.5 × 2 ft; the stream's liner as it is when the basin's piece is taken out by hand.
    const [length, width, depth] = [5.5 * FOOT, 4.5 * FOOT, 2 * FOOT];
    const pit = { basinLength: length, basinWidth: width, basinWaterDepth: depth };
    const tub: SomeFacts = { ...pit, basinParts: [{ kind: "tub", length, width, depth }] };
    const bought = (facts: SomeFacts) => {
      const of = costs(facts);
      return [of(/^LINER$/), of(/^FABRIC$/), of(/^BASINSTONE$/)];
    };
    const byHand = { ...tub, pieces: [{}, { length: null, width: null, count: null }] };
    expect(bought(tub)).toEqual(bought(byHand));
    expect(bought(tub)[2]).toBe(0);
    // A pit of a foot more all round is lined, and stone fills it.
    const wider = bought({ ...tub, basinLength: length + FOOT, basinWidth: width + FOOT });
    expect(wider[0]).toBeGreaterThan(bought(tub)[0] ?? NaN);
    expect(wider[2]).toBeGreaterThan(0);
  });

  it("of lip stones, spillway box and gravel", () => {
    const lip = (length: number, width: number, height: number): SomeFacts => ({
      lipStoneLength: length * INCH,
      lipStoneWidth: width * INCH,
      lipStoneHeight: height * INCH,
    });
    // The demo's four drops: 4 × 84 and 4 × 295.
    expect(costs(lip(32, 20, 5))(/^LIPSTONE$/)).toBe(336);
    expect(costs(lip(48, 30, 9))(/^LIPSTONE$/)).toBe(1180);
    expect(costs({ boxWidth: 48 * INCH })(/^SPILLBOX$/)).toBe(455);
    // 1.5 ton of washed gravel at 57.50 and of river stone, which weighs as much within half a pack, at 71.00.
    expect([costs({})(/^GRAVEL$/), costs({ gravel: "river stone" })(/^GRAVEL$/)]).toEqual([86.25, 106.5]);
  });

  it("and a size that is not sold has no price, nor has the job", () => {
    const calculated = workbook.recalculate(typedCells(workbook, { system: "US", facts: route(3.5) }, "all"));
    const said = (name: string) => String(calculated.named(name)?.[0]?.[0]);
    expect(said("PriceStanding")).toBe("not complete: pipe, fittings");
    const missing = (calculated.named("AskMissing") ?? []).map(([code]) => code).filter(Boolean);
    expect(missing.slice(0, 3)).toEqual(["PIPE 3.5 Sch 40 PVC", "PIPE 3.5 Sch 40 PVC", "FIT-EL90 3.5 Sch 40 PVC"]);
  });
});
