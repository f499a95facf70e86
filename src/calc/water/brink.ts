import { requireRange } from "../problem";
import { GRAVITY } from "../pipe/friction";

/** What the calculation accepts: m²/s, over each meter of lip. */
export const BRINK_RANGE = { flowPerWidth: { min: 0, max: 100 } } as const;

/** Depth at the brink of a free overfall as a share of the critical depth. */
const BRINK_PER_CRITICAL = 0.715;

/**
 * Thickness of the sheet where it leaves the lip: y = 0.715 (q² / g)^(1/3), 0.715 of the critical depth. The head is
 * measured upstream, where the water still stands; over the lip it draws down.
 *
 * @param flowPerWidth q, m²/s, 0 to 100: flow over each meter of lip
 * @returns m
 * @throws Problem outside this range
 * @example brinkDepth(1) => 0.334; 0.715 × (1 / 9.80665)^(1/3), H. Rouse (1936)
 *
 * Source: H. Rouse, "Discharge characteristics of the free overfall", Civil Engineering 6 (1936) 257, for a level, smooth
 * approach (from memory); rough or steep approaches and narrowed sheets are thinner or thicker.
 */
export function brinkDepth(flowPerWidth: number): number {
  requireRange("flow per width", flowPerWidth, BRINK_RANGE.flowPerWidth.min, BRINK_RANGE.flowPerWidth.max, "m²/s");
  return BRINK_PER_CRITICAL * Math.cbrt(flowPerWidth ** 2 / GRAVITY);
}
