/** The kind of edge the water leaves, as a weir. */
export interface LipShape {
  readonly name: string;
  /** Other things people call it. */
  readonly also: readonly string[];
  readonly about: string;
  /** C of Q = C (L - 0.1 n H) H^1.5, m^½/s. */
  readonly coefficient: number;
  /** n: ends where the sheet draws in from a side wall, 0 or 2. */
  readonly endContractions: 0 | 2;
  /** A thin edge, whose flow follows the height of the crest where that is known. */
  readonly thin?: true;
  readonly source: string;
}

/** Turns a coefficient in ft^½/s, as the books print it, into m^½/s. */
export const COEFFICIENT_FROM_US = Math.sqrt(0.3048);

const SWMM = "EPA SWMM Reference Manual vol. II (Rossman, EPA/600/R-17/111, 2017)";

const inUS = (coefficient: number): number => coefficient * COEFFICIENT_FROM_US;

/** Lip shapes by name. The first is the usual one: a flat stone, or the flat lip of a spillway box. */
export const LIP_SHAPES: readonly LipShape[] = [
  {
    name: "broad",
    also: ["flat", "flat stone", "stone", "spillway box", "box"],
    about: "flat stone or flat box lip",
    coefficient: inUS(2.63),
    endContractions: 0,
    source: `${SWMM}, Table 6-3 after Brater & King (1976): 2.63 ft^½/s, where its coefficients settle`,
  },
  {
    name: "broad, deep",
    also: ["deep stone"],
    about: "flat stone about 2 ft (0.6 m) deep along the water",
    coefficient: inUS(2.54),
    endContractions: 0,
    source: `${SWMM}, Table 6-3 after Brater & King (1976): head 0.2 ft, crest breadth 2 ft`,
  },
  {
    name: "broad, smooth",
    also: ["smooth"],
    about: "flat lip without any friction: the most a broad lip can pass",
    coefficient: inUS(3.087),
    endContractions: 0,
    source: "Critical depth over the lip, C = 2/3 √(2g/3); any hydraulics text",
  },
  {
    name: "sharp",
    also: ["thin", "thin edge", "suppressed"],
    about: "thin edge between walls that lead the water to it",
    coefficient: inUS(3.33),
    endContractions: 0,
    thin: true,
    source: `J. B. Francis, suppressed weir, 3.33 ft^½/s: ${SWMM}, section 6.3.2`,
  },
  {
    name: "sharp, narrowed",
    also: ["narrowed", "contracted", "sharp, contracted"],
    about: "thin edge narrower than its pool, so that the sheet draws in at both ends",
    coefficient: inUS(3.33),
    endContractions: 2,
    thin: true,
    source: "J. B. Francis, contracted weir: Q = 3.33 (L - 0.2 H) H^1.5",
  },
];

/** Coefficients a user may state, m^½/s (2.0 to 4.0 ft^½/s): from a rough thick stone to the best rounded crest. */
export const OWN_COEFFICIENT = { min: inUS(2), max: inUS(4) } as const;
