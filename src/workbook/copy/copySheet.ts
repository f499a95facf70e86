import { XML, type Package } from "../../xlsx/package";
import { quotedSheet } from "../../xlsx/address";
import {
  attributeOf,
  childOf,
  escapeAttribute,
  escapeText,
  inPlaceOf,
  startTag,
  writtenAttributes,
  type XmlElement,
} from "../../xlsx/xml";

/** The name by which a copy is known; it stands for the cell with the time. */
export const COPY_NAME = "CopyOfValuesMade";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

interface CopySheet {
  readonly time: string;
  readonly job: string | undefined;
  readonly from: string | undefined;
  /** Names of the sheets there are. */
  readonly taken: ReadonlySet<string>;
}

/** Puts a sheet before the others that says what the file is, and opens the file at it. */
export function addCopySheet(file: Package, { time, job, from, taken }: CopySheet): void {
  let name = "Copy";
  for (let number = 2; taken.has(name); number++) name = `Copy ${number}`;
  let part = "xl/worksheets/copyOfValues.xml";
  while (file.has(part)) part = part.replace(".xml", "x.xml");
  file.setText(part, sheetXml(time, job, from));
  file.addContentType(part, TYPE);
  const id = file.addRelation(file.workbook, RELATION, part);
  const { workbook } = file;
  const root = file.xml(workbook);
  const sheets = childOf(root, "sheets");
  const first = sheets?.children[0];
  if (!root || !sheets || !first) throw new Error("the file has no sheets");
  const numbers = sheets.children.map((one) => Number(attributeOf(one, "sheetId")) || 0);
  const relation = first.attributes.find((one) => one.name === "id" && one.space.endsWith("/relationships"));
  const entry = `<${first.prefix}sheet name="${escapeAttribute(name)}" sheetId="${Math.max(...numbers) + 1}" ${relation?.written ?? "r:id"}="${id}"/>`;
  const place = `${quotedSheet(name)}!$B$4`;
  const known = childOf(root, "definedNames");
  const view = childOf(childOf(root, "bookViews"), "workbookView");
  file.change(workbook, [
    ...(view ? [startTag(view, { activeTab: "0", firstSheet: undefined })] : []),
    { from: first.start, to: first.start, text: entry },
    known
      ? inPlaceOf(known, shiftedNames(known, place))
      : { from: sheets.end, to: sheets.end, text: namesXml(sheets.prefix, [nameXml(sheets.prefix, place)]) },
  ]);
}

function nameXml(prefix: string, place: string): string {
  return `<${prefix}definedName name="${COPY_NAME}">${escapeText(place)}</${prefix}definedName>`;
}

function namesXml(prefix: string, names: readonly string[]): string {
  return `<${prefix}definedNames>${names.join("")}</${prefix}definedNames>`;
}

/** A sheet before the others moves the numbers by which print areas know theirs. */
function shiftedNames(known: XmlElement, place: string): string {
  const shifted = known.children.map((one) => {
    const own = attributeOf(one, "localSheetId");
    const attributes = writtenAttributes(
      one.attributes,
      own === undefined ? {} : { localSheetId: String(Number(own) + 1) },
    );
    return `<${one.prefix}definedName${attributes}>${escapeText(one.text)}</${one.prefix}definedName>`;
  });
  return namesXml(known.prefix, [...shifted, nameXml(known.prefix, place)]);
}

function sheetXml(time: string, job: string | undefined, from: string | undefined): string {
  const rows: [number, string, string?][] = [
    [1, heading("Copy of values")],
    ...(job ? [[3, said("Job"), said(job)] as [number, string, string]] : []),
    [4, said("Made"), said(time)],
    ...(from ? [[5, said("From"), said(from)] as [number, string, string]] : []),
    [7, said("It shows what the workbook showed at that time and holds no formulas: nothing in it follows a change.")],
    [8, said("To change something, change the workbook itself, then make a new copy.")],
    [9, said("It holds costs, wages and markups as the workbook does. A client gets the sheet Quote, as a PDF.")],
  ];
  const cells = rows.map(([row, left, right]) => {
    const second = right === undefined ? "" : `<c r="B${row}" t="inlineStr">${right}</c>`;
    return `<row r="${row}"${row === 1 ? ' ht="26" customHeight="1"' : ""}><c r="A${row}" t="inlineStr">${left}</c>${second}</row>`;
  });
  return (
    `${XML}<worksheet xmlns="${MAIN}"><sheetPr><tabColor rgb="FF5A1F14"/></sheetPr>` +
    '<sheetViews><sheetView showGridLines="0" tabSelected="1" workbookViewId="0"/></sheetViews>' +
    '<cols><col min="1" max="1" width="12" customWidth="1"/><col min="2" max="2" width="80" customWidth="1"/></cols>' +
    `<sheetData>${cells.join("")}</sheetData><sheetProtection sheet="1" objects="1" scenarios="1"/>` +
    '<pageMargins left="0.5" right="0.5" top="0.65" bottom="0.6" header="0.35" footer="0.3"/></worksheet>'
  );
}

function said(text: string): string {
  return `<is><t xml:space="preserve">${escapeText(text)}</t></is>`;
}

function heading(text: string): string {
  return `<is><r><rPr><b/><sz val="16"/><color rgb="FF5A1F14"/><rFont val="Arial"/></rPr><t>${escapeText(text)}</t></r></is>`;
}
