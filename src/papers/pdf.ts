import { createRequire } from "node:module";
import path from "node:path";
import pdfmake from "pdfmake";
import type { TDocumentDefinitions } from "pdfmake/interfaces";

/** The typeface that comes with the library. */
const FACES = path.join(path.dirname(createRequire(import.meta.url).resolve("pdfmake/package.json")), "fonts/Roboto");

function face(name: string): string {
  return path.join(FACES, `Roboto-${name}.ttf`);
}

/** A document as the bytes of a PDF, with its typeface in it: the same on every machine and printer. */
export async function pdfOf(definition: TDocumentDefinitions): Promise<Uint8Array> {
  pdfmake.setFonts({
    Roboto: {
      normal: face("Regular"),
      bold: face("Medium"),
      italics: face("Italic"),
      bolditalics: face("MediumItalic"),
    },
  });
  // Papers are made of a workbook's own words: nothing in them may name a file or an address to be read.
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy((file) => path.dirname(file) === FACES);
  return new Uint8Array(await pdfmake.createPdf(definition).getBuffer());
}
