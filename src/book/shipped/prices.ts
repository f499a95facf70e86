import type { CostKind } from "../../calc/money/costKinds";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { ProductKind } from "../kinds";
import type { SaleUnit } from "../units";

/*
 * Every price, pack, minimum, freight and supplier below is our own invention. Sizes of pipe and conductors are those of
 * their standards (calc/tables); sizes of tubs, modules, boxes, rolls and stones are made up like the prices.
 */

interface Terms {
  readonly unit: SaleUnit;
  readonly price: number;
  readonly supplier: string;
  readonly pack?: number;
  readonly minimum?: number;
  readonly waste?: number;
  readonly freight?: number;
  readonly costKind?: CostKind;
  readonly words?: string;
}

/** Pipe by nominal size: in and ft, mm and m. */
export const PIPES: Readonly<
  Record<UnitSystem, { type: string; unit: SaleUnit; pack: number; prices: readonly (readonly [number, number])[] }>
> = {
  US: {
    type: "Sch 40 PVC",
    unit: "ft",
    pack: 10,
    prices: [
      [1.5, 1.85],
      [2, 2.45],
      [2.5, 3.35],
      [3, 4.15],
      [4, 5.9],
      [6, 10.8],
    ],
  },
  SI: {
    type: "PVC-U PN10",
    unit: "m",
    pack: 5,
    prices: [
      [50, 4.1],
      [63, 5.6],
      [75, 7.9],
      [90, 10.7],
      [110, 13.9],
      [160, 26.5],
    ],
  },
};

type FittingKind = "90 elbow" | "90 sweep" | "45 elbow" | "tee" | "ball valve" | "check valve" | "union";

/** Fittings: a price for each of the sizes, in their order. */
export const FITTING_SIZES: Readonly<
  Record<UnitSystem, { sizes: readonly number[]; prices: Readonly<Record<FittingKind, readonly number[]>> }>
> = {
  US: {
    sizes: [1.5, 2, 2.5, 3, 4, 6],
    prices: {
      "90 elbow": [1.75, 2.6, 5.2, 8.9, 16.5, 58],
      "90 sweep": [3.9, 5.7, 7.2, 9.4, 21, 78],
      "45 elbow": [2.1, 3.2, 4.4, 6.1, 14.5, 55],
      tee: [2.6, 3.8, 8.3, 12.4, 24, 88],
      "ball valve": [16, 23, 38, 54, 118, 390],
      "check valve": [21, 29, 46, 63, 132, 415],
      union: [5.1, 6.4, 7.6, 11.9, 26, 84],
    },
  },
  SI: {
    sizes: [50, 63, 75, 90, 110, 160],
    prices: {
      "90 elbow": [3.4, 4.6, 6.2, 8.4, 14.8, 49],
      "90 sweep": [5.2, 6.9, 8.7, 13.1, 24.5, 83],
      "45 elbow": [2.7, 3.9, 5.3, 9.2, 17.2, 57],
      tee: [3.6, 5.4, 7.4, 12.9, 22.5, 76],
      "ball valve": [26, 34, 45, 57, 104, 345],
      "check valve": [32, 43, 53, 66, 121, 370],
      union: [5.8, 6.9, 9.1, 12.6, 24, 77],
    },
  },
};

/** A product with a size, sides or a type: in, gal; mm, L. */
export interface SizedRow extends Terms {
  readonly kind: ProductKind;
  readonly size?: number;
  readonly sides?: readonly [number, number, number];
  readonly type?: string;
}

const POND = { unit: "each", supplier: "Pond yard (demo)" } as const;
const quarry = (supplier: string, unit: SaleUnit) => ({ unit, supplier, pack: 0.5 }) as const;
const KETTLE = quarry("Kettle Ridge Quarry (demo)", "ton");
const HAGEL = quarry("Steinbruch Hagelkamm (demo)", "t");
const WIRE_US = { kind: "cable", unit: "ft", supplier: "Wire counter (demo)", waste: 0.05, pack: 5 } as const;
const WIRE_SI = { kind: "cable", unit: "m", supplier: "Wire counter (demo)", waste: 0.05, pack: 1 } as const;

