import { describe, expect, it } from "vitest";
import { shippedBook } from "../../src/book/shipped";
import { makeCurve } from "../../src/calc/pump/curve";
import { PIPE_TYPES } from "../../src/calc/tables/pipes";
import { WIRES } from "../../src/calc/tables/wires";

describe.each(["US", "SI"] as const)("the book that ships, %s", (system) => {
  const book = shippedBook(system);

  it("marks every row as invented", () => {
    const { company, products, pumps, labor, machines, pricing, pastJobs } = book;
    const rows = [company, pricing, ...products, ...pumps, ...labor.burden, ...labor.wages, ...labor.rates];
    expect([...rows, ...machines, ...pastJobs].filter(({ invented }) => !invented)).toEqual([]);
  });

  it("holds each code once", () => {
    const codes = book.products.map(({ code }) => code);
    expect(codes).toEqual([...new Set(codes)]);
  });

  it("sells pipe and fittings in sizes of the standards, and cable in conductors of the standards", () => {
    const known = new Set(
      PIPE_TYPES.flatMap(({ name, sizes }) => sizes.map(({ nominal }) => `${name} ${nominal.toFixed(5)}`)),
    );
    const pipes = book.products.filter(({ kind }) => kind === "pipe");
    expect(pipes.map(({ type, size = NaN }) => `${type} ${size.toFixed(5)}`).filter((one) => !known.has(one))).toEqual(
      [],
    );
    const sizes = pipes.map(({ size }) => size);
    const fittings = book.products.filter(({ code }) => code.startsWith("FIT-"));
    expect(fittings.filter(({ size }) => !sizes.includes(size))).toEqual([]);
    const cables = book.products.filter(({ kind }) => kind === "cable").map(({ type }) => type);
    expect(cables.filter((type) => !WIRES.some(({ name }) => name === type))).toEqual([]);
  });

  it("asks more for more of the same kind", () => {
    for (const kind of ["pipe", "tub", "spillway box", "tee"] as const) {
      const prices = book.products.filter((one) => one.kind === kind).map(({ price = NaN }) => price);
      expect(prices, kind).toEqual([...prices].sort((a, b) => a - b));
    }
  });

  it("draws pumps whose water takes less power than their motors do", () => {
    for (const { name, watts = NaN, curve } of book.pumps) {
      expect(makeCurve(curve).flows.length, name).toBeLessThanOrEqual(12);
      // ρ g Q H: 1000 kg/m³ × 9.81 m/s². Small pumps turn a tenth to under a half of their power into lift.
      const best = Math.max(...curve.map(({ flow, head }) => (9810 * flow * head) / watts));
      expect(best, name).toBeGreaterThan(0.08);
      expect(best, name).toBeLessThan(0.5);
    }
  });
});

it("weighs pipe by its walls", () => {
  // Sch 40, 4 in: outside 4.5 in, wall 0.237 in. Plastic: π/4 (4.5² - 4.026²) = 3.174 in² = 2.0477e-3 m²; × 1400 kg/m³
  // = 2.867 kg/m = 1.926 lb/ft (tables of makers, at average wall, print about 2.0).
  const pipe = shippedBook("US").products.find(({ code }) => code === "PIPE 4 Sch 40 PVC");
  expect((pipe?.weight ?? NaN) / 0.45359237).toBeCloseTo(1.926, 1);
});
