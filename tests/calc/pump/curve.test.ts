import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lastFlow, makeCurve, pumpHead, shutOffHead, type CurvePoint } from "../../../src/calc/pump/curve";

const points = [
  { flow: 0, head: 8 },
  { flow: 0.001, head: 7 },
  { flow: 0.003, head: 3 },
];
const curve = makeCurve(points);

describe("makeCurve", () => {
  it("orders points typed in any order", () => {
    expect(makeCurve([...points].reverse())).toEqual(curve);
    expect(lastFlow(curve, 0.5)).toBeCloseTo(0.0015, 12);
    expect(shutOffHead(curve, 0.5)).toBeCloseTo(2, 12);
  });

  it.each<[string, CurvePoint[], string]>([
    ["no shut-off head", points.slice(1), "curve needs its shut-off head"],
    ["one point", points.slice(0, 1), "curve must have 2 to 200 points; got 1"],
    [
      "two heads at one flow",
      [...points, { flow: 0.003, head: 2 }],
      "two points with the same flow, between its points 3 and 4",
    ],
    ["a rise", [...points, { flow: 0.004, head: 3.5 }], "curve rises between its points 3 and 4"],
    ["a negative flow", [...points, { flow: -1, head: 1 }], "curve point 4 must have a flow and a head of 0 or more"],
    ["not a number", [...points, { flow: NaN, head: 1 }], "curve point 4 must have"],
  ])("refuses %s", (_, bad, sentence) => {
    expect(() => makeCurve(bad)).toThrow(sentence);
  });
});

describe("pumpHead", () => {
  it("lies between the points on the curve that bends as they do", () => {
    // The slopes of the lines are -1 and -2 m per L/s, that of the parabola at the point between (2 × -1 + 1 × -2) / 3 =
    // -4/3, at the end 2 × -2 + 4/3 = -8/3. At 2 L/s the line gives 5 m, a = b = (2 - 4/3) × 1 = 2/3, a b / (a + b) = 1/3.
    expect(pumpHead(curve, 0.002)).toBeCloseTo(5 + 1 / 3, 12);
    for (const { flow, head } of points) expect(pumpHead(curve, flow)).toBeCloseTo(head, 12);
  });

  it("follows the affinity laws: at 0.9 speed (1 L/s, 7 m) moves to (0.9 L/s, 5.67 m)", () => {
    expect(pumpHead(curve, 0.0009, 0.9)).toBeCloseTo(7 * 0.81, 12);
  });

  it("never rises with flow (fast-check)", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.5, max: 1.2, noNaN: true }), (a, b, speed) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((s) => s * lastFlow(curve, speed));
        expect(pumpHead(curve, more ?? 0, speed)).toBeLessThanOrEqual(pumpHead(curve, less ?? 0, speed) + 1e-12);
      }),
    );
  });

  it("does not extrapolate", () => {
    expect(() => pumpHead(curve, 0.0031)).toThrow("flow 0.0031 m³/s lies past the end of the curve");
    expect(() => pumpHead(curve, 0.0025, 0.8)).toThrow("known up to 0.0024 m³/s");
    expect(() => pumpHead(curve, -1)).toThrow("flow must be 0 or more");
    expect(() => pumpHead(curve, 0.001, 0.05)).toThrow("speed must be 0.1 to 2");
  });
});
