import { strFromU8, unzipSync } from "fflate";
import { attributeOf, readXml, within } from "../xlsx/xml";

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
  const root = readXml(strFromU8(workbook));
  const sheets = [...within(root, "sheet")].map((sheet) => attributeOf(sheet, "name") ?? "");
  const names = new Map<string, string>();
  for (const element of within(root, "definedName")) {
    const name = attributeOf(element, "name");
    const isOfSheet = attributeOf(element, "localSheetId") !== undefined;
    if (name && !name.startsWith("_xlnm.") && !isOfSheet) names.set(name, element.text);
  }
  return { sheets, names };
}
