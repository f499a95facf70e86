import { FAINT, figure } from "../svg";
import type { ClientFacts } from "./facts";
import type { Feature } from "./feature";
import type { Frame } from "./frame";
import { allAlike, type Labels, lengthText, wrapped } from "./labels";

/** Name, captions, and the notes below. */
export function captions(
  { facts }: Feature,
  { planTop, notesAt, width }: Frame,
  notes: readonly string[],
  labels: Labels,
  bare: boolean,
): void {
  const [name = "", more] = wrapped(facts.name, width - 20, 12);
  if (!bare)
    labels.place(more === undefined ? name : `${name} …`, [[8, 15]], { "font-size": 12, "font-weight": "bold" });
  const { drops } = facts;
  const count = `${drops.length} ${drops.length === 1 ? "drop" : "drops"}`;
  const text = (length: number): string => lengthText(length, facts.system);
  const heights = allAlike(drops)
    ? `of ${text(drops[0] ?? 0)}`
    : `of ${text(Math.min(...drops))} to ${text(Math.max(...drops))}`;
  labels.place(`Section: ${count} ${heights}`, [[8, bare ? 12 : 29]], { fill: FAINT });
  labels.place("Plan", [[8, planTop + 2]], { fill: FAINT });
  notes.forEach((line, index) =>
    labels.place(line, [[8, notesAt + 14 + NOTE_LINE * index]], { "font-size": NOTE_SIZE, fill: FAINT }),
  );
}

const NOTE_SIZE = 10;
/** From one line of the notes to the next. */
export const NOTE_LINE = 13;

/** What the reader must know of the drawing, in lines that fit. */
export function notesOf({ boulders, system }: ClientFacts, width: number): string[] {
  const sizes = boulders.filter(({ count }) => count > 0).map(({ size }) => inSizes(size, system));
  const person = system === "US" ? "5 ft 9 in" : "1.75 m";
  const stones =
    sizes.length > 0
      ? ` Boulders in the sizes counted: ${sizes.join(", ")}\u00a0${system === "US" ? "in" : "mm"}.`
      : "";
  return wrapped(
    `Section and plan are to the same scale; the person is ${person} tall.${stones} Where stones and plants go may vary.`,
    width - 16,
    NOTE_SIZE,
  );
}

function inSizes(size: number, system: ClientFacts["system"]): string {
  return system === "US" ? figure(size * 12, 1) : figure(size * 1000, 0);
}
