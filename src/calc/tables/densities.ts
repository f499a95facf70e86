/** What a material weighs per volume; kg/m³. */
export interface DensityRow {
  readonly name: string;
  /** Other things people call it. */
  readonly also: readonly string[];
  readonly low: number;
  /** The figure taken unless the user gives his own. */
  readonly usual: number;
  readonly high: number;
  readonly source: string;
}

/** One lb/ft³ in kg/m³: 0.45359237 kg / (0.3048 m)³ (NIST SP 811, appendix B.8). */
export const LB_PER_FT3 = 0.45359237 / 0.3048 ** 3;

/** A row of a table that its source states in lb/ft³. */
export function inPounds(row: DensityRow): DensityRow {
  return { ...row, low: row.low * LB_PER_FT3, usual: row.usual * LB_PER_FT3, high: row.high * LB_PER_FT3 };
}
