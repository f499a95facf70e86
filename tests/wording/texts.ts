import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

const TOP = path.join(import.meta.dirname, "../..");

/** A text that a user may read, and where it stands. */
export interface UserText {
  readonly place: string;
  readonly text: string;
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
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      // One word alone is a name, a key or a class; sentences and labels have a space or a capital.
      if (/\s|^[A-Z]/.test(node.text.trim())) found.push({ place: `${file}:${line + 1}`, text: node.text });
    }
    node.forEachChild(visit);
  };
  visit(source);
  return found;
}

/** A text file's paragraphs, without code and addresses. */
export function paragraphsOf(file: string): UserText[] {
  const prose = readFileSync(path.join(TOP, file), "utf8").replace(/```[^]*?```|`[^`]*`|https?:\S+/g, "");
  return prose.split("\n").map((text, index) => ({ place: `${file}:${index + 1}`, text }));
}
