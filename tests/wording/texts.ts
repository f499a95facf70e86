import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import type { WorkbookModel } from "../../src/workbook/model";
import { cellAddress } from "../../src/workbook/layout/address";

const TOP = path.join(import.meta.dirname, "../..");

/** A text that a user may read, and where it stands. */
export interface UserText {
  readonly place: string;
  readonly text: string;
  /** Said in the workbook in meters alone, which spells as the rest of the world does. */
  readonly abroad?: boolean;
}

/** The texts in the source files of a folder: strings and templates, without what is read by programs alone. */
export function textsIn(folder: string): UserText[] {
  const files = readdirSync(path.join(TOP, folder), { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".ts"),
  );
  return files.flatMap((name) => textsOfFile(path.join(folder, name)));
}

export function textsOfFile(file: string): UserText[] {
  const source = ts.createSourceFile(file, readFileSync(path.join(TOP, file), "utf8"), ts.ScriptTarget.Latest, true);
  const found: UserText[] = [];
  const visit = (node: ts.Node, abroad = false): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      // One word alone is a name, a key or a class; sentences and labels have a space or a capital.
      if (/\s|^[A-Z]/.test(node.text.trim())) found.push({ place: `${file}:${line + 1}`, text: node.text, abroad });
    }
    const ofMeters = ts.isPropertyAssignment(node) && node.name.getText() === "SI";
    node.forEachChild((child) => visit(child, abroad || ofMeters));
  };
  visit(source);
  return found;
}

/** A text file's paragraphs, without code and addresses. */
export function paragraphsOf(file: string): UserText[] {
  const prose = readFileSync(path.join(TOP, file), "utf8").replace(/```[^]*?```|`[^`]*`|https?:\S+/g, "");
  return prose.split("\n").map((text, index) => ({ place: `${file}:${index + 1}`, text }));
}

/** The texts a workbook shows: its tabs, cells, the words in formulas, and what the rules of cells say and offer. */
export function shownTexts(model: WorkbookModel): UserText[] {
  return model.sheets.flatMap(({ name, rows, validations }) => [
    { place: "tab", text: name },
    ...[...rows].flatMap(([row, cells]) =>
      [...cells].flatMap(([column, { value, formula }]) => {
        const said = [...(formula ?? "").matchAll(/"([^"]*)"/g)].map(([, words]) => words ?? "");
        const texts = [typeof value === "string" ? value : "", ...said].filter(Boolean);
        return texts.map((text) => ({ place: `${name}!${cellAddress(row, column)}`, text }));
      }),
    ),
    ...validations.map(({ title, message, choices = "" }) => ({
      place: `${name}, rule`,
      text: [title, message, ...(typeof choices === "string" ? [] : choices)].join(" "),
    })),
  ]);
}
