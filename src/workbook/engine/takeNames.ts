import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { attribute, corners, unescapeXml } from "../lint/xml";

const BOOK = "xl/workbook.xml";
const NAME = /<definedName ([^>]*)>([^<]*)<\/definedName>/g;
const AREA = /^('?)([^'!]+)\1!(\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?)$/;

/** A file without the names and looks that its results can do without, and what the names stand for. */
export interface TakenNames {
  readonly bytes: Uint8Array;
  /** Address by name in lower case, no longer than the sheet's cells reach. */
  readonly areas: ReadonlyMap<string, string>;
  /** Every name and what the file says it stands for: "Site!$B$5". */
  readonly names: ReadonlyMap<string, string>;
}

/**
 * Takes out the names that stand for one area, so that their addresses can stand in the formulas themselves: the calculating
 * library keeps an object for every cell of every name, and looks them all through in every pass. The looks of cells go too.
 */
export function takeNames(bytes: Uint8Array): TakenNames {
  const parts = unzipSync(bytes);
  const book = textOf(parts, BOOK);
  const found = [...book.matchAll(NAME)].map(([, given = "", range = ""]) => ({
    name: attribute(given, "name"),
    isOfSheet: attribute(given, "localSheetId") !== "",
    range: unescapeXml(range),
  }));
  const ofSheets = new Set(found.filter(({ isOfSheet }) => isOfSheet).map(({ name }) => name.toLowerCase()));
  const end = lastRows(parts, book);
  const areas = new Map<string, string>();
  for (const { name, range } of saysNamesAsText(parts) ? [] : found) {
    if (AREA.test(range) && !ofSheets.has(name.toLowerCase())) areas.set(name.toLowerCase(), end(range));
  }
  const rest = book.replace(NAME, (whole, given: string) => {
    const name = attribute(given, "name").toLowerCase();
    return areas.has(name) || name.startsWith("_xlnm.") ? "" : whole;
  });
  for (const name of Object.keys(parts).filter((part) => part.startsWith("xl/worksheets/sheet"))) {
    parts[name] = strToU8(withoutLooks(textOf(parts, name)));
  }
  return {
    bytes: zipSync({ ...parts, [BOOK]: strToU8(rest.replace("<definedNames></definedNames>", "")) }, { level: 0 }),
    areas,
    names: new Map(found.map(({ name, range }) => [name, range])),
  };
}

/** A sheet without cells that hold nothing but a look, and without the looks of the others: no result hangs on them. */
function withoutLooks(xml: string): string {
  return xml.replace(/<c [^>]*\/>/g, "").replace(/(<c r="[A-Z]+\d+") s="\d+"/g, "$1");
}

/** INDIRECT looks a name up by its text, so that a file that uses it needs all of them. */
function saysNamesAsText(parts: Readonly<Record<string, Uint8Array>>): boolean {
  return Object.values(parts).some((part) =>
    Buffer.from(part.buffer, part.byteOffset, part.length).includes("INDIRECT("),
  );
}

/** Areas of fewer rows cost nothing worth sparing. */
const MANY = 1000;

/**
 * Gives a function that ends an area at the last row of its sheet that the file knows: below it all is blank whatever a name
 * says, and the library takes its time over every blank cell. An area that a spill may grow into stays.
 */
function lastRows(parts: Readonly<Record<string, Uint8Array>>, book: string): (range: string) => string {
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
  const sheets = new Map<string, SheetFacts>();
  const factsOf = (sheet: string): SheetFacts => {
    let facts = sheets.get(sheet);
    if (!facts) sheets.set(sheet, (facts = readFacts(textOf(parts, partOf.get(sheet) ?? ""))));
    return facts;
  };
  return (range) => {
    const [, , sheet = "", address = ""] = AREA.exec(range) ?? [];
    const area = corners(address.replace(/\$/g, ""));
    if (!partOf.has(sheet) || area.bottom - area.top < MANY) return range;
    const { lastRow, spills } = factsOf(sheet);
    const last = Math.max(area.top, lastRow);
    if (area.bottom <= last) return range;
    if (spills.some(({ left, top }) => left >= area.left && left <= area.right && top <= area.bottom)) return range;
    return range.replace(/\d+$/, String(last));
  };
}

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
