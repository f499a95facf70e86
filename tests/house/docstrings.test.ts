import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const calc = path.join(import.meta.dirname, "../../src/calc");
const files = readdirSync(calc, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));

/** The exported functions of a source text that no comment explains. */
function unexplained(text: string): string[] {
  const source = ts.createSourceFile("x.ts", text, ts.ScriptTarget.Latest, true);
  return source.statements
    .filter(ts.isFunctionDeclaration)
    .filter((f) => f.modifiers?.some((m) => m.kind === ts.SyntaxKind.ExportKeyword))
    .filter((f) => ts.getJSDocCommentsAndTags(f).length === 0 && !isLaterOverload(f, source))
    .map((f) => f.name?.text ?? "");
}

/** An implementation behind explained overloads needs no second comment. */
function isLaterOverload(f: ts.FunctionDeclaration, source: ts.SourceFile): boolean {
  const sameName = source.statements.filter(ts.isFunctionDeclaration).filter((g) => g.name?.text === f.name?.text);
  return sameName.indexOf(f) > 0;
}

describe("the calculations explain themselves", () => {
  it("finds a function without a comment", () => {
    expect(unexplained("export function a(): void {}\n/** Explained. */\nexport function b(): void {}")).toEqual(["a"]);
  });

  it.each(files)("every exported function of %s has a docstring", (file) => {
    expect(unexplained(readFileSync(path.join(calc, file), "utf8"))).toEqual([]);
  });
});
