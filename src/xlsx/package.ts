import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import {
  attributeOf,
  escapeAttribute,
  inPlaceOf,
  readXml,
  relationOf,
  within,
  withPieces,
  type Piece,
  type XmlElement,
} from "./xml";

export const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const TYPES = "[Content_Types].xml";

/** A part that another one names. */
export interface Relation {
  readonly type: string;
  readonly target: string;
}

/** The parts of an .xlsx file, read and replaced as text; parts nobody touches keep their bytes. */
export class Package {
  private readonly parts: Record<string, Uint8Array>;
  private readonly read = new Map<string, XmlElement>();

  /** Of a file, or of parts that are unpacked already, which are changed in place. */
  constructor(from: Uint8Array | Record<string, Uint8Array>) {
    this.parts = from instanceof Uint8Array ? unzipSync(from) : from;
  }

  has(name: string): boolean {
    return name in this.parts;
  }

  /** How long a part is, in bytes. */
  size(name: string): number {
    return this.parts[name]?.length ?? 0;
  }

  /** A part as the file holds it. */
  part(name: string): Uint8Array | undefined {
    return this.parts[name];
  }

  text(name: string): string {
    const part = this.parts[name];
    return part ? strFromU8(part) : "";
  }

  /** A part read as XML; undefined where the file has none of that name. */
  xml(name: string): XmlElement | undefined {
    if (!this.has(name)) return undefined;
    const root = this.read.get(name) ?? readXml(this.text(name));
    this.read.set(name, root);
    return root;
  }

  setText(name: string, text: string): void {
    this.setBytes(name, strToU8(text));
  }

  setBytes(name: string, bytes: Uint8Array): void {
    this.read.delete(name);
    this.parts[name] = bytes;
  }

  remove(name: string): void {
    this.read.delete(name);
    delete this.parts[name];
  }

  names(): string[] {
    return Object.keys(this.parts);
  }

  /** The part that says what the workbook consists of, wherever the file keeps it. */
  get workbook(): string {
    const main = [...this.relations("").values()].find(({ type }) => type.endsWith("/officeDocument"));
    if (!main || !this.has(main.target)) throw new Error("the file names no workbook part");
    return main.target;
  }

  /** The part that the workbook names for this: "styles", "sharedStrings". */
  partOf(kind: string): string | undefined {
    return [...this.relations(this.workbook).values()].find(({ type }) => type.endsWith(`/${kind}`))?.target;
  }

  /** The sheets in the order of their tabs, by name, and the parts that hold them. */
  sheets(): Map<string, string> {
    const { workbook } = this;
    const relations = this.relations(workbook);
    const parts = new Map<string, string>();
    const book = this.xml(workbook);
    for (const sheet of book ? within(book, "sheet") : []) {
      const name = attributeOf(sheet, "name");
      const relation = relations.get(relationOf(sheet) ?? "");
      if (name !== undefined && relation?.type.endsWith("/worksheet")) parts.set(name, relation.target);
    }
    return parts;
  }

  /** The texts that cells share, by their number; what stands above a text as its reading is no part of it. */
  sharedTexts(): string[] {
    const root = this.xml(this.partOf("sharedStrings") ?? "");
    const items = root?.children.filter(({ name }) => name === "si") ?? [];
    return items.map((item) =>
      [...within(item, "t")]
        .filter(({ parent }) => parent?.name !== "rPh")
        .map(({ text }) => text)
        .join(""),
    );
  }

  /** The parts that a part names, by the ids it calls them by; "" stands for the package itself. */
  relations(part: string): Map<string, Relation> {
    const found = new Map<string, Relation>();
    const root = this.xml(relationsPart(part));
    for (const element of root ? within(root, "Relationship") : []) {
      const id = attributeOf(element, "Id");
      const target = attributeOf(element, "Target");
      if (id && target && attributeOf(element, "TargetMode") !== "External") {
        found.set(id, { type: attributeOf(element, "Type") ?? "", target: this.partNamed(resolve(part, target)) });
      }
    }
    return found;
  }

