import type { Workbook } from "hucre";
import { parseArea, type Area } from "../../xlsx/address";

/** What a file says beside its cells: what belongs into an input, and where a link leads. */
export class Signposts {
  private readonly hints: { readonly area: Area; readonly text: string }[] = [];
  private readonly links = new Map<string, string>();
  /** Cells whose formula works out where they lead, and shows it. */
  private readonly moving = new Set<string>();

  constructor({ sheets }: Workbook) {
    for (const { name, dataValidations, cells } of sheets) {
      for (const { range, inputTitle, inputMessage } of dataValidations ?? []) {
        const text = [inputTitle, inputMessage].filter(Boolean).join(": ");
        if (text === "") continue;
        for (const part of range.split(" ")) {
          const area = parseArea(part, name);
          if (area) this.hints.push({ area, text });
        }
      }
      for (const [key, { hyperlink, formula }] of cells ?? []) {
        if (formula?.startsWith("HYPERLINK(")) this.moving.add(`${name}!${key}`);
        if (hyperlink?.location) this.links.set(`${name}!${key}`, hyperlink.location);
      }
    }
  }

  /** What to type into a cell, in which unit and range; undefined where the file says nothing. */
  hint(sheet: string, row: number, column: number): string | undefined {
    return this.hints.find(
      ({ area }) =>
        area.sheet === sheet && row >= area.top && row <= area.bottom && column >= area.left && column <= area.right,
    )?.text;
  }

  /** The name or address a cell's link leads to; what the cell shows, where a formula works it out. */
  link(sheet: string, row: number, column: number, shown: () => string): string | undefined {
    const cell = `${sheet}!${row},${column}`;
    return this.moving.has(cell) ? shown() : this.links.get(cell);
  }
}
