/** How rough a stream bottom is. */
export interface BedKind {
  readonly name: string;
  /** Other things people call it. */
  readonly also: readonly string[];
  /** Manning's n: the usual value and the span of the source. The same number in US and SI units. */
  readonly n: number;
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

const CHOW = "V. T. Chow, Open-Channel Hydraulics (1959), Table 5-6";

/**
 * Bed kinds by name. Chow's values hold for water much deeper than its stones; the first row is for the
 * thin water of a cascade, where stones stand out of the flow.
 */
export const BED_KINDS: readonly BedKind[] = [
  {
    name: "cascade over stones",
    also: ["cascade", "thin water over stones"],
    n: 0.1,
    least: 0.06,
    most: 0.15,
    source: "common practice, no source: water no deeper than its stones",
  },
  {
    name: "cobbles and boulders",
    also: ["boulders", "cobbles with boulders"],
    n: 0.05,
    least: 0.04,
    most: 0.07,
    source: `${CHOW}: mountain stream, cobbles with large boulders`,
  },
  {
    name: "gravel and cobbles",
    also: ["gravel", "cobbles"],
    n: 0.04,
    least: 0.03,
    most: 0.05,
    source: `${CHOW}: mountain stream, gravels, cobbles, few boulders`,
  },
  {
    name: "winding, weeds and stones",
    also: ["winding"],
    n: 0.045,
    least: 0.035,
    most: 0.05,
    source: `${CHOW}: natural stream, clean winding, some pools, weeds and stones`,
  },
  {
    name: "clean and straight",
    also: ["clean"],
    n: 0.03,
    least: 0.025,
    most: 0.033,
    source: `${CHOW}: plain stream, clean, straight, full stage`,
  },
  {
    name: "dug, cobble bottom",
    also: [],
    n: 0.04,
    least: 0.03,
    most: 0.05,
    source: `${CHOW}: excavated, earth winding, cobble bottom, clean sides`,
  },
  {
    name: "dug, gravel",
    also: [],
    n: 0.025,
    least: 0.022,
    most: 0.03,
    source: `${CHOW}: excavated, earth, gravel, uniform section, clean`,
  },
  {
    name: "rock, smooth",
    also: ["smooth rock", "flagstone"],
    n: 0.035,
    least: 0.025,
    most: 0.04,
    source: `${CHOW}: rock cut, smooth and uniform`,
  },
  {
    name: "rock, jagged",
    also: ["jagged rock", "rock"],
    n: 0.04,
    least: 0.035,
    most: 0.05,
    source: `${CHOW}: rock cut, jagged and irregular`,
  },
];

/** Manning's n a user may state: from planed boards to a stream choked with stones. */
export const OWN_ROUGHNESS = { min: 0.009, max: 0.3 } as const;
