import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findLipShape, lipDepth, lipFlow } from "../../../src/calc/water/lip";
import { splitFlow } from "../../../src/calc/water/split";

const lips = fc.array(
  fc.record({
    width: fc.double({ min: 0.2, max: 5, noNaN: true }),
    level: fc.double({ min: 0, max: 0.15, noNaN: true }),
  }),
  { minLength: 1, maxLength: 8 },
);
/** At most what the narrowest lip of 0.2 m can take at a depth it allows. */
const flow = fc.double({ min: 1e-6, max: 0.01, noNaN: true });

describe("splitFlow", () => {
  it("shares between level lips by their widths", () => {
    const [a, b] = splitFlow(0.004, [
      { width: 0.9, level: 0 },
      { width: 0.3, level: 0 },
    ]);
    expect(a?.flow).toBeCloseTo(0.003, 12);
    expect(b?.share).toBeCloseTo(0.25, 12);
  });

  it("finds the level two lips were given (worked forwards)", () => {
    const sharp = findLipShape("sharp");
    // A level 40 mm above the low lip stands 30 mm above one that is 10 mm higher.
    const low = lipFlow(0.6, 0.04, sharp);
    const high = lipFlow(0.4, 0.03, sharp);
    const [a, b] = splitFlow(
      low + high,
      [
        { width: 0.6, level: 0 },
        { width: 0.4, level: 0.01 },
      ],
      sharp,
    );
    expect(a?.depth).toBeCloseTo(0.04, 10);
    expect(b?.depth).toBeCloseTo(0.03, 10);
    expect(b?.flow).toBeCloseTo(high, 12);
  });

  it("leaves a lip above the water dry", () => {
    const [a, b] = splitFlow(0.001, [
      { width: 1, level: 0 },
      { width: 1, level: 0.2 },
    ]);
    expect(a?.flow).toBe(0.001);
    expect(a?.depth).toBeCloseTo(lipDepth(0.001, 1), 12);
    expect(b).toEqual({ flow: 0, depth: 0, share: 0 });
  });

  it("adds up to the flow, with one water level (fast-check)", () => {
    fc.assert(
      fc.property(flow, lips, (q, rows) => {
        const parts = splitFlow(q, rows);
        expect(parts).toHaveLength(rows.length);
        expect(Math.abs(parts.reduce((sum, p) => sum + p.flow, 0) / q - 1)).toBeLessThan(1e-12);
        const levels = parts.flatMap((p, i) => (p.depth > 0 ? [p.depth + (rows[i]?.level ?? 0)] : []));
        for (const level of levels) expect(level).toBeCloseTo(levels[0] ?? NaN, 9);
        parts.forEach((p, i) => {
          const row = rows[i];
          if (row) expect(Math.abs(p.flow - lipFlow(row.width, p.depth))).toBeLessThan(1e-9 * q);
        });
      }),
    );
  });

  it("does not care from where the levels are measured (fast-check)", () => {
    fc.assert(
      fc.property(flow, lips, fc.double({ min: 0, max: 0.5, noNaN: true }), (q, rows, up) => {
        const raised = rows.map((row) => ({ ...row, level: row.level + up }));
        const [before, after] = [splitFlow(q, rows), splitFlow(q, raised)];
        before.forEach((p, i) => expect(Math.abs(p.flow - (after[i]?.flow ?? NaN))).toBeLessThan(1e-8 * q));
      }),
    );
  });

  it("says what is wrong", () => {
    expect(() => splitFlow(0, [{ width: 1, level: 0 }])).toThrow("flow must be more than 0");
    expect(() => splitFlow(0.01, [])).toThrow("lips must be 1 to 50 rows");
    expect(() => splitFlow(0.01, [{ width: 1, level: -1 }])).toThrow("level of lip 1 must be 0 to 1 m");
    expect(() =>
      splitFlow(0.1, [
        { width: 0.05, level: 0 },
        { width: 1, level: 0.1 },
      ]),
    ).toThrow("the narrowest would stand in water deeper than it is wide");
    // Levels count from the lowest lip: raised together, the two take no more than before.
    expect(() =>
      splitFlow(0.1, [
        { width: 0.05, level: 0.3 },
        { width: 1, level: 0.4 },
      ]),
    ).toThrow("the narrowest would stand in water deeper than it is wide");
  });
});
