import pdfmake from "pdfmake/build/pdfmake";
import type { TDocumentDefinitions } from "pdfmake/interfaces";

/** The typeface's two weights, as base64. */
export interface Faces {
  readonly regular: string;
  readonly medium: string;
}

/** A document as the bytes of a PDF, in a browser; the same as `pdfOf` makes where there are files. */
export async function pdfInPage(definition: TDocumentDefinitions, { regular, medium }: Faces): Promise<Uint8Array> {
  pdfmake.addVirtualFileSystem({ "Roboto-Regular.ttf": regular, "Roboto-Medium.ttf": medium });
  // No paper is set in italics; the two weights stand for them all the same.
  const upright = { normal: "Roboto-Regular.ttf", bold: "Roboto-Medium.ttf" };
  pdfmake.setFonts({ Roboto: { ...upright, italics: upright.normal, bolditalics: upright.bold } });
  // Papers are made of a workbook's own words: nothing in them may name an address to be read.
  pdfmake.setUrlAccessPolicy(() => false);
  return new Uint8Array(await pdfmake.createPdf(definition).getBuffer());
}