export const SIZED: Readonly<Record<UnitSystem, readonly SizedRow[]>> = {
  US: [
    { ...POND, kind: "spillway box", size: 16, price: 152 },
    { ...POND, kind: "spillway box", size: 22, price: 189 },
    { ...POND, kind: "spillway box", size: 28, price: 236 },
    { ...POND, kind: "spillway box", size: 36, price: 312 },
    { ...POND, kind: "spillway box", size: 48, price: 455 },
    { ...POND, kind: "tub", size: 95, sides: [48, 36, 18], price: 312 },
    { ...POND, kind: "tub", size: 170, sides: [60, 48, 20], price: 448 },
    { ...POND, kind: "tub", size: 290, sides: [72, 60, 24], price: 735, freight: 60 },
    { ...POND, kind: "tub", size: 460, sides: [96, 66, 26], price: 1090, freight: 60 },
    { ...POND, kind: "void module", sides: [24, 18, 9], price: 46.5 },
    { ...POND, kind: "void module", sides: [27, 16, 18], price: 63 },
    { ...KETTLE, kind: "gravel", type: "washed gravel", price: 57.5 },
    { ...KETTLE, kind: "gravel", type: "pea gravel", price: 54 },
    { ...KETTLE, kind: "gravel", type: "river stone", price: 71 },
    { ...KETTLE, kind: "gravel", type: "crushed stone", price: 46 },
    { ...KETTLE, kind: "gravel", type: "cobble", price: 66 },
    { ...KETTLE, kind: "basin stone", type: "river stone", price: 49 },
    { ...KETTLE, kind: "basin stone", type: "washed gravel", price: 47 },
    { ...KETTLE, kind: "basin stone", type: "crushed stone", price: 41 },
    { ...KETTLE, kind: "basin stone", type: "cobble", price: 52 },
    { ...KETTLE, kind: "boulder", size: 7, price: 150 },
    { ...KETTLE, kind: "boulder", size: 10, price: 164 },
    { ...KETTLE, kind: "boulder", size: 13, price: 184 },
    { ...KETTLE, kind: "boulder", size: 16, price: 196 },
    { ...KETTLE, kind: "boulder", size: 20, price: 208 },
    { ...KETTLE, kind: "boulder", size: 26, price: 229 },
    { ...KETTLE, kind: "boulder", size: 34, price: 248 },
    { ...KETTLE, unit: "each", pack: 1, kind: "lip stone", sides: [24, 16, 4], price: 52 },
    { ...KETTLE, unit: "each", pack: 1, kind: "lip stone", sides: [32, 20, 5], price: 84 },
    { ...KETTLE, unit: "each", pack: 1, kind: "lip stone", sides: [40, 24, 6], price: 146 },
    { ...KETTLE, unit: "each", pack: 1, kind: "lip stone", sides: [48, 30, 9], price: 295 },
    { ...KETTLE, unit: "each", pack: 1, kind: "lip stone", sides: [60, 48, 12], price: 690 },
    { ...WIRE_US, type: "14 AWG", price: 0.92 },
    { ...WIRE_US, type: "12 AWG", price: 1.34 },
    { ...WIRE_US, type: "10 AWG", price: 2.05 },
    { ...WIRE_US, type: "8 AWG", price: 3.3 },
    { ...WIRE_US, type: "6 AWG", price: 4.95 },
  ],
  SI: [
    { ...POND, kind: "spillway box", size: 400, price: 139 },
    { ...POND, kind: "spillway box", size: 550, price: 171 },
    { ...POND, kind: "spillway box", size: 700, price: 214 },
    { ...POND, kind: "spillway box", size: 900, price: 289 },
    { ...POND, kind: "spillway box", size: 1200, price: 402 },
    { ...POND, kind: "tub", size: 350, sides: [1200, 900, 450], price: 284 },
    { ...POND, kind: "tub", size: 650, sides: [1500, 1200, 500], price: 412 },
    { ...POND, kind: "tub", size: 1100, sides: [1800, 1500, 600], price: 678, freight: 55 },
    { ...POND, kind: "tub", size: 1750, sides: [2400, 1650, 650], price: 995, freight: 55 },
    { ...POND, kind: "void module", sides: [600, 600, 250], price: 41 },
    { ...POND, kind: "void module", sides: [700, 400, 450], price: 57 },
    { ...HAGEL, kind: "gravel", type: "washed gravel", price: 43 },
    { ...HAGEL, kind: "gravel", type: "pea gravel", price: 40.5 },
    { ...HAGEL, kind: "gravel", type: "river stone", price: 54 },
    { ...HAGEL, kind: "gravel", type: "crushed stone", price: 36 },
    { ...HAGEL, kind: "gravel", type: "cobble", price: 49.5 },
    { ...HAGEL, kind: "basin stone", type: "river stone", price: 38.5 },
    { ...HAGEL, kind: "basin stone", type: "washed gravel", price: 37 },
    { ...HAGEL, kind: "basin stone", type: "crushed stone", price: 32 },
    { ...HAGEL, kind: "basin stone", type: "cobble", price: 41 },
    { ...HAGEL, kind: "boulder", size: 180, price: 139 },
    { ...HAGEL, kind: "boulder", size: 250, price: 153 },
    { ...HAGEL, kind: "boulder", size: 320, price: 170 },
    { ...HAGEL, kind: "boulder", size: 400, price: 180 },
    { ...HAGEL, kind: "boulder", size: 500, price: 191 },
    { ...HAGEL, kind: "boulder", size: 650, price: 209 },
    { ...HAGEL, kind: "boulder", size: 850, price: 231 },
    { ...HAGEL, unit: "each", pack: 1, kind: "lip stone", sides: [600, 400, 100], price: 56 },
    { ...HAGEL, unit: "each", pack: 1, kind: "lip stone", sides: [800, 480, 120], price: 92 },
    { ...HAGEL, unit: "each", pack: 1, kind: "lip stone", sides: [1000, 600, 150], price: 154 },
    { ...HAGEL, unit: "each", pack: 1, kind: "lip stone", sides: [1200, 750, 220], price: 312 },
    { ...HAGEL, unit: "each", pack: 1, kind: "lip stone", sides: [1600, 1200, 300], price: 710 },
    { ...WIRE_SI, type: "1.5 mm2", price: 2.1 },
    { ...WIRE_SI, type: "2.5 mm2", price: 3.05 },
    { ...WIRE_SI, type: "4 mm2", price: 4.6 },
    { ...WIRE_SI, type: "6 mm2", price: 6.8 },
    { ...WIRE_SI, type: "10 mm2", price: 11.2 },
  ],
};