  /** Adds a relationship and gives its id. */
  addRelation(part: string, type: string, target: string): string {
    const name = relationsPart(part);
    if (!this.has(name)) this.setText(name, `${XML}<Relationships xmlns="${RELATIONS}"></Relationships>`);
    const taken = new Set(this.relations(part).keys());
    let number = 1;
    while (taken.has(`rIdRill${number}`)) number += 1;
    const id = `rIdRill${number}`;
    const path = target.split("/").map(encodeURIComponent).join("/");
    this.append(name, "Relationship", ` Id="${id}" Type="${type}" Target="/${path}"`);
    return id;
  }

  addContentType(part: string, type: string): void {
    this.append(TYPES, "Override", ` PartName="/${escapeAttribute(part)}" ContentType="${type}"`);
  }

  addDefaultType(extension: string, type: string): void {
    const known = [...within(this.types(), "Default")].map((element) => attributeOf(element, "Extension") ?? "");
    if (known.some((one) => one.toLowerCase() === extension)) return;
    const types = this.types();
    const first = types.children[0];
    const entry = `<${types.prefix}Default Extension="${extension}" ContentType="${type}"/>`;
    // The defaults stand before the parts.
    if (first) this.replace(TYPES, first.start, first.start, entry);
    else this.append(TYPES, "Default", ` Extension="${extension}" ContentType="${type}"`);
  }

  /** Takes a part out with everything that points at it. */
  removeWithMentions(part: string, owner: string): void {
    if (!this.has(part)) return;
    this.remove(part);
    this.remove(relationsPart(part));
    this.removeElements(
      TYPES,
      (element) =>
        element.name === "Override" && this.partNamed(resolve("", attributeOf(element, "PartName") ?? "")) === part,
    );
    this.removeElements(
      relationsPart(owner),
      (element) => this.partNamed(resolve(owner, attributeOf(element, "Target") ?? "")) === part,
    );
  }

  /** The file, packed; the same parts give the same bytes. */
  bytes(): Uint8Array {
    const files: Zippable = {};
    for (const [name, part] of Object.entries(this.parts)) if (!name.endsWith("/")) files[name] = part;
    return zipSync(files, { level: 6, mtime: new Date(1980, 0, 1) });
  }

  /** Puts an element behind the last in the root of a part. */
  append(part: string, name: string, attributes: string): void {
    const root = this.xml(part);
    if (!root) throw new Error(`the file has no part ${part}`);
    const entry = `<${root.prefix}${name}${attributes}/>`;
    if (root.closing < root.end) return this.replace(part, root.closing, root.closing, entry);
    const open = this.text(part)
      .slice(root.start, root.opened)
      .replace(/\s*\/>$/, ">");
    this.replace(part, root.start, root.end, `${open}${entry}</${tagOf(open)}>`);
  }

  /** Puts other text in the place of a piece of a part. */
  replace(part: string, from: number, to: number, text: string): void {
    this.change(part, [{ from, to, text }]);
  }

  /** The same for several pieces of a part at once. */
  change(part: string, pieces: readonly Piece[]): void {
    if (pieces.length > 0) this.setText(part, withPieces(this.text(part), pieces));
  }

  /** Takes elements out of the root of a part. */
  removeElements(part: string, unwanted: (element: XmlElement) => boolean): void {
    const doomed = this.xml(part)?.children.filter(unwanted) ?? [];
    this.change(
      part,
      doomed.map((element) => inPlaceOf(element, "")),
    );
  }

  private types(): XmlElement {
    const types = this.xml(TYPES);
    if (!types) throw new Error("the file has no list of content types");
    return types;
  }

  /** Names of parts differ by more than their case (ECMA-376 part 2, 6.2.2), and some programs mix the cases. */
  private partNamed(name: string): string {
    if (this.has(name)) return name;
    return this.names().find((one) => one.toLowerCase() === name.toLowerCase()) ?? name;
  }
}

function tagOf(open: string): string {
  return /^<([^\s/>]+)/.exec(open)?.[1] ?? "";
}

function relationsPart(part: string): string {
  const slash = part.lastIndexOf("/");
  return `${part.slice(0, slash + 1)}_rels/${part.slice(slash + 1)}.rels`;
}

/** A target as the file writes it, as the name of a part. */
function resolve(part: string, target: string): string {
  const path = target.startsWith("/") ? [] : part.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  const name = path.join("/");
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
