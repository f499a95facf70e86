import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/**
 * The same workbook as other programs may write it by ECMA-376 part 2: the workbook part elsewhere, targets relative to
 * it, every element with a prefix, attributes in single quotes. When `encoded`, the part also has a space in its name and
 * is called by another case; the reading library finds it then no more.
 */
export function oddlyPlaced(bytes: Uint8Array, encoded = false): Uint8Array {
  const odd: Record<string, Uint8Array> = {};
  for (const [name, part] of Object.entries(unzipSync(bytes))) {
    const place = (PLACES[name] ?? name).replace("Main Book", encoded ? "Main Book" : "main");
    odd[place] =
      name.endsWith(".xml") || name.endsWith(".rels") ? strToU8(rewritten(place, strFromU8(part), encoded)) : part;
  }
  return zipSync(odd);
}

const PLACES: Readonly<Record<string, string>> = {
  "xl/workbook.xml": "book/Main Book.xml",
  "xl/_rels/workbook.xml.rels": "book/_rels/Main Book.xml.rels",
};
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

function rewritten(place: string, xml: string, encoded: boolean): string {
  let text = xml;
  if (place.endsWith("_rels/.rels"))
    text = text.replace(
      /Target="\/?xl\/workbook\.xml"/,
      encoded ? 'Target="Book/main%20book.xml"' : 'Target="book/main.xml"',
    );
  if (place.startsWith("book/_rels/"))
    text = text.replace(/Target="(?:\/xl\/)?([^"]*)"/g, (_, target: string) => `Target="./../xl/${target}"`);
  if (place === "[Content_Types].xml")
    text = text.replace("/xl/workbook.xml", encoded ? "/book/Main%20Book.xml" : "/book/main.xml");
  if (text.includes(`xmlns="${MAIN}"`) && /^xl\/worksheets|^book\//.test(place)) {
    text = text
      .replace(`xmlns="${MAIN}"`, `xmlns:main="${MAIN}"`)
      .replace(/<(\/?)([A-Za-z][\w]*)(?=[\s/>])/g, (_, slash: string, name: string) => `<${slash}main:${name}`);
  }
  return text.replace(/(\s[\w:]+)="([^"']*)"/g, "$1='$2'");
}
