import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { basinMix, findBasinPart, type BasinPart } from "../../../src/calc/basin/mix";
import { BASIN_PARTS } from "../../../src/calc/tables/basinParts";

const part = (
  kind: string,
  length: number,
  width: number | undefined,
  depth: number,
  more: Partial<BasinPart> = {},
) => ({
  kind: findBasinPart(kind),
  length,
  width,
  depth,
  voidFraction: undefined,
  sideSlope: 0,
  label: `parts: ${kind}`,
  ...more,
});
const pit = part("pit", 3, 2, 1);

describe("basinMix", () => {
  it("takes modules and well out of the gravel", () => {
    // by hand: pit 6 m³; modules 2 × 1 × 0.8 = 1.6 m³ (0.95); well 0.5² × 1 = 0.25 m³ (1);
    // gravel 6 - 1.85 = 4.15 m³ (0.40): 1.52 + 0.25 + 1.66 = 3.43 m³
    const [modules, well, gravel, whole] = basinMix([pit, part("modules", 2, 1, 0.8), part("pump well", 0.5, 0.5, 1)]);
    expect(modules?.water).toBeCloseTo(1.52, 12);
    expect(well?.water).toBeCloseTo(0.25, 12);
    expect(gravel).toMatchObject({ name: "Gravel", voidFraction: 0.4 });
    expect(gravel?.volume).toBeCloseTo(4.15, 12);
    expect(whole?.water).toBeCloseTo(3.43, 12);
    expect(whole?.voidFraction).toBeCloseTo(3.43 / 6, 12);
  });

  it("works out a round well in a sloped pit", () => {
    // pit 3 × 2 × 1 with walls 0.5 out per 1 up: 6 + 0.5 × 5 + 4/3 × 0.25 = 8.8333 m³; well π/4 × 0.6² × 0.9
    const [well, gravel] = basinMix([{ ...pit, sideSlope: 0.5 }, part("round well", 0.6, undefined, 0.9)]);
    expect(well?.volume).toBeCloseTo(0.254469, 6);
    expect(gravel?.volume).toBeCloseTo(8.833333 - 0.254469, 5);
  });

  it("numbers parts of the same kind, whatever the order of the rows", () => {
    const names = basinMix([part("modules", 1, 1, 1), pit, part("modules", 1, 0.5, 1)]).map(({ name }) => name);
    expect(names).toEqual(["Modules 1", "Modules 2", "Gravel", "Basin", "Above the modules"]);
  });

  it("is the pit alone when nothing stands in it", () => {
    const [gravel, whole] = basinMix([{ ...pit, voidFraction: 0.35 }]);
    expect(gravel?.water).toBeCloseTo(6 * 0.35, 12);
    expect(whole?.water).toBe(gravel?.water);
  });

  it("adds up: parts and gravel fill the basin, and modules only add water (fast-check)", () => {
    const side = fc.double({ min: 0.05, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(side, side, side, (length, width, depth) => {
        const shares = basinMix([pit, part("modules", length, width, depth)]);
        const whole = shares.at(-2);
        const parts = shares.slice(0, -2);
        expect(parts.reduce((sum, s) => sum + s.volume, 0)).toBeCloseTo(whole?.volume ?? NaN, 9);
        expect(parts.reduce((sum, s) => sum + s.water, 0)).toBeCloseTo(whole?.water ?? NaN, 9);
        expect(whole?.water).toBeGreaterThan(basinMix([pit])[1]?.water ?? NaN);
      }),
    );
  });

  it("gives the layer above the modules, with the wells that reach through it", () => {
    // by hand: above 0.8 m: 6 m² × 0.2 = 1.2 m³, of it well 0.25 × 0.2 = 0.05 (1), gravel 1.15 (0.40): 0.51 m³
    const layer = basinMix([pit, part("modules", 2, 1, 0.8), part("pump well", 0.5, 0.5, 1)]).at(-1);
    expect(layer).toMatchObject({ name: "Above the modules" });
    expect(layer?.volume).toBeCloseTo(1.2, 12);
    expect(layer?.water).toBeCloseTo(0.51, 12);
    expect(layer?.voidFraction).toBeCloseTo(0.51 / 1.2, 12);
    // with sloped walls: 8.833333 m³ in all less 3 × 2 × 0.8 + 0.5 × 0.64 × 5 + 4/3 × 0.25 × 0.512 = 6.570667 m³ below
    const sloped = basinMix([{ ...pit, sideSlope: 0.5 }, part("modules", 2, 1, 0.8)]).at(-1);
    expect(sloped?.volume).toBeCloseTo(8.833333 - 6.570667, 5);
  });

  it("has no such layer where the modules are as high as the water, and nothing else without modules", () => {
    const full = basinMix([pit, part("modules", 2, 1, 1)]).at(-1);
    expect(full).toEqual({ name: "Above the modules", volume: 0, voidFraction: undefined, water: 0 });
    const [, whole, layer] = basinMix([pit]);
    expect(layer?.water).toBeCloseTo(whole?.water ?? NaN, 12);
  });

  it("says what does not fit", () => {
    expect(() => basinMix([part("modules", 1, 1, 1)])).toThrow("parts must hold one row for the pit");
    expect(() => basinMix([pit, pit])).toThrow("parts: pit is a second pit");
    expect(() => basinMix([pit, part("modules", 1, 1, 1.2)])).toThrow(
      "depth must be at most the pit's, 1 m (3.281 ft)",
    );
    expect(() => basinMix([pit, part("modules", 2.5, 2.5, 0.5)])).toThrow("does not fit into the pit");
    expect(() => basinMix([pit, part("modules", 3, 2, 1), part("pump well", 1, 1, 1)])).toThrow(
      "parts must fit into the pit: modules and wells take 7 m³",
    );
    expect(() => basinMix([pit, part("round well", 0.5, 0.6, 1)])).toThrow("width of a round well must be blank");
    expect(() => basinMix([pit, part("modules", 1, 1, 1, { sideSlope: 1 })])).toThrow("side slope belongs to the pit");
    expect(() => findBasinPart("bucket")).toThrow('kind "bucket" is not known; use one of pit, modules');
  });
});

describe("basin parts", () => {
  it("each have a void fraction of a source", () => {
    for (const row of BASIN_PARTS) {
      expect(row.voidFraction).toBeGreaterThan(0);
      expect(row.voidFraction).toBeLessThanOrEqual(1);
      expect(row.source.length).toBeGreaterThan(5);
    }
  });
});
