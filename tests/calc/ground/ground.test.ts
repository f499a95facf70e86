import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutFill } from "../../../src/calc/ground/cutFill";
import { groundLine, type Shot } from "../../../src/calc/ground/groundLine";
import { overGround } from "../../../src/calc/ground/overGround";
import { shotFaults, type ShotRow } from "../../../src/calc/ground/shotFaults";

const shot = (station: number, level: number, offset = 0): Shot => ({ station, offset, level });
const row = (point: string, readings: Partial<ShotRow>): ShotRow => ({ point, ...readings });

describe("the ground along a line", () => {
  it("is straight between shots, level beyond them, whatever order they were taken in", () => {
    const { at, stations } = groundLine([shot(10, 9), shot(0, 10), shot(30, 12)]);
    expect(stations).toEqual([0, 10, 30]);
    // By hand: half way from 10 to 9; a quarter of the way from 9 to 12; as at the ends beyond them.
    expect([at(5), at(15), at(-4), at(99)].map(({ ground }) => ground)).toEqual([9.5, 9.75, 10, 12]);
  });

  it("rises to its sides by the slope that fits best", () => {
    // By hand: right 0.3 up at 2 m and 0.5 at 4 m: (2 × 0.3 + 4 × 0.5) / (4 + 16) = 0.13; left 0.2 down at 2 m: -0.1.
    const { at } = groundLine([shot(0, 10), shot(0, 10.3, 2), shot(0, 10.5, 4), shot(0, 9.8, -2), shot(9, 10)]);
    expect(at(0).riseRight).toBeCloseTo(0.13, 12);
    expect(at(0).riseLeft).toBeCloseTo(-0.1, 12);
  });

  it("lies between two shots that stand on either side of the line", () => {
    // By hand: 1 m left at 10, 3 m right at 12: a quarter of the way up from the left is 10.5.
    expect(groundLine([shot(0, 10, -1), shot(0, 12, 3), shot(5, 9)]).at(0).ground).toBeCloseTo(10.5, 12);
  });

  it("refuses one shot, and a station shot twice", () => {
    expect(() => groundLine([shot(0, 10)])).toThrow("two stations at least");
    expect(() => groundLine([shot(0, 10), shot(0, 11), shot(4, 9)])).toThrow("shot twice on the line, 10 and 11 m");
  });
});

describe("cut and fill over shots", () => {
  it("agree with slices a thousandth of the line long, on any ground", () => {
    const level = fc.double({ min: 8, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.array(level, { minLength: 3, maxLength: 6 }), (levels) => {
        const line = groundLine(levels.map((one, index) => shot(index * 3, one)));
        const end = (levels.length - 1) * 3;
        const rows = cutFill(
          overGround(
            [
              { station: 0, design: 11, width: 2 },
              { station: end, design: 9, width: 3 },
            ],
            line,
          ),
          { cut: 1, fill: 2 },
          "prismoidal",
        );
        const slices = { cut: 0, fill: 0 };
        const parts = 20_000;
        for (let part = 0; part < parts; part++) {
          const x = ((part + 0.5) / parts) * end;
          const [design, width] = [11 - (2 * x) / end, 2 + x / end];
          const depth = line.at(x).ground - design;
          const [which, slope] = depth > 0 ? (["cut", 1] as const) : (["fill", 2] as const);
          // Level across: width times depth, and two corners.
          slices[which] += ((width * Math.abs(depth) + slope * depth * depth) * end) / parts;
        }
        const { cut, fill } = rows.at(-1)?.soFar ?? { cut: NaN, fill: NaN };
        expect(Math.abs(cut - slices.cut), `cut ${cut}, by slices ${slices.cut}`).toBeLessThan(0.001);
        expect(Math.abs(fill - slices.fill), `fill ${fill}, by slices ${slices.fill}`).toBeLessThan(0.001);
      }),
      { numRuns: 25, seed: 20_261_128 },
    );
  });

  it("keep topsoil apart, and end in a slope", () => {
    // By hand: flat ground at 10, strip 0.1, fill to 11 over 10 m, 2 m wide, sides 2 to 1: 1.1 m high from the stripped ground.
    // Section 2 × 1.1 + 2 × 1.21 = 4.62 m², 46.2 m³; its end 1.21 × 2 + 4/3 × 1.331 = 4.19467; topsoil 0.1 × 6.4 × 10 = 6.4 m³.
    const line = groundLine([shot(0, 10), shot(10, 10)]);
    const surface = [0, 10].map((station) => ({ station, design: 11, width: 2 }));
    const rows = cutFill(overGround(surface, line), { cut: 1, fill: 2 }, "prismoidal", {
      topsoil: 0.1,
      firstEnd: "sloped",
    });
    expect(rows.at(-1)?.soFar.fill).toBeCloseTo(46.2 + 4.194667, 5);
    expect(rows.at(-1)?.topsoilSoFar).toBeCloseTo(6.4, 12);
  });
});

describe("rows of shots", () => {
  it.each<[string, ShotRow[], (string | undefined)[]]>([
    ["off the rod", [row("a", { backsight: 1 }), row("b", { intermediate: 7.8 })], [undefined, "rod"]],
    ["below its foot", [row("a", { backsight: -0.1 })], ["rod"]],
    ["with no backsight before", [row("a", { intermediate: 1 })], ["backsight"]],
    [
      "after the foresight that ended the set-up",
      [row("a", { backsight: 1 }), row("b", { foresight: 1 }), row("c", { intermediate: 1 })],
      [undefined, undefined, "order"],
    ],
    [
      "shot twice and going back",
      [0, 20, 20, 10].map((station, index) => row(`p${index}`, { station })),
      [undefined, undefined, "twice", "back"],
    ],
    [
      "with a laser that was moved: one backsight on a point named before",
      [row("A", { backsight: 1 }), row(" a", { backsight: 1.2 }), row("b", { intermediate: 1 })],
      [undefined, undefined, undefined],
    ],
  ])("are told when %s", (_, rows, faults) => {
    expect(shotFaults(rows).map((found) => found?.fault)).toEqual(faults);
  });
});
