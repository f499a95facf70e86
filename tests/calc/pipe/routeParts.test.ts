import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findPipe } from "../../../src/calc/pipe/bore";
import { FRICTION_METHODS, makeSystem } from "../../../src/calc/pipe/route";
import { fastestSpeed, routeParts } from "../../../src/calc/pipe/routeParts";
import { bore, flows, methods, routes } from "./routes";

describe("routeParts", () => {
  it("adds up to the head of the system (fast-check)", () => {
    fc.assert(
      fc.property(flows, routes, methods, (flow, route, method) => {
        const system = makeSystem(2, route, { method });
        const sum = routeParts(system, flow).reduce((total, part) => total + part.head, 0);
        expect(Math.abs(sum / system.headAt(flow) - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  it("adds up with risers too, each with its share of the flow", () => {
    const riser = [{ pipe: bore(40), length: 3, k: 2.5 }];
    for (const method of FRICTION_METHODS) {
      const system = makeSystem(2, [{ pipe: bore(70), length: 12, k: 3 }], { method, riser });
      const parts = routeParts(system, 0.006, 3);
      const sum = parts.reduce((total, part) => total + part.head, 0);
      expect(Math.abs(sum / system.headFor(3)(0.006) - 1)).toBeLessThan(1e-12);
      expect(parts.map(({ label }) => label).slice(1, 4)).toEqual([
        "Friction in riser, bore 40 mm, rigid PVC",
        "Fittings on riser, bore 40 mm, rigid PVC",
        "Friction in bore 70 mm, rigid PVC",
      ]);
      // 2 L/s in 40 mm: 0.002 / 0.00125664 m² = 1.59155 m/s
      expect(parts[1]?.speed).toBeCloseTo(1.59155, 5);
    }
  });

  it("says where a pipe is too fast and where the method does not fit", () => {
    const remarks = (flow: number, millimetres: number, method: "Hazen-Williams" | "Darcy-Weisbach"): string[] =>
      routeParts(makeSystem(1, [{ pipe: bore(millimetres), length: 1, k: 0 }], { method }), flow).map((p) => p.remark);
    expect(remarks(0.004, 57, "Hazen-Williams")[1]).toBe("fast: over 5 ft/s (1.5 m/s)"); // 1.57 m/s
    expect(remarks(0.008, 57, "Hazen-Williams")[1]).toMatch("much too fast"); // 3.13 m/s
    expect(remarks(0.00002, 20, "Hazen-Williams")[1]).toMatch("not turbulent"); // Re about 1100
    expect(remarks(0.00002, 20, "Darcy-Weisbach")[1]).toBe("");
  });
});

describe("fastestSpeed", () => {
  it("looks at the narrowest pipe: 3 L/s in 57 mm is 1.17566 m/s", () => {
    const both = makeSystem(
      1,
      [0.09, 0.063].map((size) => ({
        pipe: findPipe({ size, isBore: false }, "PVC-U PN10"),
        length: 1,
        k: 0,
      })),
    );
    expect(fastestSpeed(both, 0.003)).toBeCloseTo(1.17566, 4);
  });

  it("looks at a riser with its pump's share only: 6 L/s of two pumps are 1.17566 m/s in 57 mm", () => {
    const riser = [{ pipe: bore(57), length: 1, k: 0 }];
    expect(fastestSpeed(makeSystem(1, [{ pipe: bore(150), length: 1, k: 0 }], { riser }), 0.006, 2)).toBeCloseTo(
      1.17566,
      4,
    );
  });
});
