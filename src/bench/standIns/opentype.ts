/** The grid would read the person's own font files to measure texts in documents; it measures cells by the browser. */
export function parse(): never {
  throw new Error("fonts are not read here");
}
