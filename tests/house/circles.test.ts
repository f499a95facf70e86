import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const src = path.join(import.meta.dirname, "../../src");
const names = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((name) => /\.[jt]s$/.test(name));

/** The files of the project that a file imports, for its types or for more. */
function importsOf(name: string, text: string, all: ReadonlySet<string>): string[] {
  return ts.preProcessFile(text).importedFiles.flatMap(({ fileName }) => {
    if (!fileName.startsWith(".")) return [];
    const stem = path.join(path.dirname(name), fileName);
    const found = [stem, `${stem}.ts`, `${stem}.js`, path.join(stem, "index.ts")].find((one) => all.has(one));
    return found === undefined ? [] : [found];
  });
}

/** A way from a file by its imports back to itself, or undefined where there is none. */
function circle(imports: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const done = new Set<string>();
  const visit = (name: string, way: readonly string[]): string[] | undefined => {
    const before = way.indexOf(name);
    if (before >= 0) return [...way.slice(before), name];
    if (done.has(name)) return undefined;
    for (const next of imports.get(name) ?? []) {
      const found = visit(next, [...way, name]);
      if (found) return found;
    }
    done.add(name);
    return undefined;
  };
  for (const name of imports.keys()) {
    const found = visit(name, []);
    if (found) return found;
  }
  return undefined;
}

describe("imports", () => {
  it("that lead back to where they began are found, those of types too", () => {
    const files = new Map([
      ["a/one.ts", 'import { two } from "./two";'],
      ["a/two.ts", 'export * from "../b";'],
      ["b/index.ts", 'import type { One } from "../a/one";'],
      ["b/four.ts", 'import "../a/one";'],
    ]);
    const all = new Set(files.keys());
    const imports = new Map([...files].map(([name, text]) => [name, importsOf(name, text, all)]));
    expect(circle(imports)).toEqual(["a/one.ts", "a/two.ts", "b/index.ts", "a/one.ts"]);
    imports.set("b/index.ts", []);
    expect(circle(imports)).toBeUndefined();
  });

  it("lead nowhere in a circle in the whole of src", () => {
    const all = new Set(names);
    const imports = new Map(
      names.map((name) => [name, importsOf(name, readFileSync(path.join(src, name), "utf8"), all)]),
    );
    // A reader who took no import for one of ours would find no circle either.
    expect([...imports.values()].flat().length).toBeGreaterThan(names.length);
    expect(circle(imports)).toBeUndefined();
  });
});
