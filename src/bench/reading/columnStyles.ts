import { attribute } from "../saving/package";

/** The number of the look of each column that has one, by column counted from 0. */
export function columnStyles(xml: string): Map<number, string> {
  const styles = new Map<number, string>();
  const columns = xml.slice(0, Math.max(0, xml.search(/<(?:\w+:)?sheetData\b/)));
  for (const [element] of columns.matchAll(/<(?:\w+:)?col\b[^>]*>/g)) {
    const style = attribute(element, "style");
    if (style === undefined || style === "0") continue;
    const [from, to] = [Number(attribute(element, "min")), Number(attribute(element, "max"))];
    for (let column = from; column <= Math.min(to, MOST_COLUMNS); column++) styles.set(column - 1, style);
  }
  return styles;
}

/** Columns beyond are not looked at: a file may give one look to all 16,384. */
const MOST_COLUMNS = 256;
