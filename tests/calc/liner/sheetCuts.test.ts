import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fabricCut } from "../../../src/calc/liner/fabric";
import { fallCut, type SteppedFall } from "../../../src/calc/liner/fall";
import { linerCut } from "../../../src/calc/liner/liner";
import { roundUpTo } from "../../../src/calc/liner/roundUp";
import { Problem } from "../../../src/calc/problem";

const side = fc.double({ min: 0.1, max: 60, noNaN: true });
const pit = { length: 3, width: 2, depth: 1, overlap: 0.3, sideSlope: 0, roundTo: 0.1 };
const fall: SteppedFall = {
  drops: [0.2, 0.3],
  treads: [0.5, 0.6],
  bedWidth: 1,
  bankHeight: 0.3,
  overlap: 0.3,
  slackPerDrop: 0.1,
  roundTo: 0,
};

describe("rounding up", () => {
  it.each([
    // By hand: 1.3 is 13 steps of 0.1 although 1.3 / 0.1 is 13.000000000000002 in binary.
    [1.3, 0.1, 1.3],
    [1.31, 0.1, 1.4],
    [17, 0.5, 17],
    [17.01, 0.5, 17.5],
    [2.345, 0, 2.345],
  ])("%d to a multiple of %d is %d", (value, step, expected) =>
    expect(roundUpTo(value, step)).toBeCloseTo(expected, 12),
  );
});

describe("liner of a pit", () => {
  it("is never shorter than what it lines, and at most a step longer", () => {
    fc.assert(
      fc.property(
        side,
        side,
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (length, width, depth, sideSlope) => {
          const exact = linerCut({ ...pit, length, width, depth, sideSlope, roundTo: 0 });
          const cut = linerCut({ ...pit, length, width, depth, sideSlope });
          for (const way of ["length", "width"] as const) {
            expect(cut[way]).toBeGreaterThan(exact[way] - 1e-9);
            expect(cut[way]).toBeLessThan(exact[way] + 0.1 + 1e-9);
          }
        },
      ),
    );
  });

  it("grows with depth, slope and overlap", () => {
    const base = linerCut({ ...pit, roundTo: 0 }).length;
    for (const more of [{ depth: 1.1 }, { sideSlope: 0.5 }, { overlap: 0.4 }]) {
      expect(linerCut({ ...pit, roundTo: 0, ...more }).length).toBeGreaterThan(base);
    }
  });

  it.each([
    [{ length: 0 }, "length must be"],
    [{ width: -1 }, "width must be"],
    [{ depth: -0.1 }, "depth must be"],
    [{ overlap: 11 }, "overlap must be"],
    [{ sideSlope: Number.NaN }, "side slope must be"],
  ])("refuses %o", (wrong, sentence) => {
    expect(() => linerCut({ ...pit, ...wrong })).toThrow(sentence);
    expect(() => linerCut({ ...pit, ...wrong })).toThrow(Problem);
  });
});

describe("liner of a stepped fall", () => {
  it("adds up along and across", () => {
    // By hand: 0.2 + 0.3 + 0.5 + 0.6 + 2 × 0.1 + 2 × 0.3 = 2.4; 1 + 2 × 0.3 + 2 × 0.3 = 2.2
    expect(fallCut(fall).length).toBeCloseTo(2.4, 12);
    expect(fallCut(fall).width).toBeCloseTo(2.2, 12);
  });

  it("is longer than the straight slope", () => {
    const steps = fc.array(fc.double({ min: 0.05, max: 2, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(steps, (drops) => {
        const treads = drops.map((d) => d * 2);
        const rise = drops.reduce((a, b) => a + b, 0);
        const run = treads.reduce((a, b) => a + b, 0);
        expect(fallCut({ ...fall, drops, treads, slackPerDrop: 0, overlap: 0 }).length).toBeGreaterThan(
          Math.hypot(rise, run),
        );
      }),
    );
  });

  it.each([
    [{ drops: [] }, "drops is needed"],
    [{ treads: [1, 1, 1, 1] }, "treads must be as many as the drops"],
    [{ drops: [0.2, -0.3] }, "drops 2 must be"],
    [{ bankHeight: -1 }, "bank height must be"],
  ])("refuses %o", (wrong, sentence) => expect(() => fallCut({ ...fall, ...wrong })).toThrow(sentence));
});

describe("fabric", () => {
  it("runs the way that takes less off the roll", () => {
    // By hand: 5 × 2 m, roll 2 m: along one strip of 5 m = 5; across (5 − 0.3)/1.7 = 2.8, three of 2 m = 6.
    expect(fabricCut(5, 2, 2, 0.3, 1)).toEqual({ run: "along", strips: 1, stripLength: 5, totalLength: 5, area: 10 });
    // Turned about, the same strip runs across.
    expect(fabricCut(2, 5, 2, 0.3, 1).run).toBe("across");
  });

  it("covers the area with its laps, and one strip fewer would not", () => {
    fc.assert(
      fc.property(
        side,
        side,
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.integer({ min: 1, max: 4 }),
        (length, width, roll, layers) => {
          const lap = 0.3;
          const cut = fabricCut(length, width, roll, lap, layers);
          const covered = cut.run === "along" ? width : length;
          const reach = (strips: number): number => strips * (roll - lap) + lap;
          const perLayer = cut.strips / layers;
          expect(Number.isInteger(perLayer)).toBe(true);
          expect(reach(perLayer)).toBeGreaterThan(covered - 1e-6);
          if (perLayer > 1) expect(reach(perLayer - 1)).toBeLessThan(covered + 1e-6);
          expect(cut.area).toBeGreaterThan(layers * length * width * (1 - 1e-9));
          expect(cut.totalLength).toBeCloseTo(cut.strips * cut.stripLength, 9);
          // Length and width name the same area either way round.
          expect(fabricCut(width, length, roll, lap, layers).totalLength).toBeCloseTo(cut.totalLength, 9);
        },
      ),
    );
  });

  it.each([
    [[0, 2, 2, 0.3, 1], "length must be"],
    [[5, 2, 2, 2, 1], "lap must be less than the width of the roll"],
    [[5, 2, 2, 0.3, 1.5], "layers must be a whole number"],
    [[5, 2, 2, 0.3, 0], "layers must be 1 to 10"],
  ] as const)("refuses %o", ([length, width, roll, lap, layers], sentence) =>
    expect(() => fabricCut(length, width, roll, lap, layers)).toThrow(sentence),
  );
});
