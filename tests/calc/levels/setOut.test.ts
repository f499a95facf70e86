import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heightOfInstrument, levelOf, setOut } from "../../../src/calc/levels/setOut";

const level = fc.double({ min: -100, max: 1000, noNaN: true });
const reading = fc.double({ min: 0.1, max: 5, noNaN: true });

describe("a run of levels", () => {
  it("closes: back on the bench mark the level is what it was", () => {
    const ground = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(level, ground, reading, (benchmark, rises, sight) => {
        // Out over turning points of known rise, and back over the same points.
        const points = [benchmark];
        for (const rise of rises) points.push((points[points.length - 1] ?? 0) + rise);
        const round = [...points, ...points.slice(0, -1).reverse()];
        let known = benchmark;
        let backsights = 0;
        let foresights = 0;
        for (let i = 1; i < round.length; i++) {
          const from = round[i - 1] ?? 0;
          const to = round[i] ?? 0;
          // The instrument stands `sight` above the higher of the two.
          const line = Math.max(from, to) + sight;
          backsights += line - from;
          foresights += line - to;
          known = levelOf(heightOfInstrument(known, line - from), line - to);
          expect(Math.abs(known - to)).toBeLessThan(1e-9);
        }
        expect(Math.abs(known - benchmark)).toBeLessThan(1e-9);
        // The page check: Σ backsights - Σ foresights = rise, here none.
        expect(Math.abs(backsights - foresights)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("setOut", () => {
  it("gives the reading that puts the ground on the level", () => {
    fc.assert(
      fc.property(level, reading, fc.double({ min: -3, max: 3, noNaN: true }), (benchmark, backsight, off) => {
        const [point] = setOut(benchmark, backsight, [{ name: "a", level: benchmark + off }], 0.005);
        const rod = point?.rod ?? NaN;
        expect(Math.abs(rod + (benchmark + off) - (benchmark + backsight))).toBeLessThan(1e-9);
        expect(Math.abs((point?.fromString ?? NaN) - off)).toBeLessThan(1e-9);
        // A rod is 7.7 m long at the most, and is read upwards.
        if (rod < 0 || rod > 7.7) return;
        const [read] = setOut(benchmark, backsight, [{ name: "a", level: benchmark + off, reading: rod }], 0.005);
        expect(read?.todo).toBe("on grade");
        expect(Math.abs(read?.high ?? NaN)).toBeLessThan(1e-9);
      }),
    );
  });

  it("says cut where the ground is high, fill where it is low, on grade within the tolerance", () => {
    // By hand: HI = 11.5 m; a point wanted at 10 m reads 1.5 m. A reading of 1.45 is 50 mm high, 1.53 is 30 mm low.
    const todo = (read: number): unknown =>
      setOut(10, 1.5, [{ name: "Rim", level: 10, reading: read }], 0.006).map((p) => [p.todo, p.high?.toFixed(3)])[0];
    expect(todo(1.45)).toEqual(["cut", "0.050"]);
    expect(todo(1.53)).toEqual(["fill", "-0.030"]);
    expect(todo(1.494)).toEqual(["on grade", "0.006"]);
    expect(todo(1.4939)).toEqual(["cut", "0.006"]);
    expect(setOut(10, 1.5, [{ name: "Rim", level: 10 }], 0.006)[0]).toMatchObject({
      todo: "",
      rod: 1.5,
      fromString: 0,
    });
  });

  it("reads a higher point lower on the rod", () => {
    fc.assert(
      fc.property(level, reading, fc.double({ min: 0.001, max: 1, noNaN: true }), (benchmark, backsight, rise) => {
        const [low, high] = setOut(
          benchmark,
          backsight,
          [
            { name: "low", level: benchmark },
            { name: "high", level: benchmark + rise },
          ],
          0,
        );
        expect((low?.rod ?? 0) - (high?.rod ?? 0)).toBeCloseTo(rise, 9);
      }),
    );
  });

  it("refuses readings no rod shows: above the line of sight, or longer than itself", () => {
    expect(() => levelOf(10, -0.2)).toThrow("reading must be 0 to 7.7 m; got -0.2 m");
    expect(() => setOut(10, 1.5, [{ name: "a", level: 9, reading: -0.1 }], 0.006)).toThrow(
      "reading must be 0 to 7.7 m",
    );
    expect(() => setOut(10, 9, [], 0.006)).toThrow("backsight must be 0 to 7.7 m; got 9 m");
    expect(() => setOut(NaN, 1, [], 0.006)).toThrow("benchmark must be a finite number");
    expect(() => setOut(10, 1, [{ name: "a", level: Infinity }], 0.006)).toThrow("level must be a finite number");
    expect(() => setOut(10, 1, [], -1)).toThrow("tolerance must be 0 to 0.3 m");
  });
});
