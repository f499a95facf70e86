import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { attribute, corners, unescapeXml } from "../lint/xml";

const BOOK = "xl/workbook.xml";
const NAME = /<definedName ([^>]*)>([^<]*)<\/definedName>/g;
const AREA = /^('?)([^'!]+)\1!(\$[A-Z]+\$\d+:\$[A-Z]+\$\d+)$/;

/**
 * Ends the names of tables that may grow at the last row of their sheet that the file knows: below it all is blank whatever
 * a name says, and the calculating library takes its time over every blank cell. A name that a spill may grow into stays.
 */
export function shortenNames(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const book = textOf(parts, BOOK);
  const sheets = new Map<string, SheetFacts>();
  const targets = new Map(
    [...textOf(parts, "xl/_rels/workbook.xml.rels").matchAll(/<Relationship ([^>]*)\/>/g)].map(([, given = ""]) => [
      attribute(given, "Id"),
      attribute(given, "Target").replace(/^\/?(?:xl\/)?/, "xl/"),
    ]),
  );
  const partOf = new Map(
    [...book.matchAll(/<sheet ([^>]*)\/>/g)].map(([, given = ""]) => [
      attribute(given, "name"),
      targets.get(attribute(given, "r:id")) ?? "",
    ]),
  );
  const factsOf = (sheet: string): SheetFacts => {
    let facts = sheets.get(sheet);
    if (!facts) sheets.set(sheet, (facts = readFacts(textOf(parts, partOf.get(sheet) ?? ""))));
    return facts;
  };
  const shorter = book.replace(NAME, (whole, given: string, range: string) => {
    const [, , sheet = "", address = ""] = AREA.exec(unescapeXml(range)) ?? [];
    const area = corners(address.replace(/\$/g, ""));
    if (!partOf.has(sheet) || area.bottom - area.top < MANY) return whole;
    const { lastRow, spills } = factsOf(sheet);
    const last = Math.max(area.top, lastRow);
    if (area.bottom <= last) return whole;
    if (spills.some(({ left, top }) => left >= area.left && left <= area.right && top <= area.bottom)) return whole;
    return `<definedName ${given}>${range.replace(/\d+$/, String(last))}</definedName>`;
  });
  if (shorter === book) return bytes;
  return zipSync({ ...parts, [BOOK]: strToU8(shorter) }, { level: 0 });
}

/** Names of fewer rows cost nothing worth sparing. */
const MANY = 1000;

interface SheetFacts {
  readonly lastRow: number;
  readonly spills: readonly { readonly left: number; readonly top: number }[];
}

function readFacts(xml: string): SheetFacts {
  const last = /^<row [^>]*?\br="(\d+)"/.exec(xml.slice(Math.max(0, xml.lastIndexOf("<row "))));
  const refs = [...xml.matchAll(/<f [^>]*?\bref="([^"]+)"/g)].map(([, ref = ""]) => corners(ref));
  return { lastRow: Number(last?.[1] ?? 0), spills: refs };
}

function textOf(parts: Readonly<Record<string, Uint8Array>>, name: string): string {
  const part = parts[name];
  return part ? strFromU8(part) : "";
}

/** The defined names of a file and the areas they stand for, as it says them. */
export function namesInFile(bytes: Uint8Array): Map<string, string> {
  const book = textOf(unzipSync(bytes, { filter: ({ name }) => name === BOOK }), BOOK);
  return new Map(
    [...book.matchAll(NAME)].map(([, given = "", range = ""]) => [attribute(given, "name"), unescapeXml(range)]),
  );
}
