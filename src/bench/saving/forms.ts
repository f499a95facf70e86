import type { Package } from "../../xlsx/package";
import { attributeOf, childOf, escapeAttribute, writtenAttributes, type XmlElement } from "../../xlsx/xml";

/** Numbers of forms up to here belong to the format itself. */
const LAST_BUILT_IN = 163;

/**
 * The number of a look like the one of the number `look`, but with a form of numbers or days: a day that was typed into
 * a plain cell would come back as a bare number. Adds it to the file's looks where there is none yet.
 */
export function withForm(file: Package, look: string | undefined, form: string): string {
  const part = file.partOf("styles");
  const like = looksOf(file, part)[Number(look ?? 0)];
  if (part === undefined || !like) return look ?? "0";
  const id = formId(file, part, form);
  // The part was perhaps written anew just now.
  const looks = looksOf(file, part);
  const xml = file.text(part);
  const written = looks.map((element) => lookXml(xml, element));
  const wanted = lookXml(xml, looks[Number(look ?? 0)] ?? like, { numFmtId: String(id), applyNumberFormat: "1" });
  const at = written.indexOf(wanted);
  if (at >= 0) return String(at);
  addTo(file, part, "cellXfs", wanted, looks.length);
  return String(looks.length);
}

function looksOf(file: Package, part: string | undefined): XmlElement[] {
  const root = part === undefined ? undefined : file.xml(part);
  return (childOf(root, "cellXfs")?.children ?? []).filter(({ name }) => name === "xf");
}

/** A look as it is written, its attributes in one order. */
function lookXml(xml: string, element: XmlElement, changed: Record<string, string> = {}): string {
  const attributes = new Map(element.attributes.map(({ written, value }) => [written, value]));
  for (const [name, value] of Object.entries(changed)) attributes.set(name, value);
  const sorted = Object.fromEntries([...attributes].sort(([a], [b]) => (a < b ? -1 : 1)));
  const open = `<${element.prefix}xf${writtenAttributes([], sorted)}`;
  return element.closing === element.end ? `${open}/>` : `${open}>${xml.slice(element.opened, element.end)}`;
}

/** Puts an element behind the last of a list whose length the list itself says. */
function addTo(file: Package, part: string, list: string, element: string, length: number): void {
  const holder = childOf(file.xml(part), list);
  if (!holder) return;
  const attributes = writtenAttributes(holder.attributes, { count: String(length + 1) });
  const inner = holder.closing < holder.end ? file.text(part).slice(holder.opened, holder.closing) : "";
  const tag = `${holder.prefix}${list}`;
  file.replace(part, holder.start, holder.end, `<${tag}${attributes}>${inner}${element}</${tag}>`);
}

/** The number of a form in the file, which is added where there is none. */
function formId(file: Package, part: string, form: string): number {
  const root = file.xml(part);
  const list = childOf(root, "numFmts");
  const known = (list?.children ?? []).map((element) => ({
    id: Number(attributeOf(element, "numFmtId")),
    form: attributeOf(element, "formatCode"),
  }));
  const same = known.find((one) => one.form === form);
  if (same) return same.id;
  const id = Math.max(LAST_BUILT_IN, ...known.map((one) => one.id)) + 1;
  const prefix = root?.prefix ?? "";
  const element = `<${prefix}numFmt numFmtId="${id}" formatCode="${escapeAttribute(form)}"/>`;
  if (list) addTo(file, part, "numFmts", element, known.length);
  else if (root)
    file.replace(part, root.opened, root.opened, `<${prefix}numFmts count="1">${element}</${prefix}numFmts>`);
  return id;
}
