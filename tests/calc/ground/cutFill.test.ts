import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutFill, endAreaVolume, prismoidalVolume } from "../../../src/calc/ground/cutFill";
import { sectionArea, type Station } from "../../../src/calc/ground/section";

/** A level section, `depth` of cut (positive) or fill. */
function level(station: number, depth: number, width: number): Station {
  return { station, ground: 100 + depth, design: 100, width, riseLeft: 0, riseRight: 0 };
}

function totals(
  stations: readonly Station[],
  slope: number,
  method: "average end area" | "prismoidal",
): [number, number] {
  const { soFar } = cutFill(stations, { cut: slope, fill: slope }, method).at(-1) ?? { soFar: { cut: NaN, fill: NaN } };
  return [soFar.cut, soFar.fill];
}

describe("sections", () => {
  it("level: A = B d + s d²", () => {
    // By hand: 10 × 1.6 + 2 × 1.6² = 21.12 m².
    expect(sectionArea(level(0, 1.6, 10), { cut: 2, fill: 1 }).cut).toBeCloseTo(21.12, 12);
    expect(sectionArea(level(0, -1.6, 10), { cut: 1, fill: 2 }).fill).toBeCloseTo(21.12, 12);
  });

  it("on ground that falls across: A = (h + b/n)(W1 + W2)/2 - b²/n, W = S (b + n h)/(S ± n)", () => {
    // The closed form of the cross-fall section of surveying texts: half width b, sides n to 1, ground 1 in S.
    const [h, b, n, S] = [3, 5, 1.5, 8];
    const [near, far] = [(S * (b + n * h)) / (S + n), (S * (b + n * h)) / (S - n)];
    const area = ((h + b / n) * (near + far)) / 2 - (b * b) / n;
    const at = { station: 0, ground: 100 + h, design: 100, width: 2 * b, riseLeft: 1 / S, riseRight: -1 / S };
    expect(sectionArea(at, { cut: n, fill: n }).cut).toBeCloseTo(area, 9);
  });

  it("agrees with strips a thousandth wide, cut and fill apart, whatever the ground", () => {
    const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        metres(-2, 2),
        metres(0.2, 6),
        metres(-0.3, 0.3),
        metres(-0.3, 0.3),
        (depth, width, riseLeft, riseRight) => {
          const at = { station: 0, ground: 10 + depth, design: 10, width, riseLeft, riseRight };
          const exact = sectionArea(at, { cut: 1, fill: 2 });
          const strips = { cut: 0, fill: 0 };
          const step = 0.001;
          for (const rise of [riseLeft, riseRight]) {
            const edge = depth + (rise * width) / 2;
            for (let x = step / 2; x < 40; x += step) {
              const ground = depth + rise * x;
              const beyond = x - width / 2;
              const surface = beyond <= 0 ? 0 : edge > 0 ? beyond / 1 : -beyond / 2;
              const high = ground - surface;
              // Beyond the catch point nothing is moved.
              if (beyond > 0 && (edge > 0 ? high < 0 : high > 0)) break;
              strips[high > 0 ? "cut" : "fill"] += Math.abs(high) * step;
            }
          }
          expect(Math.abs(exact.cut - strips.cut), `cut ${exact.cut} here, ${strips.cut} by strips`).toBeLessThan(0.01);
          expect(Math.abs(exact.fill - strips.fill), `fill ${exact.fill} here, ${strips.fill} by strips`).toBeLessThan(
            0.01,
          );
        },
      ),
      { numRuns: 40 },
    );
  });

  it("says that sides never meet the ground where it is as steep", () => {
    const steep = { station: 0, ground: 101, design: 100, width: 2, riseLeft: 1, riseRight: 0 };
    expect(() => sectionArea(steep, { cut: 1, fill: 1 })).toThrow("never meet");
  });
});

describe("volumes between stations", () => {
  it("of a bank 200 m long: 3,312 by end areas, 3,288 by the prismoidal formula and the printed closed form", () => {
    // Earthwork course sheet, design problem 1: B 10 m, sides 2 to 1, heights 1.00 and 1.60 m.
    const bank = [level(0, -1, 10), level(200, -1.6, 10)];
    expect(totals(bank, 2, "average end area")[1]).toBeCloseTo(3312, 9);
    expect(totals(bank, 2, "prismoidal")[1]).toBeCloseTo(3288, 9);
  });

  it("of G. L. Vose's wedge-shaped cut (1857): 56,250 by end areas, 52,500 by the prismoidal formula", () => {
    // Handbook of Railroad Construction, section 108; he rounds the mean areas and prints 56,200.
    const cut = [0, 5, 10, 15, 0].map((depth, index) => level(index * 50, depth, 20));
    expect(totals(cut, 1.5, "average end area")[0]).toBeCloseTo(56_250, 6);
    expect(totals(cut, 1.5, "prismoidal")[0]).toBeCloseTo(52_500, 6);
  });

  it("of printed areas: the first reaches of a university's mass diagram, cubic yards", () => {
    // Construction-equipment tutorial, question 2: stations of 100 ft; printed fill 166.67, 451.85, cut 272.22, 627.78.
    const yards = (a: number, b: number) => endAreaVolume(100, a, b) / 27;
    expect(yards(0, 90)).toBeCloseTo(166.67, 2);
    expect(yards(90, 154)).toBeCloseTo(451.85, 2);
    expect(yards(0, 147)).toBeCloseTo(272.22, 2);
    expect(yards(147, 192)).toBeCloseTo(627.78, 2);
  });

  it("of a frustum whose ends are not alike: 1,350 exactly", () => {
    // By hand: 30 × 25 above, 20 × 10 below, 3 deep; middle 25 × 17.5: 3/6 × (750 + 4 × 437.5 + 200).
    expect(prismoidalVolume(3, 750, 437.5, 200)).toBeCloseTo(1350, 12);
  });

  it("changes from cut to fill where the line passes through the ground", () => {
    // By hand: 3 m wide, upright sides, 2 m cut to 1 m fill over 9 m: 6 m × 2/2 × 3 = 18 m³, 3 m × 1/2 × 3 = 4.5 m³.
    const [cut, fill] = totals([level(0, 2, 3), level(9, -1, 3)], 0, "average end area");
    expect(cut).toBeCloseTo(18, 12);
    expect(fill).toBeCloseTo(4.5, 12);
  });

  it("are the same with a station more in between, by the prismoidal formula", () => {
    const depth = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(depth, depth, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (a, b, share) => {
        const [from, to] = [level(0, a, 2), level(10, b, 4)];
        const between = { ...level(10 * share, a + (b - a) * share, 2 + 2 * share) };
        const [whole, split] = [totals([from, to], 1.5, "prismoidal"), totals([from, between, to], 1.5, "prismoidal")];
        expect(split[0]).toBeCloseTo(whole[0], 8);
        expect(split[1]).toBeCloseTo(whole[1], 8);
      }),
    );
  });

  it.each<[string, Station[], string]>([
    ["one station", [level(0, 1, 2)], "at least two; got 1"],
    ["a station twice", [level(0, 1, 2), level(0, 1, 2)], "each once"],
    ["stations backwards", [level(5, 1, 2), level(2, 1, 2)], "follows 5 m"],
  ])("refuse %s", (_, stations, sentence) => {
    expect(() => cutFill(stations, { cut: 1, fill: 2 }, "prismoidal")).toThrow(sentence);
  });
});
