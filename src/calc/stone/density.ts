import { findNamed, namedRows } from "../named";
import { invalid, plain, requireRange } from "../problem";
import { defaultUnit, toInside, unitLabel } from "../quantity/measures";
import { readQuantity } from "../quantity/readQuantity";
import type { UnitSystem } from "../quantity/unitSystem";
import type { DensityRow } from "../tables/densities";
import { ROCKS } from "../tables/rocks";
import { STONES } from "../tables/stones";

/** Which of the two things a density can be of: loose stone with voids, or solid rock. */
export type DensityKind = "stone" | "rock";

/** What a material weighs, kg/m³: the usual figure, and what it lies between. */
export interface Density {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
}

interface Kind {
  readonly table: ReturnType<typeof namedRows<DensityRow>>;
  /** kg/m³ */
  readonly range: { readonly min: number; readonly max: number };
  readonly inWords: string;
  readonly example: string;
}

const KINDS: Readonly<Record<DensityKind, Kind>> = {
  stone: {
    table: namedRows(STONES),
    range: { min: 600, max: 2500 },
    inWords: "0.6 to 2.5 t/m³ (38 to 156 lb/ft³, 0.5 to 2.1 ton/yd³)",
    example: '"1.35 ton/yd3" or "1.45 t/m3"',
  },
  rock: {
    table: namedRows(ROCKS),
    range: { min: 900, max: 3500 },
    inWords: "0.9 to 3.5 t/m³ (56 to 218 lb/ft³)",
    example: '"165 lb/ft3" or "2.65 t/m3"',
  },
};

/**
 * The names a kind of density can be asked for by.
 *
 * @example densityNames("rock").includes("granite") => true; a row of the table
 */
export function densityNames(kind: DensityKind): readonly string[] {
  return KINDS[kind].table.rows.map((row) => row.name);
}

/**
 * Throws unless a density (kg/m³) lies in the physical range of its kind: loose stone 600 to 2500, solid rock 900 to 3500.
 *
 * @example requireDensity("rock", 2600) => 2600; within its range
 */
export function requireDensity(kind: DensityKind, density: number): number {
  const { range } = KINDS[kind];
  return requireRange(`${kind} density`, density, range.min, range.max, "kg/m³");
}

/**
 * The density a person means: a row of the table by its name, or a figure of his own, such as the quarry's, which has
 * no range.
 *
 * @param written a name ("crushed stone"), a figure with its unit ("1.35 ton/yd3"), or a figure in the default unit
 * @param system its default unit: US lb/ft³, SI t/m³
 * @param label names the argument in sentences
 * @returns kg/m³, low, usual and high: loose stone 600 to 2500, solid rock 900 to 3500
 * @throws Problem for an unknown name, a unit that is not a density's, or a figure outside the range
 * @example readDensityRange("rock", "2600 kg/m3", "SI", "rock").high => 2600; a figure of one's own has no range
 */
export function readDensityRange(
  kind: DensityKind,
  written: string | number,
  system: UnitSystem,
  label: string,
): Density {
  const { table, range, inWords, example } = KINDS[kind];
  const text = String(written);
  if (!/^\s*[-+.,]?\d/.test(text)) {
    return findNamed(table, text, label, `or a figure with its unit, such as ${example}`);
  }
  const figure = readQuantity(text, defaultUnit("density", system), label);
  const density = toInside("density", figure, system);
  if (!(density >= range.min && density <= range.max)) {
    throw invalid(
      `${label} must weigh ${inWords}; got ${plain(figure)} ${unitLabel("density", system)}; ` +
        `write the unit behind a figure, such as ${example}`,
    );
  }
  return exactly(density);
}

/**
 * The usual figure of readDensityRange, kg/m³.
 *
 * @example readDensity("rock", 2.6, "SI", "rock") => 2600; 2.6 t/m³
 */
export function readDensity(kind: DensityKind, written: string | number, system: UnitSystem, label: string): number {
  return readDensityRange(kind, written, system, label).usual;
}

/**
 * A density that is known as one figure.
 *
 * @example exactly(2600).low => 2600; one figure
 */
export function exactly(density: number): Density {
  return { low: density, usual: density, high: density };
}
