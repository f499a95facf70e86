import { attributeOf, childOf, within, type XmlElement } from "./xml";

/** The number of the look of each column that has one, by column counted from 0. */
export function columnStyles(worksheet: XmlElement | undefined): Map<number, string> {
  const styles = new Map<number, string>();
  const columns = childOf(worksheet, "cols");
  for (const element of columns ? within(columns, "col") : []) {
    const style = attributeOf(element, "style");
    if (style === undefined || style === "0") continue;
    const [from, to] = [Number(attributeOf(element, "min")), Number(attributeOf(element, "max"))];
    for (let column = from; column <= Math.min(to, MOST_COLUMNS); column++) styles.set(column - 1, style);
  }
  return styles;
}

/** Columns beyond are not looked at: a file may give one look to all 16,384. */
const MOST_COLUMNS = 256;
