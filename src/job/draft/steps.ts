import { known } from "../derived";
import { MOST_DROPS, deriveWater } from "../water";
import type { Sketch } from "./sketch";
import { tape } from "./words";

const INCH = 0.0254;
/** A drop reads as a waterfall from 6 in, and splashes out of its pool from 8 in on. Common practice, no source. */
const DROP = { least: 6 * INCH, aim: 7 * INCH, most: 8 * INCH } as const;

/** As many drops as make each of them 6 to 8 in. */
export function stepsRule(sketch: Sketch): void {
  sketch.assume("dropCount", () => {
    const fall = known(deriveWater(sketch.job).fall) ?? 0;
    const count = Math.min(MOST_DROPS, dropsFor(fall));
    const each = tape(fall / count, sketch.system);
    const [from, over] = sketch.pick(["6", "8 in"], ["150", "200 mm"]);
    return {
      value: count,
      reason:
        count === MOST_DROPS && fall / count > DROP.most
          ? `There is room for ${MOST_DROPS} drops, which makes them ${each} each; ${from} to ${over} is usual.`
          : `${count === 1 ? "One drop" : `${count} drops`} of ${each}: ${from} to ${over} reads as a fall and does not splash over.`,
    };
  });
}

function dropsFor(fall: number): number {
  const fewest = Math.max(1, Math.ceil(fall / DROP.most - 1e-9));
  const most = Math.max(fewest, Math.floor(fall / DROP.least + 1e-9));
  return Math.min(most, Math.max(fewest, Math.round(fall / DROP.aim)));
}
