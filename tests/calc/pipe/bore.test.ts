import { describe, expect, it } from "vitest";
import { findPipe } from "../../../src/calc/pipe/bore";
import { PIPE_TYPES } from "../../../src/calc/tables/pipes";

const IN = 0.0254;
const nominal = (size: number) => ({ size, isBore: false });

describe("findPipe", () => {
  it("gives the bore of the standard", () => {
    expect(findPipe(nominal(1.5 * IN), "Sch 40 PVC").bore / IN).toBeCloseTo(1.61, 6); // ASTM D1785: 1.900 - 2 × 0.145
    expect(findPipe(nominal(0.063), "PVC-U PN10").bore).toBeCloseTo(0.057, 9); // ISO 1452-2: 63 - 2 × 3.0
    // ISO 4427: 63 mm SDR 17 has 3.8 mm: 63 / (2 × 10^0.9 + 1) = 3.73, up to 3.8
    expect(findPipe(nominal(0.063), "PE100 PN10").bore).toBeCloseTo(0.0554, 9);
  });

  it("names the pipe as a person would", () => {
    expect(findPipe(nominal(1.25 * IN), "SDR 26 PVC").label).toBe("1 1/4 in SDR 26 PVC");
    expect(findPipe(nominal(0.75 * IN), "Sch 80 PVC").label).toBe("3/4 in Sch 80 PVC");
    expect(findPipe(nominal(0.063), "PVC-U PN10").label).toBe("63 mm PVC-U PN10");
  });

  it("takes a stated bore as it is, as smooth as its type", () => {
    expect(findPipe({ size: 0.048, isBore: true }, "Sch 40 PVC").bore).toBe(0.048);
    expect(findPipe(nominal(0.048), "Bore")).toMatchObject({ bore: 0.048, label: "bore 48 mm, rigid PVC" });
    // Flexible PVC: C 140, the low end of plastic in the EPANET 2.2 User Manual, Table 3.2.
    expect(findPipe({ size: 0.0525, isBore: true }, "Flexible PVC").material.hazenWilliams).toBe(140);
    expect(() => findPipe({ size: 2, isBore: true }, "Bore")).toThrow("size as a bore must be 3 to 1000 mm");
  });

  it("takes a smoothness of the user's own in place of the type's", () => {
    const pipe = findPipe(nominal(0.063), "PE100 PN10", "size", { hazenWilliams: 120 });
    expect(pipe.material).toMatchObject({ hazenWilliams: 120, roughness: 0.005e-3 * 0.3048 });
    expect(pipe.label).toBe("63 mm PE100 PN10, C 120");
    const rough = findPipe({ size: 0.05, isBore: true }, "Bore", "size", { roughness: 0.0001 });
    expect(rough).toMatchObject({ label: "bore 50 mm, rigid PVC, roughness 0.1 mm", material: { roughness: 0.0001 } });
    // Without one the pipe is the looked-up one still.
    expect(findPipe(nominal(0.063), "PE100 PN10", "size", {}).label).toBe("63 mm PE100 PN10");
    expect(() => findPipe(nominal(0.063), "PE100 PN10", "row 2: size", { roughness: 0.004 })).toThrow(
      "row 2: size: roughness must be at most 0.05 of the bore, 2.77 mm; got 4 mm",
    );
  });

  it("lists the sizes that exist when one does not", () => {
    expect(() => findPipe(nominal(0.063), "Sch 40 PVC")).toThrow(/size 2\.4803\d* in does not exist in Sch 40 PVC/);
    expect(() => findPipe(nominal(2.25 * IN), "Sch 40 PVC", "row 2: size")).toThrow(
      /row 2: size 2 1\/4 in .* 1\/2, 3\/4, 1, 1 1\/4, 1 1\/2, 2,/,
    );
  });
});

describe("the pipe tables", () => {
  it.each(PIPE_TYPES.map((type) => [type.name, type] as const))("%s: bigger sizes have bigger bores", (_, type) => {
    expect(type.sizes.length).toBeGreaterThan(5);
    type.sizes.forEach((row, index) => {
      expect(row.bore).toBeCloseTo(row.outside - 2 * row.wall, 9);
      expect(row.bore).toBeGreaterThan(type.sizes[index - 1]?.bore ?? 0);
    });
    expect(type.source.length).toBeGreaterThan(10);
  });

  it("makes a higher class thicker at the same size", () => {
    for (const [thin, thick] of [
      ["Sch 40 PVC", "Sch 80 PVC"],
      ["SDR 41 PVC", "SDR 21 PVC"],
      ["PVC-U PN6", "PVC-U PN10"],
      ["PVC-U PN10", "PVC-U PN16"],
      ["PE100 PN6", "PE100 PN16"],
    ] as const) {
      const wide = PIPE_TYPES.find((type) => type.name === thin);
      const narrow = PIPE_TYPES.find((type) => type.name === thick);
      for (const row of wide?.sizes ?? []) {
        const same = narrow?.sizes.find((other) => other.nominal === row.nominal);
        if (same) expect(same.bore, `${thick} ${row.nominal}`).toBeLessThan(row.bore);
      }
    }
  });

  it("keeps D2241 walls within 0.002 in of outside diameter / SDR, and at least 0.060 in", () => {
    for (const type of PIPE_TYPES.filter(({ name }) => name.startsWith("SDR"))) {
      const ratio = Number(type.name.split(" ")[1]);
      for (const { outside, wall } of type.sizes) {
        const rule = Math.max(outside / IN / ratio, 0.06);
        expect(Math.abs(wall / IN - rule), `${type.name} ${outside / IN}`).toBeLessThan(0.0021);
      }
    }
  });
});
