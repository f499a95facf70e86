/** A rubber liner as sold by its thickness. */
export interface LinerRow {
  /** Thousandths of an inch, as the trade names it. */
  readonly mil: number;
  /** m */
  readonly thickness: number;
  /** kg/m² */
  readonly weight: number;
  readonly source: string;
}

const POUND = 0.45359237;
const FOOT = 0.3048;
const MIL = 25.4e-6;

/** 0.29 lb/ft² at 45 mil; the other thicknesses weigh in proportion. */
const WEIGHT_PER_MIL = (0.29 * POUND) / FOOT ** 2 / 45;

const UFGS = "thickness: UFGS 07 53 00 (EPDM sheet, ASTM D4637), at least 90% of nominal";

function epdm(mil: number, weightSource: string): LinerRow {
  return { mil, thickness: mil * MIL, weight: mil * WEIGHT_PER_MIL, source: `${UFGS}; weight: ${weightSource}` };
}

const REMEMBERED = "0.29 lb/ft² at 45 mil (from memory; density 1.2 gives 0.281)";

/** EPDM sheet. 45 mil is the usual liner (common practice, no source). */
export const EPDM: readonly LinerRow[] = [
  epdm(45, REMEMBERED),
  epdm(60, `in proportion to ${REMEMBERED}`),
  epdm(90, `in proportion to ${REMEMBERED}`),
];

/** The liner weights are given for when nothing else is said, kg/m². */
export const USUAL_LINER_WEIGHT = 45 * WEIGHT_PER_MIL;
