import { SaxesParser, type SaxesTagNS } from "saxes";

/** An attribute as the file means it: its name without prefix, its namespace ("" for most), its text. */
export interface XmlAttribute {
  readonly name: string;
  readonly space: string;
  /** With the prefix that the file gives it. */
  readonly written: string;
  readonly value: string;
}

/** An element, and where it stands in the text it was read from. */
export interface XmlElement {
  /** Without prefix. */
  readonly name: string;
  readonly space: string;
  /** "x:" where the file writes one, else "". */
  readonly prefix: string;
  readonly attributes: readonly XmlAttribute[];
  readonly parent: XmlElement | undefined;
  readonly children: XmlElement[];
  /** What stands directly in it, entities resolved. */
  text: string;
  /** Of its "<". */
  readonly start: number;
  /** Behind the ">" of its start tag. */
  readonly opened: number;
  /** Of the "<" of its end tag; behind it where the element is closed at once. */
  closing: number;
  end: number;
}

/** A text that is no XML, or XML that a package may not hold. */
export class NotXml extends Error {
  constructor(why: string) {
    super(why);
    this.name = "NotXml";
  }
}

/** What is told of while XML is read. */
export interface Visitor {
  /** At an element's start tag; "stop" ends the reading there. */
  opened?(element: XmlElement): "stop" | void;
  /** At its end; "forget" makes room: a sheet may have more cells than can be kept at once. */
  closed?(element: XmlElement): "forget" | void;
}

/** Reads XML from its begin to its end, children before the end of their parents. */
export function walkXml(xml: string, { opened, closed }: Visitor): void {
  const parser = new SaxesParser({ xmlns: true });
  let open: XmlElement | undefined;
  let began = 0;
  parser.on("error", (error) => {
    throw new NotXml(error.message);
  });
  // The parts of a package hold no such declaration (ECMA-376 part 2, 9.1.7): it can unfold to gigabytes.
  parser.on("doctype", () => {
    throw new NotXml("a document type is declared");
  });
  parser.on("opentagstart", () => (began = xml.lastIndexOf("<", parser.position - 1)));
  parser.on("opentag", (tag) => {
    const element = elementOf(tag, open, began, parser.position);
    open?.children.push(element);
    open = element;
    if (opened?.(element) === "stop") throw new Stop();
  });
  const said = (text: string): void => {
    if (open) open.text += text;
  };
  parser.on("text", said);
  parser.on("cdata", said);
  parser.on("closetag", ({ isSelfClosing }) => {
    const element = open;
    if (!element) return;
    element.end = parser.position;
    element.closing = isSelfClosing ? element.end : xml.lastIndexOf("<", element.end - 1);
    open = element.parent;
    if (closed?.(element) === "forget") open?.children.pop();
  });
  try {
    parser.write(xml).close();
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
  }
}

/** Ends the reading; it is no fault. */
class Stop extends Error {}

/** Reads a part whole, or up to the start of the first element named `until`. */
export function readXml(xml: string, until?: string): XmlElement {
  let root: XmlElement | undefined;
  walkXml(xml, {
    opened(element) {
      root ??= element;
      return element.name === until ? "stop" : undefined;
    },
  });
  if (!root) throw new NotXml("there is no element");
  return root;
}

/** The elements of that name anywhere below one. */
export function* within(element: XmlElement, name: string): Generator<XmlElement> {
  for (const child of element.children) {
    if (child.name === name) yield child;
    yield* within(child, name);
  }
}

/** The child of that name, if there is one. */
export function childOf(element: XmlElement | undefined, name: string): XmlElement | undefined {
  return element?.children.find((child) => child.name === name);
}

/** An attribute without a namespace. */
export function attributeOf(element: XmlElement | undefined, name: string): string | undefined {
  return element?.attributes.find((one) => one.name === name && one.space === "")?.value;
}

/** The id of the relationship that an element names: "r:id", whatever the prefix, in both editions of the format. */
export function relationOf(element: XmlElement, name = "id"): string | undefined {
  return element.attributes.find((one) => one.name === name && one.space.endsWith("/relationships"))?.value;
}

/** Other text for what stands between two places of a text; nothing where both are the same puts it in between. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Other text for a whole element. */
export function inPlaceOf({ start, end }: XmlElement, text: string): Piece {
  return { from: start, to: end, text };
}

/** A text with other pieces in it, which do not overlap. */
export function withPieces(xml: string, pieces: readonly Piece[]): string {
  let done = 0;
  let written = "";
  for (const { from, to, text } of [...pieces].sort((a, b) => a.from - b.from)) {
    written += xml.slice(done, from) + text;
    done = to;
  }
  return written + xml.slice(done);
}

/** Attributes as they are written into a start tag, those of these names without a namespace changed; undefined leaves one out. */
export function writtenAttributes(
  attributes: readonly XmlAttribute[],
  changed: Readonly<Record<string, string | undefined>> = {},
): string {
  const kept = attributes
    .filter(({ name, space }) => space !== "" || !(name in changed))
    .map(({ written, value }) => ` ${written}="${escapeAttribute(value)}"`);
  const others = Object.entries(changed).map(([name, value]) =>
    value === undefined ? "" : ` ${name}="${escapeAttribute(value)}"`,
  );
  return [...kept, ...others].join("");
}

/** An element's start tag with some attributes changed; undefined leaves one out. */
export function startTag(element: XmlElement, changed: Readonly<Record<string, string | undefined>>): Piece {
  const { prefix, name, attributes, start, opened, closing, end } = element;
  const close = closing === end ? "/>" : ">";
  return { from: start, to: opened, text: `<${prefix}${name}${writtenAttributes(attributes, changed)}${close}` };
}

/** Text as an element of XML holds it. Control characters cannot stand in XML at all and are dropped. */
export function escapeText(text: string): string {
  return (
    text
      .replace(/&/g, "&amp;")
      .replace(/</g, "&lt;")
      .replace(/>/g, "&gt;")
      // A bare one would be read as a line feed.
      .replace(/\r/g, "&#13;")
      // eslint-disable-next-line no-control-regex
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "")
  );
}

/** Text as an attribute of XML holds it, between double quotes; line ends and tabs would be read as spaces. */
export function escapeAttribute(text: string): string {
  return escapeText(text)
    .replace(/"/g, "&quot;")
    .replace(/[\t\n]/g, (letter) => `&#${letter.charCodeAt(0)};`);
}

function elementOf(tag: SaxesTagNS, parent: XmlElement | undefined, start: number, opened: number): XmlElement {
  return {
    name: tag.local,
    space: tag.uri,
    prefix: tag.prefix === "" ? "" : `${tag.prefix}:`,
    attributes: Object.values(tag.attributes).map(({ local, uri, name, value }) => ({
      name: local,
      space: uri,
      written: name,
      value,
    })),
    parent,
    children: [],
    text: "",
    start,
    opened,
    closing: opened,
    end: opened,
  };
}
