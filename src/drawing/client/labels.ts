import { formatFeetInches } from "../../calc/quantity/feetInches";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { element, FAINT, label, line, PAPER, type Attributes } from "../svg";
import type { Box } from "./outline";

/** Size of the lettering, in the drawing's units: points, where it is printed at its own width. */
export const LETTERING = 10;
/** Width of a letter as a share of its size: more than the mean of any plain typeface. */
export const LETTER_WIDTH = 0.56;

/** A length as the client reads it: feet and inches, to the quarter inch below 10 ft, or meters to the centimeter. */
export function lengthText(length: number, system: UnitSystem): string {
  return system === "US"
    ? formatFeetInches(length * 0.3048, length < 10 ? 4 : 1).replace(/^0'-/, "")
    : `${length.toFixed(2)} m`;
}

export function textWidth(text: string, size = LETTERING): number {
  return text.length * size * LETTER_WIDTH;
}

/** Text broken into lines that fit a width. */
export function wrapped(text: string, width: number, size: number): string[] {
  const most = Math.floor(width / (size * LETTER_WIDTH));
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Words that never lie on one another: each asks for room, and what finds none is left out. */
export class Labels {
  private readonly taken: Box[] = [];
  private readonly parts: string[] = [];

  /** Keeps other words away from an area. */
  keepFree(box: Box): void {
    this.taken.push(box);
  }

  /** Writes the text at the first place that is free; says whether there was one. */
  place(text: string, places: readonly (readonly [number, number])[], attributes: Attributes = {}): boolean {
    if (text === "") return false;
    for (const [x, y] of places) {
      const box = boxOf(text, x, y, attributes);
      if (this.taken.some((other) => overlap(other, box))) continue;
      this.taken.push(box);
      this.parts.push(label(x, y, text, { "font-size": LETTERING, ...attributes }));
      return true;
    }
    return false;
  }

  /** Words on a plate of paper, where the area they name has room for them; with a line to what they mean; says whether it had. */
  plate(text: string, [x, y]: readonly [number, number], within: Box, to?: readonly [number, number]): boolean {
    const box = boxOf(text, x, y, { "text-anchor": "middle" });
    if (!holds(within, box) || this.taken.some((other) => overlap(other, box))) return false;
    this.taken.push(box);
    const plate = { x: box.x - 2, y: box.y - 0.5, width: box.width + 4, height: box.height + 1.5, rx: 2 };
    this.parts.push(
      to ? line(x, to[1] < y ? box.y : box.y + box.height, to[0], to[1], { stroke: FAINT, "stroke-width": 0.7 }) : "",
      element("rect", { ...plate, fill: PAPER, "fill-opacity": 0.86 }),
      label(x, y, text, { "font-size": LETTERING, "text-anchor": "middle" }),
    );
    return true;
  }

  /** A dimension along a line, level or upright, with ticks; its text where there is room on it, or behind its end. */
  dimension(from: readonly [number, number], to: readonly [number, number], text: string, behind = false): void {
    const upright = from[0] === to[0];
    const tick = ([x, y]: readonly [number, number]): string =>
      line(x - 2.5, y + 2.5, x + 2.5, y - 2.5, { stroke: FAINT, "stroke-width": 0.9 });
    this.parts.push(line(...from, ...to, { stroke: FAINT, "stroke-width": 0.7 }), tick(from), tick(to));
    const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const room = Math.abs(to[0] - from[0]);
    const width = textWidth(text);
    if (!upright && width + 2 <= room) this.place(text, [[x, y - 3]], { "text-anchor": "middle" });
    if (!upright && width + 2 > room && behind)
      this.place(text, [[Math.max(from[0], to[0]) + 5, y + LETTERING * 0.36]]);
    // Beside an upright line there is room whatever its length.
    if (upright) this.place(text, [[x + 5, y + LETTERING * 0.36]]);
  }

  get drawn(): string {
    return this.parts.join("");
  }
}

/** The room that words take. */
function boxOf(text: string, x: number, y: number, attributes: Attributes): Box {
  const size = Number(attributes["font-size"] ?? LETTERING);
  const width = textWidth(text, size);
  const anchor = attributes["text-anchor"];
  const left = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
  return { x: left, y: y - 0.8 * size, width, height: size };
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function holds(outer: Box, inner: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** Whether values are all the same, as lengths that were worked out can be. */
export function allAlike(values: readonly number[]): boolean {
  return values.every((value) => Math.abs(value - (values[0] ?? 0)) < 1e-6);
}
