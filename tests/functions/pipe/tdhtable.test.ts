import { describe, expect, it } from "vitest";
import { TDH } from "../../../src/functions/pipe/tdh";
import { TDHTABLE } from "../../../src/functions/pipe/tdhtable";

const table = (...args: unknown[]): unknown[][] => TDHTABLE.evaluate(args) as unknown[][];

describe("RILL.TDHTABLE", () => {
  it("adds up to its last row, and shares to 1", () => {
    const rows = table(2400, 6, [
      [1.5, 10, "Sch 40 PVC", 2],
      [2, 90, "Sch 40 PVC", 3],
    ]).slice(1);
    const parts = rows.slice(0, -1);
    const sum = (column: number): number => parts.reduce((total, row) => total + (row[column] as number), 0);
    expect(sum(1)).toBeCloseTo(rows.at(-1)?.[1] as number, 9);
    expect(sum(2)).toBeCloseTo(1, 9);
  });

  it("gives for one pipe what TDH gives", () => {
    const rows = table(2400, 6, [[2, 100, "", 0]]);
    expect(rows.at(-1)?.[1]).toBeCloseTo(TDH.evaluate([2400, 6, 2, 100]) as number, 12);
  });

  it("skips blank rows, and reads 1 1/2 and metric sizes as typed", () => {
    const rows = table(2400, 6, [
      ["1 1/2", 10, null, null],
      [null, null, null, null],
      ["63 mm", 10, "PVC-U PN10", null],
    ]);
    expect(rows.map((row) => row[0])).toContain("Friction in 1 1/2 in Sch 40 PVC");
    expect(rows.map((row) => row[0])).toContain("Friction in 63 mm PVC-U PN10");
  });

  it("remarks on a pipe too fast, and on a method that does not fit", () => {
    // 80 gpm in 2 in: 0.4085 × 80 / 2.067² = 7.6 ft/s; 1 gpm in 4 in: Re near 800
    expect(table(4800, 6, [[2, 10, null, null]])[2]?.[4]).toBe("fast: over 5 ft/s (1.5 m/s)");
    expect(table(60, 6, [[4, 10, null, null]])[2]?.[4]).toMatch(/^not turbulent/);
    expect(table(60, 6, [[4, 10, null, null]], "Darcy-Weisbach")[2]?.[4]).toBe("");
  });

  it("names a size that does not exist, with those that do", () => {
    expect(() => table(2400, 6, [[2.1, 100, "Sch 40 PVC", 0]])).toThrow(/route row 1: size 2\.1 in does not exist/);
  });
});
