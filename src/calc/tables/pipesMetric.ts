import { POLYETHYLENE, PVC, type PipeMaterial } from "./pipeMaterials";
import type { PipeType } from "./pipeSizes";

const MILLIMETRE = 0.001;

/** Outside diameters of metric pipe, mm. ISO 161-1. */
const OUTSIDE = [20, 25, 32, 40, 50, 63, 75, 90, 110, 125, 140, 160, 180, 200, 225, 250, 280, 315];

/** Which pipe series (S) gives a pressure class, from which outside diameter on. */
interface Series {
  readonly from: number;
  /** Step n of the R10 preferred numbers: S = 10^(n/10). */
  readonly r10: number;
}

interface Family {
  readonly name: string;
  /** Its standard dimension ratio, where one stands for the whole family. */
  readonly also?: string;
  readonly material: PipeMaterial;
  /** Least wall of the standard, mm. */
  readonly leastWall: number;
  readonly series: readonly Series[];
  /** Sizes whose printed wall departs from the rule: outside diameter to wall, mm. */
  readonly printed?: ReadonlyMap<number, number>;
  readonly source: string;
}

const PVC_U_SOURCE =
  "ISO 1452-2, Tables 2 and 3 (from memory), reproduced by the ISO 4065 wall rule; " +
  "the series changes at 110 mm because the design coefficient drops from 2.5 to 2.0";
const PE_SOURCE =
  "ISO 4427-2, Table 2, by the ISO 4065 wall rule, which reproduces the cells of MS 1058-2:2005 that were read; PE100, design coefficient 1.25";

const FAMILIES: readonly Family[] = [
  {
    name: "PVC-U PN6",
    material: PVC,
    leastWall: 1.5,
    series: [
      { from: 40, r10: 12 }, // S 16, SDR 33
      { from: 110, r10: 13 }, // S 20, SDR 41
    ],
    source: PVC_U_SOURCE,
  },
  {
    name: "PVC-U PN10",
    material: PVC,
    leastWall: 1.5,
    series: [
      { from: 25, r10: 10 }, // S 10, SDR 21
      { from: 110, r10: 11 }, // S 12.5, SDR 26
    ],
    source: PVC_U_SOURCE,
  },
  {
    name: "PVC-U PN16",
    material: PVC,
    leastWall: 1.5,
    series: [
      { from: 20, r10: 8 }, // S 6.3, SDR 13.6
      { from: 110, r10: 9 }, // S 8, SDR 17
    ],
    source: PVC_U_SOURCE,
  },
  {
    name: "PE100 PN6",
    also: "SDR 26",
    material: POLYETHYLENE,
    leastWall: 2,
    series: [{ from: 40, r10: 11 }], // S 12.5, SDR 26
    source: PE_SOURCE,
  },
  {
    name: "PE100 PN10",
    also: "SDR 17",
    material: POLYETHYLENE,
    leastWall: 2,
    series: [{ from: 25, r10: 9 }], // S 8, SDR 17
    source: PE_SOURCE,
  },
  {
    name: "PE100 PN12.5",
    also: "SDR 13.6",
    material: POLYETHYLENE,
    leastWall: 2,
    series: [{ from: 25, r10: 8 }], // S 6.3, SDR 13.6
    source: PE_SOURCE,
  },
  {
    name: "PE100 PN16",
    also: "SDR 11",
    material: POLYETHYLENE,
    leastWall: 2,
    series: [{ from: 20, r10: 7 }], // S 5, SDR 11
    printed: new Map([[32, 3]]), // the rule gives 2.9; ISO 4427-2 prints 3.0 (from memory)
    source: PE_SOURCE,
  },
];

/**
 * Least wall of metric pipe: e = d / (2 S + 1), S the exact R10 preferred number 10^(n/10), rounded to 0.01 mm
 * and then up to the next 0.1 mm.
 * Dividing by the rounded SDR instead is wrong: 110 mm SDR 17 has 6.6 mm, not 110 / 17 = 6.5 mm.
 * Units: mm. Source: ISO 4065, Table 1; the rounding inferred from MS 1058-2:2005 Table 2.
 *
 * @example metricWall(110, 9) => 6.6; MS 1058-2:2005, Table 2: 110 mm, SDR 17
 */
export function metricWall(outside: number, r10: number): number {
  const series = 10 ** (r10 / 10);
  const hundredths = Math.round((outside / (2 * series + 1)) * 100);
  return Math.ceil(hundredths / 10) / 10;
}

/** Pipe types sized by their outside diameter in mm. */
export const metricPipes: readonly PipeType[] = FAMILIES.map((family) => ({
  name: family.name,
  ...(family.also && { also: family.also }),
  sizedIn: "mm",
  material: family.material,
  source: family.source,
  sizes: OUTSIDE.flatMap((outside) => {
    const series = family.series.filter(({ from }) => from <= outside).at(-1);
    if (!series) return [];
    const wall = family.printed?.get(outside) ?? Math.max(family.leastWall, metricWall(outside, series.r10));
    return [
      {
        nominal: outside * MILLIMETRE,
        outside: outside * MILLIMETRE,
        wall: wall * MILLIMETRE,
        bore: (outside - 2 * wall) * MILLIMETRE,
      },
    ];
  }),
}));
