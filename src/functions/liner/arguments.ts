import { SHEET_RANGE } from "../../calc/liner/liner";
import { optional } from "../contract/optional";
import type { Range } from "../contract/range";
import { number, quantity } from "../contract/scalars";

/** The caution that stands wherever the weight of a cut is read. */
export const CARRYING_CAUTION =
  "A rolled sheet is a limp, awkward load. Count about 50 lb (23 kg) to a person, lift together, and let nobody stand " +
  "in the pit below it.";

/** Sides of a pit, a bed or a cut. */
export const SIDE: Range = SHEET_RANGE.side;

/** Sheet beyond the edge; the default is common practice. */
export const overlap = optional(quantity("length", "Sheet beyond each edge", SHEET_RANGE.overlap), "1 ft | 0.3 m", {
  US: 1,
  SI: 0.3,
});

/** Cuts are rounded up to what a crew measures; a zero from a blank cell cannot mean a step. */
export const roundTo = optional(
  quantity("length", "Round cuts up to a multiple of", { above: 0.0001, max: SHEET_RANGE.roundTo.max }),
  "0.5 ft | 0.1 m",
  { US: 0.5, SI: 0.1 },
);

/** Horizontal run of a pit's sides for one of depth. */
export const sideSlope = optional(
  number("Side slope, horizontal to 1 vertical", { min: 0, max: 10 }),
  "0, upright sides",
  0,
);
