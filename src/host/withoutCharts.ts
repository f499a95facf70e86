import { Package } from "../xlsx/package";

/** The file without its charts, for Excel on the web, which refuses to insert sheets that carry them. */
export function withoutCharts(bytes: Uint8Array): Uint8Array {
  const file = new Package(bytes);
  for (const sheet of file.sheets().values()) {
    for (const { type, target: drawing } of file.relations(sheet).values()) {
      if (!type.endsWith("/drawing")) continue;
      for (const { target } of file.relations(drawing).values()) file.removeWithMentions(target, drawing);
      file.removeWithMentions(drawing, sheet);
      file.removeElements(sheet, ({ name }) => name === "drawing");
    }
  }
  return file.bytes();
}
