import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx } from "hucre/xlsx";

export const SHEET = "xl/worksheets/sheet1.xml";
const BOOK = "xl/workbook.xml";
const RELATIONS = "xl/_rels/workbook.xml.rels";

/** A small workbook with something put before a tag of one of its parts. */
export async function withPut(
  changes: readonly (readonly [part: string, before: string, put: string])[],
): Promise<Uint8Array> {
  const parts = unzipSync(await writeXlsx({ sheets: [{ name: "Own", rows: [[1, 2]] }] }));
  for (const [part, before, put] of changes) {
    const xml = strFromU8(parts[part] ?? new Uint8Array());
    if (!xml.includes(before)) throw new Error(`${part} has no ${before}`);
    parts[part] = strToU8(xml.replace(before, () => put + before));
  }
  return zipSync(parts);
}

export const rows = (count: number, row: (number: number) => string): readonly [string, string, string] => [
  SHEET,
  "</sheetData>",
  Array.from({ length: count }, (_, index) => `<row r="${index + 9}">${row(index + 9)}</row>`).join(""),
];
const number = (count: number, what: (number: number) => string): string =>
  Array.from({ length: count }, (_, index) => what(index)).join("");
const entities = number(10, (i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`);

/** Files that ask for too much, and what is said of each. */
export const TOO_MUCH: readonly [what: string, bytes: () => Promise<Uint8Array>, sentence: string][] = [
  [
    "an array over a whole sheet",
    () => withPut([rows(1, () => '<c r="A9"><f t="array" ref="A9:XFD1048576">1</f><v>1</v></c>')]),
    "in Own!A9 that fills more cells than the 300,000",
  ],
  [
    "entities that unfold to ten gigabytes",
    () =>
      withPut([
        [SHEET, "<worksheet", `<!DOCTYPE x [<!ENTITY l0 "0123456789">${entities}]>`],
        rows(1, () => '<c r="A9" t="inlineStr"><is><t>&l10;</t></is></c>'),
      ]),
    "is damaged",
  ],
  [
    "one sheet named three thousand times",
    () =>
      withPut([
        [BOOK, "</sheets>", number(3000, (i) => `<sheet name="s${i}" sheetId="${i + 9}" r:id="d${i}"/>`)],
        [
          RELATIONS,
          "</Relationships>",
          number(
            3000,
            (i) =>
              `<Relationship Id="d${i}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/>`,
          ),
        ],
        rows(1, () => `<c r="A9" t="inlineStr"><is><t>${"x".repeat(3_500_000)}</t></is></c>`),
      ]),
    "names its parts so often",
  ],
  [
    "brackets in brackets",
    () => withPut([rows(1, () => `<c r="A9"><f>${"(".repeat(4000)}1${")".repeat(4000)}</f><v>1</v></c>`)]),
    "brackets nested over 256 deep",
  ],
  [
    "27,000 running sums",
    () =>
      withPut([
        rows(27_000, (row) => `<c r="D${row}"><v>1</v></c><c r="E${row}"><f>SUM($D$9:D${row})</f><v>1</v></c>`),
      ]),
    "read over 150 million cells",
  ],
  [
    "27,000 running sums, filled down",
    () =>
      withPut([
        rows(
          27_000,
          (row) =>
            `<c r="D${row}"><v>1</v></c><c r="E${row}">${row === 9 ? '<f t="shared" si="0" ref="E9:E27008">SUM($D$9:D9)</f>' : '<f t="shared" si="0"/>'}<v>1</v></c>`,
        ),
      ]),
    "read over 150 million cells",
  ],
];
