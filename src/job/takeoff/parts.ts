/**
 * What a stream cannot do without, as it is named where a price is not complete, with the codes of the takeoff that belong
 * to it. In the order of what matters most: only the first few are named.
 */
const CODES: readonly (readonly [part: string, codes: RegExp])[] = [
  ["liner", /^(LINER|SEAMTAPE)$/],
  ["fabric", /^FABRIC$/],
  ["pump", /^PUMP$/],
  ["pipe", /^(PIPE-\d+|RISER)$/],
  ["fittings", /^FIT-/],
  ["cable", /^CABLE$/],
  ["basin", /^(MODULE|PUMPWELL|TUB|BASINSTONE|BEDDING)$/],
  ["stone", /^(BOULDER|LIPSTONE)$/],
  ["gravel", /^GRAVEL$/],
  ["spillway box", /^SPILLBOX$/],
  ["transport", /^(STONEHAUL|SPOIL|FREIGHT)$/],
  ["fill", /^FILL$/],
];

/** The lines that the user adds to those of the design. */
export const OWN_PART = "your own lines";

/** Parts of the takeoff in the order they are named. */
export const TAKEOFF_PARTS: readonly string[] = [...CODES.map(([part]) => part), OWN_PART];

/** The part a line of the design belongs to. */
export function partOf(code: string): string {
  return CODES.find(([, codes]) => codes.test(code))?.[0] ?? OWN_PART;
}
