import { FONT_SIZE } from "./style";

/** Advance widths of Arial (and of the faces made to its measure) from space to tilde, in thousandths of the letter size; from memory. */
const WIDTHS =
  "278 278 355 556 556 889 667 191 333 333 389 584 278 333 278 278 556 556 556 556 556 556 556 556 556 556 278 278 584 584 584 556 " +
  "1015 667 667 722 722 667 611 778 722 278 500 667 556 833 722 778 667 778 722 667 611 722 667 944 667 667 611 278 278 278 469 556 " +
  "333 556 556 500 556 556 278 556 556 222 222 500 222 833 556 556 556 556 333 500 278 556 500 722 500 500 500 334 260 334 584";
const WIDTH_OF = WIDTHS.split(" ").map(Number);
/** Letters beyond: accented ones, fractions and signs, about as wide as a digit. */
const OTHER = 600;
const BOLD = 1.07;

/** Points of one character of column width, less the cell's own margins: 7 of 96 dots to the inch. */
const POINTS_PER_CHARACTER = (7 * 72) / 96;
/** Hosts draw letters on a grid of dots, a little wider than they are designed. */
const SPARE = 1.03;
const LINE = 1.32;
const EDGES = 4;

/** Width of a text on one line, in points. */
export function textWidth(text: string, size = FONT_SIZE, bold = false): number {
  let sum = 0;
  for (const letter of text) sum += WIDTH_OF[letter.charCodeAt(0) - 32] ?? OTHER;
  return ((sum * size) / 1000) * SPARE * (bold ? BOLD : 1);
}

/** Width of columns of this many characters together, in points. */
export function columnRoom(characters: number): number {
  return characters * POINTS_PER_CHARACTER;
}

/** Lines a text takes when it is broken between words into a width in points. */
export function linesOf(text: string, room: number, size = FONT_SIZE, bold = false): number {
  const space = textWidth(" ", size, bold);
  return text.split("\n").reduce((sum, paragraph) => {
    let lines = 1;
    let used = 0;
    for (const word of paragraph.split(" ")) {
      const width = textWidth(word, size, bold);
      if (used > 0 && used + space + width > room) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? space : 0) + width;
      // A word longer than the line is broken inside.
      while (used > room) {
        lines++;
        used -= room;
      }
    }
    return sum + lines;
  }, 0);
}

/** Height of a row that holds so many lines, in points. */
export function heightOfLines(lines: number, size = FONT_SIZE): number {
  return Math.ceil(lines * size * LINE + EDGES);
}
