import { repeatableRandom } from "../../../../src/calc/liner/cutplan/random";

/**
 * Pieces that a strip is cut into by cuts from edge to edge, so that its length is the least they need: a piece chosen
 * by its area is cut again and again, at a fifth to four fifths of a side, whole numbers or not.
 */
export function slicedStrip(seed: number, width: number, length: number, count: number, whole: boolean): number[][] {
  const random = repeatableRandom(seed);
  const pieces: [number, number][] = [[length, width]];
  while (pieces.length < count) {
    let mark = random() * length * width;
    const at = pieces.findIndex(([a, b]) => (mark -= a * b) <= 0);
    const [a, b] = pieces[Math.max(0, at)] as [number, number];
    const along = random() < a / (a + b);
    const side = along ? a : b;
    const exact = side * (0.2 + 0.6 * random());
    const cut = whole ? Math.round(exact) : exact;
    if (cut <= 0 || cut >= side) continue;
    pieces.splice(Math.max(0, at), 1, along ? [cut, b] : [a, cut], along ? [side - cut, b] : [a, side - cut]);
  }
  return pieces;
}
