import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findPipe } from "../../../src/calc/pipe/bore";
import { FRICTION_METHODS, makeSystem, totalDynamicHead } from "../../../src/calc/pipe/route";
import { PIPE_TYPES } from "../../../src/calc/tables/pipes";
import { bore, flows, methods, routes } from "./routes";

describe("totalDynamicHead", () => {
  it("agrees with hand arithmetic", () => {
    // 3 L/s through 20 m of 57 mm bore (63 mm PN10), C 150: friction 0.485388 m (10.67 × 20 × 0.003^1.852 /
    // (150^1.852 × 0.057^4.8704)); V = 1.17566 m/s, V²/2g = 0.070471 m; K 4.3 and the outlet: 5.3 × 0.070471
    const pipe = findPipe({ size: 0.063, isBore: false }, "PVC-U PN10");
    const head = totalDynamicHead(0.003, 1.9, [{ pipe, length: 20, k: 4.3 }]);
    expect(head).toBeCloseTo(1.9 + 0.485388 + 5.3 * 0.070471, 4);
  });

  it("agrees with hand arithmetic by Colebrook, one size after another", () => {
    // 2.7374 L/s at 15 °C, ν = 1.139e-6 m²/s (MWH, appendix C), roughness 0.0015 mm; f by iteration:
    // 57 mm bore: V 1.07274 m/s, Re 53,684, f 0.02066, friction of 2.4 m 0.05105 m, K 1.5 × V²/2g = 0.08801 m;
    // 67.8 mm bore: V 0.75820 m/s, Re 45,132, f 0.02145, friction of 9.8 m 0.09088 m, K 2.6 and the outlet
    // 3.6 × 0.02931 = 0.10552 m; with the lift of 1.55232 m 1.88778 m. At 20 °C it would be 0.2 % less.
    const pipe = (size: number) => findPipe({ size, isBore: false }, "PVC-U PN10");
    const route = [
      { pipe: pipe(0.063), length: 2.4, k: 1.5 },
      { pipe: pipe(0.075), length: 9.8, k: 2.6 },
    ];
    const head = totalDynamicHead(2.73736e-3, 1.55232, route, { method: "Darcy-Weisbach" });
    expect(head).toBeCloseTo(1.88778, 4);
  });

  it("counts the outlet of the last pipe alone", () => {
    const [wide, narrow] = [
      { pipe: bore(80), length: 0, k: 0 },
      { pipe: bore(40), length: 0, k: 0 },
    ] as const;
    // Without length and fittings only the outlet is left: V²/2g in the last bore.
    const inNarrow = (0.002 / ((Math.PI / 4) * 0.04 ** 2)) ** 2 / 19.6133;
    expect(totalDynamicHead(0.002, 0, [wide, narrow])).toBeCloseTo(inNarrow, 9);
    expect(totalDynamicHead(0.002, 0, [narrow, wide])).toBeCloseTo(inNarrow / 16, 9);
  });

  it("needs more head for more flow, and less in a wider pipe (fast-check)", () => {
    fc.assert(
      fc.property(flows, routes, methods, (flow, route, method) => {
        const head = totalDynamicHead(flow, 1, route, { method });
        expect(totalDynamicHead(flow * 1.01, 1, route, { method })).toBeGreaterThan(head);
        const wider = route.map((row) => ({ ...row, pipe: bore(row.pipe.bore * 1000 + 5) }));
        expect(totalDynamicHead(flow, 1, wider, { method })).toBeLessThanOrEqual(head * (1 + 1e-12));
      }),
    );
  });

  it("never needs more head in the next bigger size of any type", () => {
    for (const { name, sizes } of PIPE_TYPES) {
      const heads = sizes.map(({ nominal }) =>
        totalDynamicHead(0.004, 2, [{ pipe: findPipe({ size: nominal, isBore: false }, name), length: 30, k: 5 }]),
      );
      heads.slice(1).forEach((head, index) => expect(head, name).toBeLessThan(heads[index] ?? 0));
    }
  });

  it("splits a pipe in two without changing the head (fast-check)", () => {
    fc.assert(
      fc.property(flows, routes, methods, (flow, route, method) => {
        const halves = route.flatMap(({ pipe, length, k }) => [
          { pipe, length: length / 2, k: k / 2 },
          { pipe, length: length / 2, k: k / 2 },
        ]);
        const whole = totalDynamicHead(flow, 1, route, { method });
        expect(totalDynamicHead(flow, 1, halves, { method })).toBeCloseTo(whole, 8);
      }),
    );
  });

  it("sends each pump's share through its own riser", () => {
    // Two pumps, 6 L/s in all: 3 L/s in each riser take 0.485388 + 4.3 × 0.070471 m (first test, no outlet there); the
    // shared 100 mm of no length only its outlet: (0.006 / 0.00785398 m²)² / 2g = 0.029756 m.
    const riser = [{ pipe: findPipe({ size: 0.063, isBore: false }, "PVC-U PN10"), length: 20, k: 4.3 }];
    const system = makeSystem(1.9, [{ pipe: bore(100), length: 0, k: 0 }], { riser });
    expect(system.headFor(2)(0.006)).toBeCloseTo(1.9 + 0.485388 + 4.3 * 0.070471 + 0.029756, 4);
    // One pump alone has its riser and the shared pipe in series.
    for (const method of FRICTION_METHODS) {
      const apart = makeSystem(1, [{ pipe: bore(100), length: 9, k: 2 }], { riser, method });
      const series = makeSystem(1, [...riser, { pipe: bore(100), length: 9, k: 2 }], { method });
      expect(apart.headAt(0.004)).toBeCloseTo(series.headAt(0.004), 12);
    }
  });

  it("names what is out of range", () => {
    const long = { riser: [{ pipe: bore(50), length: 6000, k: 1 }] };
    expect(() => makeSystem(1, [{ pipe: bore(50), length: 1, k: 1 }], long)).toThrow("length must be 0 to 5000 m");
    const route = [{ pipe: bore(50), length: 10, k: 1 }];
    expect(() => totalDynamicHead(-1, 1, route)).toThrow("flow must be 0 to 1 m³/s; got -1");
    expect(() => totalDynamicHead(NaN, 1, route)).toThrow("flow must be");
    expect(() => makeSystem(101, route)).toThrow("lift must be 0 to 100 m; got 101 m");
    expect(() => makeSystem(1, [])).toThrow("route is needed");
    expect(() => makeSystem(1, [{ pipe: bore(50), length: -1, k: 1 }])).toThrow("length must be 0 to 5000 m");
    expect(() => makeSystem(1, [{ pipe: bore(50), length: 1, k: Infinity }])).toThrow(
      "sum of K of the fittings must be",
    );
  });
});
