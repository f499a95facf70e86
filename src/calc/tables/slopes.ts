/** The steepest side an excavation under 20 ft (6 m) may have in a soil, horizontal run per 1 of depth. */
export interface SlopeRow {
  readonly name: string;
  readonly slope: number;
  readonly source: string;
}

const OSHA = "29 CFR 1926, subpart P, appendix B, Table B-1 (United States)";

export const STEEPEST_SLOPES: readonly SlopeRow[] = [
  { name: "Stable rock", slope: 0, source: OSHA },
  { name: "Type A: stiff clay", slope: 0.75, source: OSHA },
  { name: "Type B: silt, medium clay, angular gravel", slope: 1, source: OSHA },
  { name: "Type C: sand, gravel, soft or wet soil", slope: 1.5, source: OSHA },
];
