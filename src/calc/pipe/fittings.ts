import { invalid, missing, plain, requireRange } from "../problem";
import { CRANE_ROUGHNESS, FITTINGS, type Fitting } from "../tables/fittings";
import { GRAVITY, boreArea } from "./friction";

/** Fittings of one kind in a pipe: a name of the table, or a K of its own. */
export interface FittingCount {
  readonly fitting: string | number;
  readonly count: number;
}

/** K a user may state, and counts, in one row. */
export const K_RANGE = { min: 0, max: 1000 } as const;

const byName: ReadonlyMap<string, Fitting> = new Map(
  FITTINGS.flatMap((row) => [row.name, ...row.also].flatMap((name) => [name, key(name)].map((k) => [k, row] as const))),
);

function key(name: string): string {
  return name
    .toLowerCase()
    .replace(/°|degrees?|deg\b/g, " ")
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}

/**
 * The fitting a person names; case, commas and the degree sign do not matter.
 * @throws Problem "missing" that lists the names
 * @example findFitting("gate valve").k => 0.2; EPANET 2.2 User Manual, Table 3.3
 */
export function findFitting(name: string, label = "fitting"): Fitting {
  // Most names come from a list as they stand there.
  const found = byName.get(name) ?? byName.get(key(name));
  if (found) return found;
  throw missing(
    `${label} "${name.trim().slice(0, 40)}" is not known; use one of ${FITTINGS.map((f) => f.name).join("; ")}; or a K number`,
  );
}

/**
 * Friction factor in fully rough flow, which Crane multiplies equivalent lengths with: fT = 0.25 / log₁₀(ε / 3.7 d)².
 *
 * @param bore d, m, above 0
 * @example fullyRoughFactor(0.0525) => 0.019; Crane TP-410: 0.019 for 2 in
 *
 * Source: Crane TP-410, Eq. 2-8, ε = 0.0018 in (commercial steel), whatever the pipe.
 */
export function fullyRoughFactor(bore: number): number {
  if (!(bore > 0)) throw invalid(`bore must be more than 0; got ${plain(bore)} m`);
  return 0.25 / Math.log10(CRANE_ROUGHNESS / (3.7 * bore)) ** 2;
}

/**
 * Loss coefficient of a fitting in a pipe: the table's K, or (L/D) × fT for rows of Crane.
 *
 * @param bore m, above 0
 * @returns K on the velocity in that pipe
 * @example fittingK(findFitting("45 elbow"), 0.0525) => 0.4; EPANET 2.2 User Manual, Table 3.3
 */
export function fittingK(fitting: Fitting, bore: number): number {
  return fitting.k ?? (fitting.lengthRatio ?? 0) * fullyRoughFactor(bore);
}

/**
 * Sum of K of the fittings along a pipe: Σ count × K.
 * The outlet of the route is left out: its one velocity head is counted by the route (routeParts).
 *
 * @param fittings names or K numbers (0 to 1000) with counts
 * @param bore m, above 0
 * @throws Problem for an unknown name or a K outside its range
 * @example sumOfK([{ fitting: "45 elbow", count: 2 }], 0.0525) => 0.8; 2 × 0.4
 */
export function sumOfK(fittings: readonly FittingCount[], bore: number, withOutlet = false): number {
  return fittings.reduce((sum, { fitting, count }) => {
    if (typeof fitting === "number") {
      if (!(fitting >= K_RANGE.min && fitting <= K_RANGE.max)) {
        throw invalid(`K of a fitting must be ${K_RANGE.min} to ${K_RANGE.max}; got ${plain(fitting)}`);
      }
      return sum + fitting * count;
    }
    const row = findFitting(fitting);
    return row.isOutlet && !withOutlet ? sum : sum + fittingK(row, bore) * count;
  }, 0);
}

/** Friction factors (Darcy) a user may state. */
export const FRICTION_FACTOR_RANGE = { min: 0.005, max: 0.1 } as const;

/**
 * Length of straight pipe that takes as much head as a sum of K: L = ΣK d / f.
 *
 * @param k sum of K, 0 or more
 * @param bore d, m, above 0
 * @param factor f, Darcy's, 0.005 to 0.1; Crane's fully rough factor of the bore when left out
 * @returns m
 * @throws Problem for a factor outside its range
 * @example equivalentLength(0.57, 0.0525, 0.019) => 1.575; 0.57 × 0.0525 / 0.019
 *
 * Source: Crane TP-410, Eq. 2-4, K = f L/D.
 */
export function equivalentLength(k: number, bore: number, factor = fullyRoughFactor(bore)): number {
  const { min, max } = FRICTION_FACTOR_RANGE;
  return (k * bore) / requireRange("friction factor", factor, min, max);
}

/**
 * What a sum of K multiplies Q² with: m = K / (2 g A²), so that hm = m Q² = K V² / 2g.
 *
 * @param bore m, above 0
 * @param k sum of K, 0 or more
 * @example minorResistance(1, 0.05) => 13225; 1 / (2 × 9.80665 × 0.00196350²)
 *
 * Source: EPANET 2.2 User Manual, section 3.1, minor losses.
 */
export function minorResistance(k: number, bore: number): number {
  const area = boreArea(bore);
  return k / (2 * GRAVITY * area * area);
}
