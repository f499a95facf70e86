import type { CHARACTERS } from "../facts/start";
import { total } from "../rows";
import type { Sketch } from "./sketch";
import { tape } from "./words";

type Character = (typeof CHARACTERS)[number];

const INCH = 0.0254;

/** Depth of the sheet over the lip, in: it trickles at 1/2, falls as a sheet at 1, roars near 2. */
const SHEETS: Readonly<Record<Character, { readonly low: number; readonly value: number; readonly high: number }>> = {
  trickle: { low: 0.375, value: 0.5, high: 0.625 },
  "clear sheet": { low: 0.75, value: 1, high: 1.25 },
  loud: { low: 1.5, value: 1.75, high: 2 },
};

/** The lip, the sheet over it and the bed behind it. */
export function lipsRule(sketch: Sketch): void {
  const { system } = sketch;
  const character = sketch.job.waterCharacter;
  sketch.assume("lips", () => {
    const usual = sketch.pick({ value: 0.6096, low: 0.4572, high: 0.9144 }, { value: 0.6, low: 0.45, high: 0.9 });
    return {
      value: [{ width: usual.value }],
      low: [{ width: usual.low }],
      high: [{ width: usual.high }],
      at: (place) => [
        { width: usual.value * ((place < 0 ? usual.low : usual.high) / usual.value) ** (Math.abs(place) / 1.2816) },
      ],
      reason: `Falls by a patio mostly leave a lip of about ${tape(usual.value, system)}; ask how wide they want it.`,
    };
  });
  sketch.assume("sheetWanted", () => {
    if (character === undefined) {
      return {
        value: INCH,
        low: SHEETS.trickle.value * INCH,
        high: SHEETS.loud.low * INCH,
        reason: "A clear sheet is what most clients mean; ask whether it should trickle or be loud.",
      };
    }
    const { low, value, high } = SHEETS[character];
    return {
      value: value * INCH,
      low: low * INCH,
      high: high * INCH,
      reason: `${named(character)} stands about ${tape(value * INCH, system)} deep upstream of the lip.`,
    };
  });
  const lips = total(sketch.job.lips.map(({ width = 0 }) => width));
  sketch.assume("bedWidth", () => ({
    value: lips + sketch.pick(12 * INCH, 0.3),
    low: lips + sketch.pick(6 * INCH, 0.15),
    high: lips + sketch.pick(20 * INCH, 0.5),
    reason: `${tape(sketch.pick(6 * INCH, 0.15), system)} of bed on either side of ${tape(lips, system)} of lip keep the water off the banks.`,
  }));
}

function named(character: Character): string {
  return { trickle: "A trickle", "clear sheet": "A clear sheet", loud: "A loud fall" }[character];
}
