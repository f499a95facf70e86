import {
  attributeOf,
  childOf,
  escapeText,
  inPlaceOf,
  startTag,
  walkXml,
  withPieces,
  writtenAttributes,
  type Piece,
  type XmlElement,
} from "../../xlsx/xml";

/** A sheet without its formulas. */
interface SheetValues {
  readonly xml: string;
  /** Cells whose formula has no result: the host did not know the function, or was still at it. */
  readonly unfinished: readonly string[];
  /** Formulas that stay, since looks depend on them. */
  readonly formulas: readonly string[];
}

interface Marks {
  /** The line that says what the sheet is. */
  readonly mark: string;
  readonly texts: readonly string[];
}

const UNFINISHED = /^#(?:NAME\?|BUSY!|GETTING_DATA|CONNECT!)$/;

/**
 * Takes the formulas out of a sheet and leaves their results; rules for what may be typed go as well. The sentence under a
 * heading, which says what to type, and the head of each printed page say what the sheet is.
 */
export function valuesOnly(xml: string, { mark, texts }: Marks): SheetValues {
  const edits: Piece[] = [];
  const unfinished: string[] = [];
  const formulas: string[] = [];
  const seen = { heading: false, header: false };
  let margins: XmlElement | undefined;
  walkXml(xml, {
    closed(element) {
      switch (element.name) {
        case "c": {
          const formula = childOf(element, "f");
          const address = attributeOf(element, "r") ?? "";
          if (address === "A1") seen.heading = formula === undefined && plainText(element, texts) !== undefined;
          if (formula) {
            if (UNFINISHED.test(childOf(element, "v")?.text ?? "")) unfinished.push(address);
            edits.push(inPlaceOf(element, withoutFormula(element)));
          } else if (address === "A2" && seen.heading && plainText(element, texts) !== undefined) {
            const said = `${mark}: nothing here follows a change. Change the workbook itself, and make a new copy.`;
            edits.push(inPlaceOf(element, textCell(element, said)));
          }
          return "forget";
        }
        case "row":
          return "forget";
        case "dataValidations":
          edits.push(inPlaceOf(element, ""));
          return "forget";
        case "formula":
          formulas.push(element.text);
          return undefined;
        case "sheetView":
          edits.push(startTag(element, { tabSelected: undefined }));
          return undefined;
        case "pageMargins":
        case "pageSetup":
          margins = element;
          return undefined;
        case "headerFooter":
          seen.header = true;
          edits.push(header(element, mark));
          return undefined;
        default:
          return undefined;
      }
    },
  });
  if (!seen.header && margins) {
    const head = `<${margins.prefix}headerFooter><${margins.prefix}oddHeader>${escapeText(markedHeader("", mark))}</${margins.prefix}oddHeader></${margins.prefix}headerFooter>`;
    edits.push({ from: margins.end, to: margins.end, text: head });
  }
  return { xml: withPieces(xml, edits), unfinished, formulas };
}

/** A cell's own text; undefined where it holds something else. */
function plainText(cell: XmlElement, texts: readonly string[]): string | undefined {
  const type = attributeOf(cell, "t");
  if (type === "s") return texts[Number(childOf(cell, "v")?.text)] || undefined;
  return type === "inlineStr" ? "text" : undefined;
}

/** The cell with its result as if it had been typed. */
function withoutFormula(cell: XmlElement): string {
  const value = childOf(cell, "v")?.text ?? "";
  const type = attributeOf(cell, "t");
  if (type === "str") return value === "" ? emptyCell(cell) : textCell(cell, value);
  if (value === "") return emptyCell(cell);
  const attributes = writtenAttributes(cell.attributes, { cm: undefined, vm: undefined });
  return `<${cell.prefix}c${attributes}><${cell.prefix}v>${escapeText(value)}</${cell.prefix}v></${cell.prefix}c>`;
}

function emptyCell(cell: XmlElement): string {
  return `<${cell.prefix}c${writtenAttributes(cell.attributes, { cm: undefined, vm: undefined, t: undefined })}/>`;
}

/** The text is the file's own, escapes included, where it comes from the file. */
function textCell(cell: XmlElement, text: string): string {
  const attributes = writtenAttributes(cell.attributes, { cm: undefined, vm: undefined, t: "inlineStr" });
  const { prefix } = cell;
  return `<${prefix}c${attributes}><${prefix}is><${prefix}t xml:space="preserve">${escapeText(text)}</${prefix}t></${prefix}is></${prefix}c>`;
}

function header(element: XmlElement, mark: string): Piece {
  const { prefix } = element;
  const old = childOf(element, "oddHeader");
  const head = `<${prefix}oddHeader>${escapeText(markedHeader(old?.text ?? "", mark))}</${prefix}oddHeader>`;
  if (old) return inPlaceOf(old, head);
  if (element.closing < element.end) return { from: element.opened, to: element.opened, text: head };
  const open = `<${prefix}headerFooter${writtenAttributes(element.attributes)}>`;
  return inPlaceOf(element, `${open}${head}</${prefix}headerFooter>`);
}

/** The head of a page with the mark in its middle, before what stands right. */
function markedHeader(head: string, mark: string): string {
  const middle = `&C&"Arial,Bold"&8${mark}`;
  const without = head.replace(/&C(?:[^&]|&[^LR])*/, "");
  const right = without.indexOf("&R");
  return right < 0 ? without + middle : without.slice(0, right) + middle + without.slice(right);
}
