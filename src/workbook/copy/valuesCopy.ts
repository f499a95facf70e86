import { FileRefusal } from "../file/refusal";
import { namesIn } from "../lint/formula";
import { parseArea } from "../../xlsx/address";
import { Package } from "../../xlsx/package";
import { attributeOf, childOf, escapeText, inPlaceOf, startTag, within, writtenAttributes } from "../../xlsx/xml";
import { addCopySheet, COPY_NAME } from "./copySheet";
import { valuesOnly } from "./sheetValues";

/** What a copy says of itself. */
export interface CopyFacts {
  /** When it was made, as the person's clock shows it. */
  readonly made: Date;
  /** The file it was made from, where that has a name. */
  readonly from?: string;
}

/**
 * A workbook's values as it stores them, without formulas, for those who have no add-in: every program shows the same in it.
 * It says on its first sheet, at the head of each sheet and of each page that it is a copy, and when it was made; nothing in
 * it can be typed over, since nothing would follow. It offers no add-in.
 */
export function valuesCopy(bytes: Uint8Array, { made, from }: CopyFacts): Uint8Array {
  const file = new Package(bytes);
  if (copyMade(file) !== undefined)
    throw new FileRefusal("This is a copy of values already; make copies of the workbook itself.");
  const time = timeOf(made);
  const mark = `Copy of values, ${time}`;
  const sheets = file.sheets();
  const job = textOf(file, "JobName");
  const used = new Set<string>();
  for (const [name, part] of sheets) {
    const { xml, unfinished, formulas } = valuesOnly(file.text(part), { mark, texts: file.sharedTexts() });
    const [first] = unfinished;
    if (first !== undefined)
      throw new FileRefusal(
        `${name}!${first} has no result yet, so the copy would lack it: let the workbook calculate with the add-in, then try again.`,
      );
    file.setText(part, xml);
    for (const formula of formulas) for (const word of namesIn(formula)) used.add(word.toLowerCase());
  }
  lockAll(file);
  dropNames(file, used);
  for (const kind of ["calcChain", "sheetMetadata"]) file.removeWithMentions(file.partOf(kind) ?? "", file.workbook);
  dropAddin(file);
  addCopySheet(file, { time, job, from, taken: new Set(sheets.keys()) });
  return file.bytes();
}

/** The time at which a file was made as a copy of values; undefined where it is no copy. */
function copyMade(file: Package): string | undefined {
  return textOf(file, COPY_NAME);
}

/** The same of a file's bytes; undefined also where they are no package that can be read. */
export function copyMadeAt(bytes: Uint8Array): string | undefined {
  try {
    return copyMade(new Package(bytes));
  } catch {
    return undefined;
  }
}

/** "2026-11-28 12:03", which is read the same everywhere. */
function timeOf(made: Date): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  const day = `${made.getFullYear()}-${two(made.getMonth() + 1)}-${two(made.getDate())}`;
  return `${day} ${two(made.getHours())}:${two(made.getMinutes())}`;
}

/** The name of a copy of a file: "Job values 2026-11-28 12.03.xlsx"; no file system takes a colon. */
export function copyFileName(fileName: string, made: Date): string {
  return `${fileName.replace(/\.xlsx$/i, "")} values ${timeOf(made).replace(":", ".")}.xlsx`;
}

/** The text of the cell that a name stands for. */
function textOf(file: Package, name: string): string | undefined {
  const book = file.xml(file.workbook);
  const defined = book && [...within(book, "definedName")].find((one) => attributeOf(one, "name") === name);
  const area = defined && parseArea(defined.text);
  const sheet = area && file.xml(file.sheets().get(area.sheet) ?? "");
  if (!sheet) return undefined;
  const address = defined.text.slice(defined.text.lastIndexOf("!") + 1).replace(/\$/g, "");
  const cell = [...within(sheet, "c")].find((one) => attributeOf(one, "r") === address);
  const stored = childOf(cell, "v")?.text;
  if (attributeOf(cell, "t") === "s") return file.sharedTexts()[Number(stored)];
  const inline = childOf(cell, "is");
  return inline ? [...within(inline, "t")].map(({ text }) => text).join("") : stored;
}

/** Looks that let a person type lose that: what is typed into a copy changes nothing. */
function lockAll(file: Package): void {
  const part = file.partOf("styles");
  const root = part === undefined ? undefined : file.xml(part);
  if (part === undefined || !root) return;
  const open = [...within(root, "protection")].filter((one) => attributeOf(one, "locked") === "0");
  file.change(
    part,
    open.map((one) => startTag(one, { locked: "1" })),
  );
}

/** Names that only formulas read go, so that nobody takes the copy for the workbook; what is printed and coloured by keeps its own. */
function dropNames(file: Package, used: ReadonlySet<string>): void {
  const part = file.workbook;
  const list = childOf(file.xml(part), "definedNames");
  if (!list) return;
  const kept = list.children.filter((one) => {
    const name = attributeOf(one, "name") ?? "";
    return name.startsWith("_xlnm.") || used.has(name.toLowerCase());
  });
  const written = kept.map(
    (one) =>
      `<${one.prefix}definedName${writtenAttributes(one.attributes)}>${escapeText(one.text)}</${one.prefix}definedName>`,
  );
  const all = kept.length === 0 ? "" : `<${list.prefix}definedNames>${written.join("")}</${list.prefix}definedNames>`;
  file.change(part, [inPlaceOf(list, all)]);
}

/** A copy needs no add-in, so it must not ask for one. */
function dropAddin(file: Package): void {
  const panes = [...file.relations("").values()].find(({ type }) => type.endsWith("/webextensiontaskpanes"));
  if (!panes) return;
  for (const { target } of file.relations(panes.target).values()) file.removeWithMentions(target, panes.target);
  file.removeWithMentions(panes.target, "");
}
