import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findLipShape, lipDepth, lipDoubt, lipFlow, ownLip, USUAL_LIP } from "../../../src/calc/water/lip";
import { LIP_SHAPES } from "../../../src/calc/tables/lips";

const FOOT = 0.3048;
const CUBIC_FOOT = FOOT ** 3;

const shape = fc.constantFrom(...LIP_SHAPES);
const width = fc.double({ min: 0.05, max: 10, noNaN: true });
/** Depth as a part of what the lip allows. */
const part = fc.double({ min: 1e-6, max: 1, noNaN: true });

describe("lipFlow", () => {
  it("is the book's equation in the book's units", () => {
    // Francis, by hand: 3.33 × 2 ft × (0.25 ft)^1.5 = 3.33 × 2 × 0.125 = 0.8325 ft³/s
    expect(lipFlow(2 * FOOT, 0.25 * FOOT, findLipShape("sharp")) / CUBIC_FOOT).toBeCloseTo(0.8325, 10);
    // narrowed at both ends: 3.33 × (2 - 0.2 × 0.25) × 0.125 = 0.8116875 ft³/s
    expect(lipFlow(2 * FOOT, 0.25 * FOOT, findLipShape("sharp, narrowed")) / CUBIC_FOOT).toBeCloseTo(0.8116875, 10);
  });

  it("takes an own coefficient without end contractions", () => {
    // by hand: 1.7 × 2 m × 0.04^1.5 = 1.7 × 2 × 0.008 = 0.0272 m³/s
    expect(lipFlow(2, 0.04, ownLip(1.7))).toBeCloseTo(0.0272, 12);
    expect(() => ownLip(3.33)).toThrow("coefficient must be 1.10");
  });

  it("orders the lips: smooth broad under sharp, deep broad under broad", () => {
    const flow = (name: string): number => lipFlow(1, 0.03, findLipShape(name));
    const names = ["broad, deep", "broad", "broad, smooth", "sharp, narrowed", "sharp"];
    const flows = names.map(flow);
    expect([...flows].sort((a, b) => a - b)).toEqual(flows);
  });

  it("grows with depth and with width (fast-check)", () => {
    fc.assert(
      fc.property(shape, width, part, fc.double({ min: 1.001, max: 2, noNaN: true }), (lip, w, p, more) => {
        const depth = (p * Math.min(w, 1)) / more;
        expect(lipFlow(w, depth * more, lip)).toBeGreaterThan(lipFlow(w, depth, lip));
        expect(lipFlow(w * more, depth, lip)).toBeGreaterThan(lipFlow(w, depth, lip));
      }),
    );
  });

  it("says what is wrong", () => {
    expect(() => lipFlow(0.1, 0.2)).toThrow("sheet depth must be at most the lip width");
    expect(() => lipFlow(0.001, 0.0005)).toThrow("lip width must be 0.01 to 50 m");
    expect(() => lipFlow(1, -0.1)).toThrow("sheet depth must be 0 to 1 m");
    expect(() => lipFlow(NaN, 0.1)).toThrow("lip width must be a finite number");
  });
});

describe("lipDepth", () => {
  it("inverts lipFlow for every shape (fast-check)", () => {
    fc.assert(
      fc.property(shape, width, part, (lip, w, p) => {
        const depth = p * Math.min(w, 1);
        expect(Math.abs(lipDepth(lipFlow(w, depth, lip), w, lip) / depth - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("is 0 for no flow and refuses what would stand deeper than the lip is wide", () => {
    expect(lipDepth(0, 1)).toBe(0);
    expect(() => lipDepth(1, 0.1)).toThrow(/flow must be at most .* give a wider lip/);
  });
});

describe("lip shapes", () => {
  it("are found by name in any case and spacing, and by what people call them", () => {
    expect(findLipShape(" Sharp,  NARROWED").endContractions).toBe(2);
    expect(findLipShape("flat stone")).toBe(USUAL_LIP);
    expect(() => findLipShape("ogee", "row 2: lip shape")).toThrow(
      'row 2: lip shape "ogee" is not known; use one of broad',
    );
  });

  it("each have a source", () => LIP_SHAPES.forEach((row) => expect(row.source.length).toBeGreaterThan(10)));
});

describe("lipDoubt", () => {
  it("doubts what lies outside the standards, and nothing else", () => {
    // The standards begin at 0.2 ft, 60.96 mm, and end at a third of the width.
    expect(lipDoubt(1, 0.0599)).toContain("thin sheet");
    expect(lipDoubt(1, 0.2 * FOOT)).toBe("");
    expect(lipDoubt(1, 0.333)).toBe("");
    expect(lipDoubt(1, 0.334)).toContain("deep for its width");
  });
});
