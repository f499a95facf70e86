import { columnNumber, overlap, parseArea, type Area } from "./address";
import type { Package } from "./package";
import { attributeOf, childOf, escapeText, walkXml, within, type Piece, type XmlElement } from "./xml";

/** Longest range of a chart that is stored with it. */
const MOST_POINTS = 5_000;

/**
 * Stores with each chart the values of the cells it draws, as they stand in the file: previews and programs that do not
 * calculate draw from these alone (ECMA-376 part 1, 21.2.2.121 numCache and 21.2.2.201 strCache).
 */
export function storeChartValues(file: Package): void {
  const charts = file
    .names()
    .filter((name) => /\/charts\/chart\d*\.xml$/i.test(name) && isReadable(file, name))
    .map((part) => ({ part, references: referencesOf(file.xml(part)) }));
  const areas = charts.flatMap(({ references }) => references.map(({ area }) => area));
  const sheets = file.sheets();
  const shown = new Map<string, Map<string, string | number>>();
  for (const sheet of new Set(areas.map((area) => area.sheet))) {
    const part = sheets.get(sheet);
    const drawn = areas.filter((area) => area.sheet === sheet);
    if (part !== undefined)
      shown.set(
        sheet,
        valuesIn(file.text(part), drawn, () => file.sharedTexts()),
      );
  }
  for (const { part, references } of charts) {
    const xml = file.text(part);
    const pieces = references.flatMap(({ element, area }): Piece[] => {
      const values = shown.get(area.sheet);
      if (!values) return [];
      const kept = element.children.filter(({ name }) => name === "f" || name === "extLst");
      const [formula, ...rest] = kept.map(({ start, end }) => xml.slice(start, end));
      const text = [formula, cacheXml(element, area, values), ...rest].join("");
      return [{ from: element.opened, to: element.closing, text }];
    });
    file.change(part, pieces);
  }
}

/** A chart that cannot be read is kept as it is: it must not keep a job from being saved. */
function isReadable(file: Package, part: string): boolean {
  try {
    return file.xml(part) !== undefined;
  } catch {
    return false;
  }
}

interface Reference {
  readonly element: XmlElement;
  readonly area: Area;
}

/** What a chart draws from cells, as far as it is stored. */
function referencesOf(root: XmlElement | undefined): Reference[] {
  if (!root) return [];
  return [...within(root, "numRef"), ...within(root, "strRef")].flatMap((element) => {
    const area = parseArea(childOf(element, "f")?.text ?? "");
    return area && pointsOf(area) <= MOST_POINTS ? [{ element, area }] : [];
  });
}

function pointsOf({ top, left, bottom, right }: Area): number {
  return (bottom - top + 1) * (right - left + 1);
}

function cacheXml({ name, prefix }: XmlElement, area: Area, values: ReadonlyMap<string, string | number>): string {
  const numbers = name === "numRef";
  const points: string[] = [];
  let index = 0;
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++, index++) {
      const value = values.get(`${row},${column}`);
      // A blank or a text is no point of a line of numbers.
      if (value === undefined || (numbers && typeof value !== "number")) continue;
      points.push(`<${prefix}pt idx="${index}"><${prefix}v>${escapeText(String(value))}</${prefix}v></${prefix}pt>`);
    }
  }
  const cache = numbers ? "numCache" : "strCache";
  const format = numbers ? `<${prefix}formatCode>General</${prefix}formatCode>` : "";
  return `<${prefix}${cache}>${format}<${prefix}ptCount val="${index}"/>${points.join("")}</${prefix}${cache}>`;
}

/** What the cells of these areas of one sheet hold, by "row,column" counted from 0; errors and blanks hold nothing. */
function valuesIn(xml: string, areas: readonly Area[], texts: () => readonly string[]): Map<string, string | number> {
  const values = new Map<string, string | number>();
  const [sheet = ""] = areas.map((area) => area.sheet);
  walkXml(xml, {
    closed(element) {
      if (element.name === "row") return "forget";
      if (element.name !== "c") return undefined;
      const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/i.exec(attributeOf(element, "r") ?? "") ?? [];
      const [row, column] = [Number(digits) - 1, columnNumber(letters)];
      const here = { sheet, top: row, left: column, bottom: row, right: column };
      const type = attributeOf(element, "t") ?? "n";
      const stored = childOf(element, "v")?.text ?? "";
      if (stored !== "" && type !== "e" && areas.some((area) => overlap(area, here))) {
        const text = type === "s" ? (texts()[Number(stored)] ?? "") : stored;
        values.set(`${row},${column}`, type === "n" ? Number(stored) : text);
      }
      return "forget";
    },
  });
  return values;
}
