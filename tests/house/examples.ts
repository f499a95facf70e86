import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

const src = path.join(import.meta.dirname, "../../src");

/** An exported function of the calculations, with the examples of its docstring. */
export interface Exported {
  /** "pump/power.ts" */
  readonly file: string;
  readonly name: string;
  readonly examples: readonly string[];
}

function sourcesOf(folder: string): string[] {
  return readdirSync(path.join(src, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
    .map((name) => path.join(folder, name));
}

function parsed(file: string, text: string): ts.SourceFile {
  return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
}

/** The exported functions of a source text, overloads once. */
export function exportedFunctions(file: string, text: string): Exported[] {
  const found = new Map<string, string[]>();
  for (const statement of parsed(file, text).statements) {
    if (!ts.isFunctionDeclaration(statement) || !statement.name) continue;
    if (!statement.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) continue;
    const examples = ts
      .getJSDocTags(statement)
      .filter(({ tagName }) => tagName.text === "example")
      .map(({ comment }) => (ts.getTextOfJSDocComment(comment) ?? "").replace(/\s+/g, " ").trim());
    found.set(statement.name.text, [...(found.get(statement.name.text) ?? []), ...examples]);
  }
  return [...found].map(([name, examples]) => ({ file, name, examples }));
}

/** What a source text imports of the project, by file of src and name. */
function importedBy(file: string, text: string): string[] {
  return parsed(file, text).statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
    const from = statement.moduleSpecifier.text;
    const named = statement.importClause?.namedBindings;
    if (!from.startsWith(".") || !named || !ts.isNamedImports(named)) return [];
    const target = `${path.join(path.dirname(file), from)}.ts`;
    return named.elements.map(({ name, propertyName }) => `${target} ${(propertyName ?? name).text}`);
  });
}

/**
 * The public functions of src/calc: exported, and not for files of their own folder alone, which is how a folder shares its
 * inside (the parts of the cut plan, of the reconciliation).
 */
export function publicFunctions(): Exported[] {
  const folders = readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const files = folders.flatMap(({ name }) => sourcesOf(name));
  const users = new Map<string, Set<string>>();
  for (const file of files) {
    for (const key of importedBy(file, readFileSync(path.join(src, file), "utf8"))) {
      users.set(key, (users.get(key) ?? new Set()).add(path.dirname(file)));
    }
  }
  return files
    .filter((file) => file.startsWith(`calc${path.sep}`))
    .flatMap((file) => exportedFunctions(file, readFileSync(path.join(src, file), "utf8")))
    .filter(({ file, name }) => {
      const from = [...(users.get(`${file} ${name}`) ?? [])];
      return from.length === 0 || from.some((folder) => folder !== path.dirname(file));
    });
}

export interface Example {
  readonly call: string;
  readonly result: string;
  /** Where the result comes from: a source, or arithmetic by hand. */
  readonly from: string;
}

/** Reads "pipeSpeed(0.002, 0.05) => 1.0186; 0.002 / 0.0019635". */
export function readExample(text: string): Example {
  const [, call = "", result = "", from = ""] = /^(.+) => ("(?:[^"\\]|\\.)*"|[^;]+); (.+)$/.exec(text) ?? [];
  return { call, result, from };
}

/** Everything that the calculations export, by name, for the calls of examples. */
export async function everythingExported(): Promise<Record<string, unknown>> {
  const scope: Record<string, unknown> = {};
  for (const file of sourcesOf("calc")) {
    const exported = (await import(path.join(src, file))) as Record<string, unknown>;
    for (const [name, value] of Object.entries(exported)) scope[name] ??= value;
  }
  return scope;
}
