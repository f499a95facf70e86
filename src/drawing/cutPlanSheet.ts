import type { CutPlanFacts } from "./cutPlanFacts";
import { dimension, element, FAINT, figure, INK, label, line, PAPER } from "./svg";

/** Where every sheet begins. */
export const LEFT = 34;
/** Width of a letter at the size of the labels. */
export const LETTER = 5.6;

type Bought = CutPlanFacts["bought"][number];
/** A cut with its number in the list. */
export type Cut = CutPlanFacts["cuts"][number] & { readonly number: number };

/** One length to buy, its dimensions, and its cuts. */
export function drawSheet(
  { roll, start, length, width }: Bought,
  cuts: readonly Cut[],
  top: number,
  alongScale: number,
  acrossScale: number,
  unit: string,
): string {
  const right = LEFT + length * alongScale;
  const bottom = top + width * acrossScale;
  const frame = { x: LEFT, y: top, width: right - LEFT, height: bottom - top };
  const parts = [
    label(LEFT, top - 25, `Roll ${roll}, ${figure(width)} ${unit} wide`, { "font-weight": "bold" }),
    dimension(LEFT, top - 6, right, top - 6, ""),
    label(Math.max(right, LEFT + 24), top - 10, `${figure(length)} ${unit}`, { "text-anchor": "end" }),
    dimension(LEFT - 8, top, LEFT - 8, bottom, bottom - top > 40 ? figure(width) : ""),
    element("rect", { ...frame, fill: "url(#cut-plan-waste)" }),
  ];
  for (const cut of cuts) {
    const box = {
      x: LEFT + (cut.along - start) * alongScale,
      y: top + cut.across * acrossScale,
      width: cut.length * alongScale,
      height: cut.width * acrossScale,
    };
    parts.push(
      element("rect", { ...box, fill: PAPER, stroke: INK, "stroke-width": 1 }),
      words(cut, box),
      cut.turned ? turnedMark(box) : "",
    );
  }
  return parts.join("") + element("rect", { ...frame, fill: "none", stroke: INK, "stroke-width": 1.5 });
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** As much as a cut has room for: its number, with name, with size below; nothing in a sliver, which the list has. */
function words(cut: Cut, { x, y, width, height }: Box): string {
  const number = `${cut.number}`;
  if (width < LETTER * number.length + 4 || height < 11) return "";
  const middle = { "text-anchor": "middle" };
  const [centre, half] = [x + width / 2, y + height / 2];
  const room = width - 8;
  const size = `${figure(cut.length)} × ${figure(cut.width)}`;
  const fitsSize = height > 30 && size.length * LETTER <= room;
  const name = room > 44 ? ` ${shortened(cut.name, room - (number.length + 1) * LETTER)}` : "";
  return (
    label(centre, fitsSize ? half - 2 : half + 4, number + name, { ...middle, "font-weight": "bold" }) +
    (fitsSize ? label(centre, half + 12, size, middle) : "")
  );
}

/** A bent arrow in the corner of a piece that lies across the roll. */
function turnedMark({ x, y, width, height }: Box): string {
  if (width < 34 || height < 26) return "";
  const [right, top] = [x + width - 5, y + 5];
  return (
    element("path", {
      d: `M${round(right - 9)} ${round(top + 1)}a8 8 0 0 1 8 8`,
      fill: "none",
      stroke: INK,
      "stroke-width": 1.2,
    }) +
    line(right - 1, top + 9, right - 4, top + 6, { "stroke-width": 1.2 }) +
    line(right - 1, top + 9, right + 2, top + 6, { "stroke-width": 1.2 })
  );
}

/** The pattern of what is bought and not used. */
export function wasteHatch(): string {
  const stripe = line(0, 0, 0, 6, { stroke: FAINT, "stroke-width": 1 });
  const pattern = {
    id: "cut-plan-waste",
    width: 6,
    height: 6,
    patternUnits: "userSpaceOnUse",
    patternTransform: "rotate(45)",
  };
  return element("defs", {}, element("pattern", pattern, stripe));
}

/** Half a unit of rounding in the sheet may put a cut a hair before its length. */
export function isOn(cut: Cut, sheet: Bought): boolean {
  const middle = cut.along + cut.length / 2;
  return cut.roll === sheet.roll && middle > sheet.start && middle < sheet.start + sheet.length;
}

/** Text cut to the room it has. */
export function shortened(text: string, room: number): string {
  const most = Math.max(1, Math.floor(room / LETTER));
  return text.length <= most ? text : `${text.slice(0, Math.max(0, most - 1))}…`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
