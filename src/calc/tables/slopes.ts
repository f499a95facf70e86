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

const DIN = "DIN 4124 (Germany), from memory";

/** The same by the standard of a metric country: 80°, 60° and 45° to the level, as run per 1 of depth. */
export const STEEPEST_SLOPES_DIN: readonly SlopeRow[] = [
  { name: "Rock", slope: 0.18, source: DIN },
  { name: "Stiff or half-solid clay and loam", slope: 0.58, source: DIN },
  { name: "Sand, gravel, soft clay and loam", slope: 1, source: DIN },
];
