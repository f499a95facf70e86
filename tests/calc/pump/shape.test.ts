import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCurve, pumpHead, type PumpCurve } from "../../../src/calc/pump/curve";
import { dutyPoint } from "../../../src/calc/pump/duty";
import { makeSystem, type System } from "../../../src/calc/pipe/route";
import { findPipe } from "../../../src/calc/pipe/bore";
import { slopesAt } from "../../../src/calc/pump/shape";

const SEED = 20261128;

function sample(curve: PumpCurve, count = 400): number[] {
  const end = curve.flows[curve.flows.length - 1] ?? 0;
  return Array.from({ length: count + 1 }, (_, i) => pumpHead(curve, (end * i) / count));
}

/** Points whose straight lines fall ever more steeply. */
const bending = fc
  .array(fc.tuple(fc.double({ min: 0.2, max: 2, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true })), {
    minLength: 1,
    maxLength: 8,
  })
  .map((steps) => {
    let [flow, slope, head] = [0, 0, 1000];
    const points = [{ flow, head }];
    for (const [width, steeper] of steps) {
      flow += width;
      slope -= steeper;
      head += slope * width;
      points.push({ flow, head });
    }
    return makeCurve(points.map((point) => ({ flow: point.flow / 1000, head: point.head })));
  });

describe("the curve between its points", () => {
  it("meets a parabola exactly: 26 - 4 (Q / 40)² ft, three points of it", () => {
    const curve = makeCurve([0, 40, 80].map((flow) => ({ flow, head: 26 - 4 * (flow / 40) ** 2 })));
    for (const flow of [5, 20, 50, 70]) expect(pumpHead(curve, flow)).toBeCloseTo(26 - 4 * (flow / 40) ** 2, 10);
  });

  it("bends downwards everywhere where the points do, and never rises", () => {
    fc.assert(
      fc.property(bending, (curve) => {
        const heads = sample(curve);
        heads.slice(1).forEach((head, i) => expect(head).toBeLessThanOrEqual((heads[i] ?? 0) + 1e-9));
        heads.slice(2).forEach((head, i) => {
          expect(head - 2 * (heads[i + 1] ?? 0) + (heads[i] ?? 0)).toBeLessThanOrEqual(1e-9);
        });
      }),
      { seed: SEED },
    );
  });

  it("never rises, and never leaves the heads of two neighbors, whatever way the points bend", () => {
    const step = fc.tuple(
      fc.double({ min: 0.1, max: 3, noNaN: true }),
      fc.oneof(fc.constant(0), fc.double({ min: 0, max: 5, noNaN: true })),
    );
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 8 }), (steps) => {
        let [flow, head] = [0, 100];
        const points = [{ flow, head }, ...steps.map(([w, d]) => ({ flow: (flow += w), head: (head -= d) }))];
        const heads = sample(makeCurve(points));
        heads.slice(1).forEach((next, i) => expect(next).toBeLessThanOrEqual((heads[i] ?? 0) + 1e-9));
      }),
      { seed: SEED },
    );
  });

  it("has slopes between those of the lines on both sides", () => {
    // Lines of -1 over 1 and of -3 over 3: (3 × -1 + 1 × -3) / 4 = -1.5; ends 2 × -1 + 1.5 = -0.5 and 2 × -3 + 1.5 = -4.5
    expect(slopesAt([0, 1, 4], [20, 19, 10])).toEqual([-0.5, -1.5, -4.5]);
    // A curve that starts flat may not start upwards: lines of -1 and -4 over 1 each, 2 × -1 + 2.5 > 0.
    expect(slopesAt([0, 1, 2], [20, 19, 15])).toEqual([0, -2.5, -5.5]);
    expect(slopesAt([0, 2], [6, 2])).toEqual([-2, -2]);
  });
});

/** The flow where the curve A - B Q^C itself meets a system, by halving. */
function trueFlow(headAt: (flow: number) => number, system: System, most: number): number {
  let [low, high] = [0, most];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (headAt(middle) > system.headAt(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Seeded numbers in [0, 1): Park and Miller's minimal standard generator, Communications of the ACM 31 (1988) 1192. */
function randoms(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

/** Errors of the duty flow, in percent, on curves H = A - B Q^C, C from 1.5 to 3, read from few points. */
function errors(points: number, count: number): number[] {
  const random = randoms(SEED);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const result: number[] = [];
  while (result.length < count) {
    const [shutOff, most, exponent] = [between(2, 20), between(0.001, 0.02), between(1.5, 3)];
    const headAt = (flow: number): number => shutOff * (1 - (flow / most) ** exponent);
    const gaps = Array.from({ length: points - 1 }, () => between(0.4, 1));
    const whole = gaps.reduce((sum, gap) => sum + gap, 0);
    const end = most * between(0.75, 1);
    let at = 0;
    const flows = [0, ...gaps.map((gap) => (at += (gap / whole) * end))];
    const pipe = findPipe({ size: between(0.03, 0.12), isBore: true }, "Bore");
    const system = makeSystem(shutOff * between(0.05, 0.85), [{ pipe, length: between(2, 60), k: between(1, 12) }]);
    const flow = trueFlow(headAt, system, most);
    // A tenth of the curve and less is no place a pump works at.
    if (flow < 0.1 * most || flow >= 0.999 * end) continue;
    const duty = dutyPoint(makeCurve(flows.map((q) => ({ flow: q, head: headAt(q) }))), system);
    result.push((duty.flow / flow - 1) * 100);
  }
  return result;
}

describe("the flow from few points of a smooth curve", () => {
  // Wanted: 2 % on average with three points, 0.5 % with five. The spread is what help says.
  it.each([
    { points: 3, average: 0.8, least: -6.5, most: 2 },
    { points: 4, average: 0.2, least: -5, most: 0.8 },
    { points: 5, average: 0.1, least: -1.5, most: 0.6 },
    { points: 7, average: 0.03, least: -0.6, most: 0.3 },
  ])("from $points points is within $average percent on average", ({ points, average, least, most }) => {
    const found = errors(points, 3000);
    const mean = found.reduce((sum, error) => sum + Math.abs(error), 0) / found.length;
    const [low, high] = [Math.min(...found), Math.max(...found)];
    const words = `average ${mean.toFixed(3)}, from ${low.toFixed(2)} to ${high.toFixed(2)} %`;
    expect(mean, words).toBeLessThanOrEqual(average);
    expect(low, words).toBeGreaterThanOrEqual(least);
    expect(high, words).toBeLessThanOrEqual(most);
  });
});
