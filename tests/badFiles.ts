import { strToU8, unzipSync, zipSync } from "fflate";
import { smallTemplate } from "./host/smallTemplate";

/** A file that some reader must refuse in a sentence; undefined where that reader takes it. */
export interface BadFile {
  readonly what: string;
  readonly bytes: () => Promise<Uint8Array> | Uint8Array;
  /** What those who open workbooks say of it, behind the file's name. */
  readonly asWorkbook: string;
  /** What the reader of price lists says of it. */
  readonly asPriceList: string | undefined;
}

const NOT_CSV = "the file is a workbook, not a CSV file; save the sheet with the prices as CSV first";
const DAMAGED = "is damaged and cannot be read; open your last good copy";

type Parts = Record<string, Uint8Array>;

/** A good workbook with other parts in its archive. */
async function withParts(change: (parts: Parts) => Parts): Promise<Uint8Array> {
  return zipSync(change(unzipSync(await smallTemplate())));
}

/** A container of Microsoft's older kind ([MS-CFB] 2.2), with a part of the given name in its directory. */
function container(part: string): Uint8Array {
  const bytes = new Uint8Array(2048);
  bytes.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
  [...part].forEach((letter, index) => (bytes[1024 + 2 * index] = letter.charCodeAt(0)));
  return bytes;
}

/** Overwrites what the archive says its last part unpacks to: local header 4.3.7 and directory 4.3.12 of APPNOTE.TXT. */
function claiming(zip: Uint8Array, size: number): Uint8Array {
  const view = new DataView(zip.buffer, zip.byteOffset);
  let entry = zip.length - 4;
  while (view.getUint32(entry, true) !== 0x02014b50) entry -= 1;
  view.setUint32(entry + 24, size, true);
  view.setUint32(view.getUint32(entry + 42, true) + 22, size, true);
  return zip;
}

/** Every kind of file that people open by mistake, or that others send to do harm. */
export const badFiles: readonly BadFile[] = [
  {
    what: "an empty file",
    bytes: () => new Uint8Array(),
    asWorkbook: "is empty",
    asPriceList: "the file is empty",
  },
  {
    what: "a price list as CSV",
    bytes: () => strToU8("code,cost\nLINER,4.10"),
    asWorkbook: "is not an .xlsx workbook; save it as .xlsx",
    asPriceList: undefined,
  },
  {
    what: "a text without the columns of a price list",
    bytes: () => strToU8("name;colour\nGranite;grey"),
    asWorkbook: "is not an .xlsx workbook; save it as .xlsx",
    asPriceList: "the file must have a row of headings with Code and Cost",
  },
  {
    what: "a web page",
    bytes: () => strToU8("<!doctype html><title>Sign in</title>"),
    asWorkbook: "is not an .xlsx workbook; save it as .xlsx",
    asPriceList: "the file must have a row of headings with Code and Cost",
  },
  {
    what: "a PDF",
    bytes: () => strToU8("%PDF-1.7\n%\u00e2\u00e3\n1 0 obj <<>> endobj"),
    asWorkbook: "is a PDF, not a workbook",
    asPriceList: "the file is a PDF, not a CSV file",
  },
  {
    what: "a picture",
    bytes: () => Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
    asWorkbook: "is not an .xlsx workbook; save it as .xlsx",
    asPriceList: "the file is not a text file",
  },
  {
    what: "a workbook with a password",
    bytes: () => container("EncryptedPackage"),
    asWorkbook: "is protected with a password; save a copy without one first",
    asPriceList: NOT_CSV,
  },
  {
    what: "a workbook of before 2007",
    bytes: () => container("Workbook"),
    asWorkbook: "is an old .xls file; save it as .xlsx",
    asPriceList: NOT_CSV,
  },
  {
    what: "a workbook with macros",
    bytes: () => withParts((parts) => ({ ...parts, "xl/vbaProject.bin": new Uint8Array([1]) })),
    asWorkbook: "holds macros, which are never run here; save a copy as .xlsx without macros",
    asPriceList: NOT_CSV,
  },
  {
    what: "a binary workbook",
    bytes: () => withParts((parts) => ({ ...parts, "xl/workbook.bin": new Uint8Array([1]) })),
    asWorkbook: "is a binary workbook (.xlsb); save it as .xlsx",
    asPriceList: NOT_CSV,
  },
  {
    what: "an OpenDocument spreadsheet",
    bytes: () =>
      zipSync({
        mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"),
        "content.xml": strToU8("<office:document-content/>"),
      }),
    asWorkbook: "is an OpenDocument file (.ods); save it as .xlsx",
    asPriceList: NOT_CSV,
  },
  {
    what: "a text document",
    bytes: () => zipSync({ "[Content_Types].xml": strToU8("<Types/>"), "word/document.xml": strToU8("<w/>") }),
    asWorkbook: "is an archive but not an .xlsx workbook",
    asPriceList: NOT_CSV,
  },
  {
    what: "a workbook cut short",
    bytes: async () => (await smallTemplate()).slice(0, 3000),
    asWorkbook: DAMAGED,
    asPriceList: NOT_CSV,
  },
  {
    what: "a workbook with a sheet cut short",
    bytes: () =>
      withParts((parts) => ({
        ...parts,
        "xl/worksheets/sheet1.xml": (parts["xl/worksheets/sheet1.xml"] ?? new Uint8Array()).slice(0, 600),
      })),
    asWorkbook: DAMAGED,
    asPriceList: NOT_CSV,
  },
  {
    what: "a workbook with a broken list of sheets",
    bytes: () => withParts((parts) => ({ ...parts, "xl/workbook.xml": strToU8("<workbook><she") })),
    asWorkbook: DAMAGED,
    asPriceList: NOT_CSV,
  },
  {
    what: "a workbook with bytes changed on the way",
    bytes: async () => {
      const bytes = await smallTemplate();
      for (let at = 200; at < bytes.length - 2000; at += 97) bytes[at] = (bytes[at] ?? 0) ^ 0x10;
      return bytes;
    },
    asWorkbook: DAMAGED,
    asPriceList: NOT_CSV,
  },
  {
    what: "an archive that says it unpacks to half a gigabyte",
    bytes: async () => claiming(await withParts((p) => ({ ...p, "xl/worksheets/x.xml": new Uint8Array(100) })), 5e8),
    asWorkbook: "unpacks to more than 100 MB",
    asPriceList: NOT_CSV,
  },
  {
    what: "an archive that unpacks to more than it says",
    bytes: async () => {
      const padded = (parts: Parts): Parts => {
        const { "xl/workbook.xml": list = new Uint8Array(), ...rest } = parts;
        const zeros = new Uint8Array(60_000_000).fill(0x20);
        zeros.set(list.slice(0, list.lastIndexOf(0x3c)));
        return { ...rest, "xl/workbook.xml": zeros };
      };
      return claiming(await withParts(padded), 1000);
    },
    asWorkbook: DAMAGED,
    asPriceList: NOT_CSV,
  },
  {
    what: "a file too large",
    bytes: () => new Uint8Array(41_000_000).fill(0x50),
    asWorkbook: "is 41 MB; workbooks of up to 40 MB are opened",
    asPriceList: "the file is 41 MB; price lists of up to 20 MB are read",
  },
];
