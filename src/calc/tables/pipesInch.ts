import { FLEXIBLE_PVC, POLYETHYLENE, PVC } from "./pipeMaterials";
import type { PipeSizeRow, PipeType } from "./pipeSizes";

const INCH = 0.0254;
/** No pipe of D2241 or D2239 has a thinner wall, in. */
const LEAST_WALL = 0.06;

/** Nominal size and outside diameter of iron pipe sizes (IPS), in. ASTM D1785, Table 1. */
const OUTSIDE: readonly (readonly [nominal: number, outside: number])[] = [
  [0.5, 0.84],
  [0.75, 1.05],
  [1, 1.315],
  [1.25, 1.66],
  [1.5, 1.9],
  [2, 2.375],
  [2.5, 2.875],
  [3, 3.5],
  [3.5, 4],
  [4, 4.5],
  [5, 5.563],
  [6, 6.625],
  [8, 8.625],
  [10, 10.75],
  [12, 12.75],
];

/**
 * Least walls in thousandths of an inch; each row starts at the size named in `from` and runs up the list above.
 * ASTM D1785 Table 2 and ASTM D2241 Table 2, as tabulated in the fluids library 1.3.1 (fluids/piping.py).
 */
const WALLS: readonly { name: string; standard: string; from: number; walls: readonly number[] }[] = [
  {
    name: "Sch 40 PVC",
    standard: "ASTM D1785",
    from: 0.5,
    walls: [109, 113, 133, 140, 145, 154, 203, 216, 226, 237, 258, 280, 322, 365, 406],
  },
  {
    name: "Sch 80 PVC",
    standard: "ASTM D1785",
    from: 0.5,
    walls: [147, 154, 179, 191, 200, 218, 276, 300, 318, 337, 375, 432, 500, 593, 687],
  },
  {
    name: "SDR 13.5 PVC",
    standard: "ASTM D2241",
    from: 0.5,
    walls: [62, 78, 97, 123, 141, 176, 213, 259, 296, 333, 412, 491],
  },
  {
    name: "SDR 17 PVC",
    standard: "ASTM D2241",
    from: 0.75,
    walls: [62, 77, 98, 112, 140, 169, 206, 235, 265, 327, 390, 508, 632, 750],
  },
  {
    name: "SDR 21 PVC",
    standard: "ASTM D2241",
    from: 0.75,
    walls: [60, 63, 79, 90, 113, 137, 167, 190, 214, 265, 316, 410, 511, 606],
  },
  {
    name: "SDR 26 PVC",
    standard: "ASTM D2241",
    from: 1,
    walls: [60, 64, 73, 91, 110, 135, 154, 173, 214, 255, 332, 413, 490],
  },
  {
    name: "SDR 32.5 PVC",
    standard: "ASTM D2241",
    from: 1.25,
    walls: [60, 60, 73, 88, 108, 123, 138, 171, 204, 265, 331, 392],
  },
  { name: "SDR 41 PVC", standard: "ASTM D2241", from: 3, walls: [85, 98, 110, 136, 162, 210, 262, 311] },
];

function inchRow(nominal: number, outside: number, wall: number): PipeSizeRow {
  return {
    nominal: nominal * INCH,
    outside: outside * INCH,
    wall: wall * INCH,
    bore: (outside - 2 * wall) * INCH,
  };
}

const walled: readonly PipeType[] = WALLS.map(({ name, standard, from, walls }) => {
  const start = OUTSIDE.findIndex(([nominal]) => nominal === from);
  return {
    name,
    sizedIn: "in",
    material: PVC,
    source: `${standard}: outside diameter less twice the least wall, as tabulated in the fluids library 1.3.1`,
    sizes: walls.map((thousandths, index) => {
      const [nominal, outside] = OUTSIDE[start + index] ?? [NaN, NaN];
      return inchRow(nominal, outside, thousandths / 1000);
    }),
  };
});

const schedule40 = walled[0]?.sizes ?? [];

/** Flexible hose fixes only the outside diameter, to fit Schedule 40 fittings. */
const flexible: PipeType = {
  name: "Flexible PVC",
  sizedIn: "in",
  material: FLEXIBLE_PVC,
  source:
    "Outside diameter IPS; the bore is not fixed by a standard and differs by maker: taken as Schedule 40's (common practice, no source)",
  sizes: schedule40.filter((row) => row.nominal <= 4 * INCH),
};

/** Largest size of ASTM D2239, in. */
const LARGEST_D2239 = 6;

/** Pipe controlled by its inside: the bore is Schedule 40's, the wall its share of it. */
const insideControlled: readonly PipeType[] = [7, 9, 11.5, 15, 19].map((ratio) => ({
  name: `PE SIDR ${ratio}`,
  sizedIn: "in",
  material: POLYETHYLENE,
  source: "ASTM D2239 (from memory): bore as Schedule 40, wall = bore / SIDR, at least 0.060 in",
  sizes: schedule40
    .filter((row) => row.nominal <= LARGEST_D2239 * INCH)
    .map((row) => {
      const inside = row.bore / INCH;
      const wall = Math.round(Math.max(inside / ratio, LEAST_WALL) * 1000) / 1000;
      return inchRow(row.nominal / INCH, inside + 2 * wall, wall);
    }),
}));

/** Pipe types sized in inches. */
export const inchPipes: readonly PipeType[] = [...walled, flexible, ...insideControlled];
