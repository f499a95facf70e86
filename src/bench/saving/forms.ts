import { escapeAttribute, unescapeXml } from "../../host/xmlText";
import { attribute, type Package } from "./package";

const STYLES = "xl/styles.xml";
/** Numbers of forms up to here belong to the format itself. */
const LAST_BUILT_IN = 163;

/**
 * The number of a look like the one of the number `look`, but with a form of numbers or days: a day that was typed into
 * a plain cell would come back as a bare number. Adds it to the file's looks where there is none yet.
 */
export function withForm(file: Package, look: string | undefined, form: string): string {
  const xml = file.text(STYLES);
  const looks = /(<(?:\w+:)?cellXfs\b[^>]*>)([\s\S]*?)(<\/(?:\w+:)?cellXfs>)/.exec(xml);
  const known = [...(looks?.[2] ?? "").matchAll(/<(\w+:)?xf\b(?:[^>]*\/>|[^>]*[^/]>[\s\S]*?<\/\1?xf>)/g)].map(
    ([element]) => element,
  );
  const like = known[Number(look ?? 0)];
  if (!looks || like === undefined) return look ?? "0";
  const id = formId(file, form);
  const wanted = like
    .replace(/\s(?:numFmtId|applyNumberFormat)="[^"]*"/g, "")
    .replace(/<(?:\w+:)?xf\b/, `$& numFmtId="${id}" applyNumberFormat="1"`);
  const at = known.indexOf(wanted);
  if (at >= 0) return String(at);
  const [whole, open = "", body = "", close = ""] = looks;
  const counted = open.replace(/\bcount="\d+"/, `count="${known.length + 1}"`);
  file.setText(
    STYLES,
    file.text(STYLES).replace(whole, () => `${counted}${body}${wanted}${close}`),
  );
  return String(known.length);
}

/** The number of a form in the file, which is added where there is none. */
function formId(file: Package, form: string): number {
  const xml = file.text(STYLES);
  const list = /<(\w+:)?numFmts\b[^>]*>([\s\S]*?)<\/\1?numFmts>/.exec(xml);
  const known = [...(list?.[2] ?? "").matchAll(/<(?:\w+:)?numFmt\b(?:[^>"]|"[^"]*")*>/g)].map(([element]) => ({
    id: Number(attribute(element, "numFmtId")),
    form: unescapeXml(attribute(element, "formatCode") ?? ""),
  }));
  const same = known.find((one) => one.form === form);
  if (same) return same.id;
  const id = Math.max(LAST_BUILT_IN, ...known.map((one) => one.id)) + 1;
  const [root = "", prefix = ""] = /<(\w+:)?styleSheet\b[^>]*>/.exec(xml) ?? [];
  const element = `<${prefix}numFmt numFmtId="${id}" formatCode="${escapeAttribute(form)}"/>`;
  const all = `<${prefix}numFmts count="${known.length + 1}">${list?.[2] ?? ""}${element}</${prefix}numFmts>`;
  file.setText(STYLES, list ? xml.replace(list[0], () => all) : xml.replace(root, () => root + all));
  return id;
}
