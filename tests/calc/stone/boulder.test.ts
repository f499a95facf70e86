import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  BOULDER_SHAPE_NAMES,
  boulderFaceWeight,
  boulderWeight,
  boulderWeightRange,
} from "../../../src/calc/stone/boulder";

const side = fc.double({ min: 0.05, max: 3, noNaN: true });

/** Volume of an ellipsoid in its box by slices: an independent way to π/6. */
function ellipsoidBySlices(length: number, width: number, height: number): number {
  const slices = 20_000;
  let volume = 0;
  for (let i = 0; i < slices; i++) {
    const z = ((i + 0.5) / slices) * 2 - 1;
    volume += (Math.PI / 4) * length * width * (1 - z * z) * (height / slices);
  }
  return volume;
}

describe("boulderWeight", () => {
  it("weighs an ellipsoid as slices of it do", () => {
    const weight = boulderWeight(0.8, 0.6, 0.5, 2600, "rounded");
    expect(weight / (ellipsoidBySlices(0.8, 0.6, 0.5) * 2600)).toBeCloseTo(1, 7);
  });

  it("makes a box 6/π = 1.91 times as heavy as a rounded stone, and an angular one lie between", () => {
    const [rounded, angular, box] = BOULDER_SHAPE_NAMES.map((shape) => boulderWeight(1, 1, 1, 2650, shape));
    expect((box ?? 0) / (rounded ?? 1)).toBeCloseTo(1.9099, 4);
    expect(angular).toBeCloseTo(((rounded ?? 0) + (box ?? 0)) / 2, 9);
  });

  it("does not mind how the stone lies, and grows with every side", () => {
    fc.assert(
      fc.property(side, side, side, (a, b, c) => {
        const weight = boulderWeight(a, b, c, 2650);
        expect(boulderWeight(c, a, b, 2650) / weight).toBeCloseTo(1, 12);
        expect(boulderWeight(a * 1.01, b, c, 2650)).toBeGreaterThan(weight);
      }),
    );
  });

  it("refuses a stone of no size or of unknown rock", () => {
    expect(() => boulderWeight(-1, 1, 1, 2650)).toThrow("length must be 0 to 5 m");
    expect(() => boulderWeight(1, 9, 1, 2650)).toThrow("width must be 0 to 5 m");
    expect(() => boulderWeight(1, 1, NaN, 2650)).toThrow("height must be a finite number");
    expect(() => boulderWeight(1, 1, 1, 165)).toThrow("rock density must be 900 to 3500 kg/m³");
  });
});

describe("boulderWeightRange", () => {
  it("lies a third either side of the usual shape, which is what every page says", () => {
    // k: ellipsoid π/6 = 0.5236, box 1, in the middle 0.7618: 0.5236 / 0.7618 = 0.687 and 1 / 0.7618 = 1.313.
    const { light, heavy } = boulderWeightRange(0.8, 0.6, 0.5, { low: 2600, high: 2600 });
    const estimate = boulderWeight(0.8, 0.6, 0.5, 2600);
    expect(light / estimate).toBeCloseTo(0.687, 3);
    expect(heavy / estimate).toBeCloseTo(1.313, 3);
    for (const side of [light, heavy]) expect(Math.abs(side / estimate - 1)).toBeLessThan(1 / 3);
  });

  it("takes the rock's own range on top: by hand, 0.8 × 0.6 × 0.5 m of 2,700 kg/m³ is 648 kg", () => {
    const { light, heavy } = boulderWeightRange(0.8, 0.6, 0.5, { low: 2500, high: 2700 });
    expect(heavy).toBeCloseTo(648, 9);
    expect(light).toBeCloseTo((Math.PI / 6) * 600, 9);
  });
});

describe("boulderFaceWeight", () => {
  it("takes the gaps off and adds the waste", () => {
    // By hand: 6 × 0.5 × 0.4 m = 1.2 m³; × 0.65 × 2,600 kg/m³ = 2,028 kg; × 1.1 = 2,230.8 kg.
    expect(boulderFaceWeight(6, 0.5, 0.4, 2600, undefined, 0.1)).toBeCloseTo(2230.8, 9);
  });

  it("adds up along the face", () => {
    fc.assert(
      fc.property(side, side, side, fc.double({ min: 0.3, max: 1, noNaN: true }), (a, b, t, s) => {
        const parts = boulderFaceWeight(a, 1, t, 2650, s) + boulderFaceWeight(b, 1, t, 2650, s);
        expect(boulderFaceWeight(a + b, 1, t, 2650, s) / parts).toBeCloseTo(1, 12);
      }),
    );
  });

  it("refuses a face of more gaps than stone", () => {
    expect(() => boulderFaceWeight(6, 0.5, 0.4, 2600, 0.2)).toThrow("solid share must be 0.3 to 1; got 0.2");
    expect(() => boulderFaceWeight(6, 31, 0.4, 2600)).toThrow("face height must be 0 to 30 m");
  });
});
