import { element, FAINT } from "../svg";
import { at } from "./outline";

/** Height of the person beside the feature, in feet: 1.75 m, about 5 ft 9 in. */
export const PERSON_FEET = 1.75 / 0.3048;

/** Someone who stands at ease, seen from the front; `x`, `y` is where the feet are. */
export function person(x: number, y: number, height: number): string {
  // Sixteenths of the height: half of each of the eight heads that draftsmen count.
  const u = height / 16;
  const p = (right: number, up: number): string => at([x + right * u, y - up * u]);
  const limb = (d: string, wide: number): string =>
    element("path", {
      d,
      fill: "none",
      stroke: FAINT,
      "stroke-width": wide * u,
      "stroke-linecap": "round",
      "stroke-linejoin": "round",
    });
  const trunk =
    `M${p(-0.45, 14.3)}L${p(-0.45, 13.7)}Q${p(-0.6, 13.2)} ${p(-1.5, 13)}Q${p(-2.15, 12.8)} ${p(-2, 11.8)}L${p(-1.25, 9.6)}` +
    `Q${p(-1.2, 9)} ${p(-1.35, 7.9)}L${p(1.35, 7.9)}Q${p(1.2, 9)} ${p(1.25, 9.6)}L${p(2, 11.8)}` +
    `Q${p(2.15, 12.8)} ${p(1.5, 13)}Q${p(0.6, 13.2)} ${p(0.45, 13.7)}L${p(0.45, 14.3)}Z`;
  return element(
    "g",
    { class: "person" },
    element("path", { d: trunk, fill: FAINT }) +
      limb(`M${p(-0.72, 8.3)}L${p(-0.8, 4.2)}L${p(-0.72, 0.6)}`, 1.25) +
      limb(`M${p(0.72, 8.3)}L${p(1.05, 4.2)}L${p(1.15, 0.6)}`, 1.25) +
      limb(`M${p(-0.8, 0.3)}L${p(-1.15, 0.3)}`, 0.6) +
      limb(`M${p(1.2, 0.3)}L${p(1.6, 0.3)}`, 0.6) +
      limb(`M${p(-1.66, 12.25)}L${p(-2.2, 9.9)}L${p(-2, 7.7)}`, 0.82) +
      limb(`M${p(1.66, 12.25)}L${p(2.3, 9.9)}L${p(1.75, 8.1)}`, 0.82) +
      element("ellipse", { cx: x, cy: y - 14.85 * u, rx: 0.88 * u, ry: 1.15 * u, fill: FAINT }),
  );
}
