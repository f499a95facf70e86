/** How a sharp crest of some width in its pool is calculated after Kindsvater and Carter. */
export interface SharpCrestRow {
  /** Width of the crest over the width of the pool it stands in. */
  readonly widthRatio: number;
  /** Ce = slope × H/P + base, ft^½/s as printed. */
  readonly slope: number;
  readonly base: number;
  /** What is added to the width, mm. */
  readonly addedWidth: number;
}

/**
 * Ce: USBR Water Measurement Manual (2001), as in the EPA SWMM Reference Manual vol. II (2017), Table 6-2.
 * Added width: ISO 1438, at 0.2, 0.4, 0.6, 0.8 and 1 (from memory); 0.5, 0.7 and 0.9 lie on the line between.
 */
export const SHARP_CRESTS: readonly SharpCrestRow[] = [
  { widthRatio: 0.2, slope: -0.0087, base: 3.152, addedWidth: 2.4 },
  { widthRatio: 0.4, slope: 0.0317, base: 3.164, addedWidth: 2.7 },
  { widthRatio: 0.5, slope: 0.0612, base: 3.173, addedWidth: 3.15 },
  { widthRatio: 0.6, slope: 0.0995, base: 3.178, addedWidth: 3.6 },
  { widthRatio: 0.7, slope: 0.1602, base: 3.182, addedWidth: 3.9 },
  { widthRatio: 0.8, slope: 0.2376, base: 3.189, addedWidth: 4.2 },
  { widthRatio: 0.9, slope: 0.3447, base: 3.205, addedWidth: 1.65 },
  { widthRatio: 1, slope: 0.4, base: 3.22, addedWidth: -0.9 },
];

/** Added to the head, m: 0.003 ft (USBR Water Measurement Manual, chapter 7). */
export const ADDED_HEAD = 0.003 * 0.3048;
