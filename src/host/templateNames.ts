import { strFromU8, unzipSync } from "fflate";
import { unescapeXml } from "./xmlText";

/** What a template file says of its sheets and names. */
export interface TemplateContents {
  readonly sheets: readonly string[];
  /** Workbook-wide names and their references, as the file writes them. */
  readonly names: ReadonlyMap<string, string>;
}

/** Reads sheet names and defined names out of a template of ours, to check what an insertion left of them. */
export function templateContents(bytes: Uint8Array): TemplateContents {
  const part = "xl/workbook.xml";
  const workbook = unzipSync(bytes, { filter: (file) => file.name === part })[part];
  if (!workbook) throw new Error("the template has no workbook part");
  const xml = strFromU8(workbook);
  const sheets = [...xml.matchAll(/<sheet [^>]*?name="([^"]*)"/g)].map((match) => unescapeXml(match[1] ?? ""));
  const names = new Map<string, string>();
  for (const [, attributes, reference] of xml.matchAll(/<definedName ([^>]*)>([^<]*)</g)) {
    const name = /name="([^"]*)"/.exec(attributes ?? "")?.[1];
    if (name && !name.startsWith("_xlnm.") && !attributes?.includes("localSheetId")) {
      names.set(unescapeXml(name), unescapeXml(reference ?? ""));
    }
  }
  return { sheets, names };
}
