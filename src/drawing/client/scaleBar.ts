import { unitLabel } from "../../calc/quantity/measures";
import { element, INK, label, niceStep, PAPER } from "../svg";
import { LETTERING } from "./labels";
import type { Feature } from "./feature";
import type { Frame } from "./frame";

/** A bar to measure by, whatever size the drawing is printed at. */
export function scaleBar({ facts }: Feature, { scale, notesAt, width }: Frame): string {
  const step = niceStep((0.26 * width) / scale, 2);
  const [left, top] = [12, notesAt - 6];
  const parts = [0, 1].map((index) =>
    element("rect", {
      x: left + index * step * scale,
      y: top,
      width: step * scale,
      height: 4,
      fill: index === 0 ? INK : PAPER,
      stroke: INK,
      "stroke-width": 0.7,
      class: "scale",
    }),
  );
  const text = `${2 * step} ${unitLabel("length", facts.system)}`;
  return parts.join("") + label(left + 2 * step * scale + 5, top + 5.5, text, { "font-size": LETTERING });
}
