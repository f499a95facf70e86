import { element } from "../svg";
import { FACE_BACK, overhang, type Feature } from "./feature";
import type { Frame } from "./frame";
import { at, round, type Point } from "./outline";
import { SHINE, slab, stone, WATER, waterLine } from "./paint";

/** How far the water stands above a lip while it runs. */
export const FILM_FEET = 0.05;

/** Faces, lip stones and falling water. */
export function drops({ facts, faces, lips, levels, foot, random }: Feature, { x, y, scale }: Frame): string {
  const film = FILM_FEET * foot;
  const { width, height } = facts.lipStone;
  const out = overhang(facts, foot);
  return lips
    .map((lip, index) => {
      const [top, below] = [levels[index] ?? 0, levels[index + 1] ?? 0];
      // The stones that the cut runs through stand at the middle of the bed.
      const cut = (faces[index] ?? []).filter(({ from, length }) => from <= 0 && from + length > 0);
      const face = cut.map(({ boulder, bottom }) => {
        const box = { x: x(lip) - FACE_BACK * boulder.across * scale, width: boulder.across * scale };
        return stone({ ...box, y: y(bottom + boulder.high), height: boulder.high * scale }, boulder.seed);
      });
      const lipStone =
        facts.lipStonesPerDrop > 0 && width > 0 && height > 0
          ? slab({ x: x(lip + out - width), y: y(top), width: width * scale, height: height * scale }, 7 + index, {
              class: "lip",
            })
          : "";
      const reach = out + Math.min(0.22 * (top - below), 0.4 * ((lips[index + 1] ?? lip + 9) - lip));
      return (
        element("g", { class: "face" }, face.join("")) +
        lipStone +
        fall(
          [x(lip + out) - 1, y(top + film)],
          [x(lip + reach), y(below + film)],
          Math.max(1.6, 0.15 * foot * scale),
          random,
        ) +
        waterLine(
          `M${at([x(lip + out - Math.max(width, 0.6 * foot)), y(top + film)])}L${at([x(lip + out), y(top + film)])}`,
        ) +
        foam(x(lip + reach), y(below + film), Math.min(0.5 * (top - below), 0.35 * foot) * scale, random)
      );
    })
    .join("");
}

/** A sheet of water from a lip to the pool below. */
function fall(from: Point, to: Point, thick: number, random: () => number): string {
  const drop = to[1] - from[1];
  const edge = (shift: number): string => `${at([to[0] + shift, from[1] + 0.25 * drop])} ${at([to[0] + shift, to[1]])}`;
  const body = `M${at(from)}Q${edge(0)}L${at([to[0] - thick, to[1]])}Q${at([to[0] - thick, from[1] + 0.35 * drop])} ${at([from[0], from[1] + 0.6 * thick])}Z`;
  const streak = thick > 2.2 ? `M${at([from[0] + 1, from[1] + 0.5])}Q${edge(-0.5 * thick + 0.4 * random())}` : "";
  return (
    element("path", { d: body, fill: WATER, "fill-opacity": 0.7, stroke: WATER, "stroke-width": 0.6 }) +
    (streak
      ? element("path", { d: streak, fill: "none", stroke: SHINE, "stroke-width": 0.7, "stroke-opacity": 0.8 })
      : "")
  );
}

/** White water where a fall meets the pool. */
function foam(x: number, y: number, size: number, random: () => number): string {
  if (size < 2) return "";
  const bows = [0.3, 0.45, 0.42, 0.33].map((share) => {
    const wide = size * share * (0.9 + 0.2 * random());
    return `a${round(wide * 0.55)} ${round(wide * 0.55)} 0 0 1 ${round(wide)} 0`;
  });
  return element("path", {
    d: `M${at([x - 0.75 * size, y + 0.6])}${bows.join("")}Z`,
    fill: SHINE,
    stroke: WATER,
    "stroke-width": 0.6,
  });
}
