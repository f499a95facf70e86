import type { Sketch } from "./sketch";
import { nominal } from "./words";

/** The spillway box: the narrowest on offer that is as wide as the lip, or several where none is. */
export function boxesRule(sketch: Sketch): void {
  const { offers, job, system } = sketch;
  const lip = Math.max(0, ...job.lips.map(({ width = 0 }) => width));
  const widest = offers.boxes[offers.boxes.length - 1];
  if (widest === undefined || !(lip > 0)) return;
  const count = Math.ceil(lip / widest - 1e-6);
  const width = offers.boxes.find((box) => box * count >= lip * (1 - 1e-6)) ?? widest;
  if (count > 1) {
    sketch.assume("spillBoxes", () => ({
      value: count,
      reason: `No box is as wide as a lip of ${nominal(lip, system)}: ${count} side by side are.`,
    }));
  }
  sketch.assume("boxWidth", () => ({
    value: width,
    reason: `The narrowest sold that ${count > 1 ? `with ${count} of them is` : "is"} as wide as the lip.`,
  }));
}
