import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findPipe } from "../../../src/calc/pipe/bore";
import { FRICTION_METHODS, makeSystem, type FrictionMethod, type System } from "../../../src/calc/pipe/route";
import { makeCurve, pumpHead, shutOffHead, type PumpCurve } from "../../../src/calc/pump/curve";
import { chartPoints, dutyPoint } from "../../../src/calc/pump/duty";

function system(lift: number, millimetres = 57, length = 20, method: FrictionMethod = "Hazen-Williams"): System {
  const pipe = findPipe({ size: millimetres / 1000, isBore: true }, "Bore");
  return makeSystem(lift, [{ pipe, length, k: 4 }], { method });
}

/** Pumps whose curve bends downwards: shut-off head, last flow, bend, number of points. */
const pumps: fc.Arbitrary<PumpCurve> = fc
  .record({
    shutOff: fc.double({ min: 2, max: 20, noNaN: true }),
    end: fc.double({ min: 0.0005, max: 0.02, noNaN: true }),
    bend: fc.double({ min: 1, max: 3, noNaN: true }),
    count: fc.integer({ min: 2, max: 20 }),
  })
  .map(({ shutOff, end, bend, count }) =>
    makeCurve(
      Array.from({ length: count }, (_, i) => {
        const share = i / (count - 1);
        return { flow: end * share, head: shutOff * (1 - share ** bend) };
      }),
    ),
  );
const lifts = fc.double({ min: 0.05, max: 25, noNaN: true });
const bores = fc.integer({ min: 20, max: 120 });
const methods = fc.constantFrom(...FRICTION_METHODS);

describe("dutyPoint", () => {
  it("agrees with hand arithmetic where only the outlet counts", () => {
    // 10 m of head at no flow falling by 2000 m per m³/s; no friction: 4 + m Q² with m = 1 / (2 g A²),
    // A = π 0.04² / 4 = 1.256637e-3 m², m = 32286.6. 32286.6 Q² + 2000 Q - 6 = 0:
    // Q = (-2000 + √(4e6 + 24 × 32286.6)) / 64573.2 = (-2000 + 2185.15) / 64573.2 = 0.0028673 m³/s
    const pipe = findPipe({ size: 0.04, isBore: true }, "Bore");
    const outletOnly = makeSystem(4, [{ pipe, length: 0, k: 0 }]);
    const curve = makeCurve([
      { flow: 0, head: 10 },
      { flow: 0.005, head: 0 },
    ]);
    const duty = dutyPoint(curve, outletOnly);
    expect(duty.state).toBe("delivers");
    expect(duty.flow).toBeCloseTo(0.0028673, 6);
    expect(duty.head).toBeCloseTo(10 - 2000 * 0.0028673, 3);
  });

  it("lies on both curves (fast-check)", () => {
    fc.assert(
      fc.property(pumps, lifts, bores, methods, fc.integer({ min: 1, max: 4 }), (curve, lift, bore, method, count) => {
        const route = system(lift, bore, 20, method);
        const duty = dutyPoint(curve, route, count, 0.9);
        if (duty.state !== "delivers") return;
        // The flow is found to 1e-9 of itself; heads are held against the shut-off head, for near the end of a steep
        // curve the head left is itself next to nothing.
        const shutOff = shutOffHead(curve, 0.9);
        expect(Math.abs(route.headAt(duty.flow) - duty.head) / shutOff).toBeLessThan(1e-7);
        expect(Math.abs(pumpHead(curve, duty.flow / count, 0.9) - duty.head) / shutOff).toBeLessThan(1e-12);
      }),
    );
  });

  it("gives no more flow for more lift, and no less in a bigger pipe (fast-check)", () => {
    fc.assert(
      fc.property(pumps, lifts, bores, methods, (curve, lift, bore, method) => {
        const { flow } = dutyPoint(curve, system(lift, bore, 20, method));
        expect(dutyPoint(curve, system(lift + 0.1, bore, 20, method)).flow).toBeLessThanOrEqual(flow * (1 + 1e-8));
        expect(dutyPoint(curve, system(lift, bore + 5, 20, method)).flow).toBeGreaterThanOrEqual(flow * (1 - 1e-8));
      }),
    );
  });

  it("gives more flow with a second pump, but never twice as much (fast-check)", () => {
    fc.assert(
      fc.property(pumps, lifts, bores, (curve, lift, bore) => {
        const [one, two] = [1, 2].map((count) => dutyPoint(curve, system(lift, bore), count));
        if (one?.state !== "delivers" || two?.state !== "delivers") return;
        expect(two.flow).toBeGreaterThan(one.flow);
        expect(two.flow).toBeLessThan(2 * one.flow * (1 + 1e-8));
      }),
    );
  });

  it("says that a pump cannot lift: at its shut-off head and above", () => {
    const curve = makeCurve([
      { flow: 0, head: 5 },
      { flow: 0.004, head: 1 },
    ]);
    expect(dutyPoint(curve, system(5))).toEqual({ state: "cannot lift", flow: 0, head: 5 });
    expect(dutyPoint(curve, system(4.99)).state).toBe("delivers");
    // At 0.7 speed the shut-off head is 2.45 m.
    expect(dutyPoint(curve, system(2.5), 1, 0.7).state).toBe("cannot lift");
    expect(dutyPoint(curve, system(2.5), 3, 0.7).state).toBe("cannot lift");
  });

  it("says that a pump runs off its curve instead of guessing", () => {
    const curve = makeCurve([
      { flow: 0, head: 5 },
      { flow: 0.004, head: 4 },
    ]);
    expect(dutyPoint(curve, system(0.5))).toEqual({ state: "off its curve", flow: 0.004, head: 4 });
    // Two at 0.8 speed end at 2 × 0.8 × 0.004 m³/s and 0.8² × 4 m.
    expect(dutyPoint(curve, system(0.5, 120), 2, 0.8)).toEqual({
      state: "off its curve",
      flow: expect.closeTo(0.0064, 12) as number,
      head: expect.closeTo(2.56, 12) as number,
    });
    // Two pumps in a narrow pipe come back onto their curve.
    expect(dutyPoint(curve, system(0.5, 40), 2).state).toBe("delivers");
  });

  it("refuses counts and speeds outside their ranges", () => {
    const curve = makeCurve([
      { flow: 0, head: 5 },
      { flow: 0.004, head: 1 },
    ]);
    expect(() => dutyPoint(curve, system(1), 1.5)).toThrow("pumps must be a whole number from 1 to 12; got 1.5");
    expect(() => dutyPoint(curve, system(1), 1, 3)).toThrow("speed must be 0.1 to 2");
  });
});

describe("chartPoints", () => {
  it("runs evenly from no flow to the end of all pumps' curve", () => {
    const curve = makeCurve([
      { flow: 0, head: 5 },
      { flow: 0.004, head: 1 },
    ]);
    const route = system(2);
    const chart = chartPoints(curve, route, 2, 1, 5);
    expect(chart.map((point) => point.flow)).toEqual([0, 0.002, 0.004, 0.006, 0.008]);
    expect(chart.map((point) => point.pumpHead)).toEqual([5, 4, 3, 2, 1]);
    chart.forEach((point) => expect(point.systemHead).toBe(route.headAt(point.flow)));
  });
});
