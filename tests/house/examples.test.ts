import path from "node:path";
import { compileFunction } from "node:vm";
import { beforeAll, describe, expect, it } from "vitest";
import { everythingExported, exportedFunctions, publicFunctions, readExample } from "./examples";

const found = publicFunctions();
const examples = found.flatMap(({ file, name, examples: texts }) => texts.map((text) => ({ file, name, text })));
let everything: Record<string, unknown>;
beforeAll(async () => {
  everything = await everythingExported();
});

async function valueOf(call: string, file?: string): Promise<unknown> {
  const own = file === undefined ? {} : ((await import(path.join("../../src", file))) as Record<string, unknown>);
  const scope = { ...everything, ...own };
  return (compileFunction(`return (${call});`, Object.keys(scope)) as (...values: unknown[]) => unknown)(
    ...Object.values(scope),
  );
}

/** Half a unit in the last digit that a number is written with. */
function written(result: string): number {
  const [, decimals = ""] = /\.(\d+)$/.exec(result) ?? [];
  return 0.5 * 10 ** -decimals.length * (1 + 1e-9);
}

describe("the examples of the calculations", () => {
  it("are read with their call, their result and where it comes from", () => {
    const text =
      '/**\n * Doubles.\n *\n * @example twice("a; b") => "a; ba; b"; by hand\n */\nexport function twice(): void {}\nexport function none(): void {}';
    expect(exportedFunctions("x.ts", text)).toEqual([
      { file: "x.ts", name: "twice", examples: ['twice("a; b") => "a; ba; b"; by hand'] },
      { file: "x.ts", name: "none", examples: [] },
    ]);
    expect(readExample('twice("a; b") => "a; ba; b"; by hand')).toEqual({
      call: 'twice("a; b")',
      result: '"a; ba; b"',
      from: "by hand",
    });
  });

  it("stand in the docstring of every public function", () => {
    expect(found.length).toBeGreaterThan(130);
    expect(
      found.filter(({ examples: texts }) => texts.length === 0).map(({ file, name }) => `${file} ${name}`),
    ).toEqual([]);
  });

  it.each(examples)("of $file: $text", async ({ file, name, text }) => {
    const { call, result, from } = readExample(text);
    expect(call).toContain(`${name}(`);
    expect(from).not.toBe("");
    const [got, wanted] = [await valueOf(call, file), await valueOf(result)];
    if (typeof wanted !== "number") expect(got).toEqual(wanted);
    else {
      expect(typeof got).toBe("number");
      expect(Math.abs((got as number) - wanted), `${String(got)} here`).toBeLessThanOrEqual(written(result));
    }
  });
});