/** Liner and fabric by the width of the roll and its length; ft, m. */
interface SheetRow extends Omit<Terms, "supplier"> {
  readonly kind: "liner" | "fabric";
  readonly width: number;
  readonly longest?: number;
  readonly type?: string;
}

export const SHEETS: Readonly<Record<UnitSystem, readonly SheetRow[]>> = {
  US: [
    { kind: "liner", type: "EPDM 45 mil", width: 10, longest: 100, unit: "ft", price: 9.5, pack: 0.01 },
    { kind: "liner", type: "EPDM 45 mil", width: 15, longest: 100, unit: "ft", price: 14.6, pack: 0.01 },
    { kind: "liner", type: "EPDM 45 mil", width: 20, longest: 100, unit: "ft²", price: 1.02, pack: 0.01 },
    { kind: "liner", type: "EPDM 45 mil", width: 25, longest: 100, unit: "ft²", price: 1.09, pack: 0.01 },
    { kind: "fabric", width: 6, longest: 300, unit: "ft²", price: 0.34 },
    { kind: "fabric", width: 15, longest: 300, unit: "ft²", price: 0.37 },
  ],
  SI: [
    { kind: "liner", type: "EPDM 1.14 mm", width: 3, longest: 30, unit: "m", price: 29, pack: 0.01 },
    { kind: "liner", type: "EPDM 1.14 mm", width: 4.3, longest: 30, unit: "m", price: 42, pack: 0.01 },
    { kind: "liner", type: "EPDM 1.14 mm", width: 6.2, longest: 30, unit: "m²", price: 10.4, pack: 0.01 },
    { kind: "liner", type: "EPDM 1.14 mm", width: 7.6, longest: 30, unit: "m²", price: 11.1, pack: 0.01 },
    { kind: "fabric", width: 2, longest: 50, unit: "m²", price: 3.1 },
    { kind: "fabric", width: 4, longest: 50, unit: "m²", price: 3.3 },
  ],
};

/** What has no size. */
interface PlainRow extends Terms {
  readonly kind: ProductKind;
}

export const PLAIN: Readonly<Record<UnitSystem, readonly PlainRow[]>> = {
  US: [
    { ...POND, kind: "pump well", price: 187, words: "Pump well with lid" },
    { kind: "seam tape", unit: "ft", price: 1.9, pack: 25, supplier: "Pond yard (demo)" },
    { kind: "stone delivery", unit: "load", price: 115, costKind: "hauling", supplier: "Larkspur Hauling (demo)" },
    { kind: "spoil haul", unit: "load", price: 210, costKind: "hauling", supplier: "Larkspur Hauling (demo)" },
    { kind: "fill", unit: "yd³", price: 27, pack: 0.5, supplier: "Larkspur Hauling (demo)" },
    { kind: "bedding sand", unit: "yd³", price: 41, pack: 0.5, supplier: "Larkspur Hauling (demo)" },
  ],
  SI: [
    { ...POND, kind: "pump well", price: 169, words: "Pump well with lid" },
    { kind: "seam tape", unit: "m", price: 5.8, pack: 7.5, supplier: "Pond yard (demo)" },
    { kind: "stone delivery", unit: "load", price: 105, costKind: "hauling", supplier: "Fuhrbetrieb Eschweg (demo)" },
    { kind: "spoil haul", unit: "load", price: 145, costKind: "hauling", supplier: "Fuhrbetrieb Eschweg (demo)" },
    { kind: "fill", unit: "m³", price: 24, pack: 0.5, supplier: "Fuhrbetrieb Eschweg (demo)" },
    { kind: "bedding sand", unit: "m³", price: 36, pack: 0.5, supplier: "Fuhrbetrieb Eschweg (demo)" },
  ],
};
