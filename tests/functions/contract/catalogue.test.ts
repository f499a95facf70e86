import { describe, expect, it } from "vitest";
import { catalogue, loadLater } from "../../../src/functions/catalogue";
import { exampleCall } from "../../../src/functions/contract/exampleCall";
import { describeArgument, LONGEST_DESCRIPTION } from "../../../src/functions/contract/metadata";

await loadLater();

describe.each(catalogue.map((d) => [d.name, d] as const))("RILL.%s", (name, declaration) => {
  it("has a name Excel accepts and that no cell address has", () => {
    expect(name).toMatch(/^[A-Z]{3,24}$/);
  });

  it("says what it does, how, from where, and how far to trust it", () => {
    expect(declaration.summary.length).toBeLessThanOrEqual(LONGEST_DESCRIPTION);
    expect(declaration.summary).toMatch(/[.]$/);
    for (const text of [declaration.formula, declaration.source, declaration.limits])
      expect(text.length).toBeGreaterThan(10);
  });

  it("describes every argument within the length Excel shows", () => {
    for (const [key, argument] of Object.entries(declaration.args)) {
      expect(key).toMatch(/^[a-z][a-z_]*$/);
      expect(describeArgument(argument).length, key).toBeLessThanOrEqual(LONGEST_DESCRIPTION);
    }
  });

  it("keeps optional arguments behind the needed ones", () => {
    const optional = Object.values(declaration.args).map((a) => a.optional);
    expect(optional.lastIndexOf(false)).toBeLessThan(optional.indexOf(true) === -1 ? Infinity : optional.indexOf(true));
  });

  it("has at least one worked example", () => {
    expect(declaration.examples.length).toBeGreaterThan(0);
  });

  it.each(declaration.examples.map((example) => [exampleCall(name, example.args), example] as const))(
    "example =RILL.%s",
    (_, example) => {
      const result = declaration.evaluate(example.args);
      const check = (actual: unknown, expected: number | string): void => {
        if (typeof expected === "string") expect(actual).toBe(expected);
        else
          expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(
            example.within * Math.abs(expected) + 1e-12,
          );
      };
      if (typeof example.gives === "object") {
        for (const { at, is } of example.gives) check((result as unknown[][])[at[0]]?.[at[1]], is);
      } else check(result, example.gives);
    },
  );

  it("names the argument when a needed one is blank", () => {
    const [first] = Object.entries(declaration.args);
    if (!first || first[1].optional) return;
    for (const blank of [undefined, null, ""]) {
      expect(() => declaration.evaluate([blank])).toThrow(first[0].replace(/_/g, " "));
    }
  });

  it("names the argument that holds an error cell", () => {
    Object.keys(declaration.args).forEach((key, index) => {
      if (key === "units") return;
      const args = [...(declaration.examples[0]?.args ?? [])];
      args[index] = { error: "#N/A" };
      expect(() => declaration.evaluate(args), key).toThrow(`${key.replace(/_/g, " ")} holds the error #N/A`);
    });
  });
});

describe("the catalogue", () => {
  it("has no name twice", () => {
    expect(new Set(catalogue.map((d) => d.name)).size).toBe(catalogue.length);
  });
});
