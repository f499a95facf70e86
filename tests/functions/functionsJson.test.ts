import { describe, expect, it } from "vitest";
import { catalogue, findDeclaration } from "../../src/functions/catalogue";
import {
  describeArgument,
  functionsJson,
  LONGEST_DESCRIPTION,
  type FunctionsJson,
} from "../../src/functions/contract/metadata";
import { builtFile } from "../built";

const metadata = functionsJson(catalogue);

/** One line per function: what a workbook that was saved years ago relies on. */
function signature({ id, parameters, result }: FunctionsJson["functions"][number]): string {
  const shown = parameters.map(({ name, type, dimensionality, optional }) => {
    const text = `${name}: ${type}${dimensionality === "matrix" ? "[][]" : ""}`;
    return optional ? `[${text}]` : text;
  });
  return `${id}(${shown.join(", ")}) → ${result.dimensionality ?? "scalar"}`;
}

describe("functions.json", () => {
  it("keeps the signatures that released workbooks hold", async () => {
    // A change here breaks workbooks in the field: prefer a new function, and raise the manifests' version.
    const lines = metadata.functions.map(signature).sort();
    await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("signatures.txt");
  });

  it("stands in the built site as here, its help at the site's own address", () => {
    const built = builtFile("functions.json").toString();
    expect(built).not.toContain("localhost");
    expect((JSON.parse(built) as FunctionsJson).functions.map(signature)).toEqual(metadata.functions.map(signature));
  });

  it("names exactly the functions of the catalogue, each once", () => {
    expect(metadata.functions.map((f) => f.id).sort()).toEqual(catalogue.map((d) => d.name).sort());
    expect(metadata.functions.map((f) => f.name)).toEqual(metadata.functions.map((f) => f.id));
  });

  it("lets a function see an error cell, so that it can name it", () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
  });

  it.each(metadata.functions.map((f) => [f.id, f] as const))("%s says what its declaration says", (id, f) => {
    const declaration = findDeclaration(id);
    if (!declaration) throw new Error(`${id} is not in the catalogue`);
    expect(f.description).toBe(declaration.summary);
    const entries = Object.entries(declaration.args);
    expect(f.parameters.map((p) => p.name)).toEqual(entries.map(([key]) => key));
    f.parameters.forEach((parameter, index) => {
      const argument = entries[index]?.[1];
      if (!argument) throw new Error(`${parameter.name} is not declared`);
      expect(parameter.description).toBe(describeArgument(argument));
      expect(parameter.optional ?? false).toBe(argument.optional);
      expect(parameter.type).toBe("any");
      expect(parameter.dimensionality === "matrix").toBe(argument.hostType === "any[][]");
    });
    expect(f.result.dimensionality === "matrix").toBe(declaration.result.hostType === "any[][]");
  });

  it("has ids that Excel cannot take for a cell, and that differ even with dots as underscores", () => {
    for (const { id } of metadata.functions) {
      expect(id).toMatch(/^[A-Z]{3,24}$/);
      // Columns end at XFD: four letters, or letters alone, are never a cell.
      expect(id, `${id} looks like a cell`).not.toMatch(/^[A-Z]{1,3}\d+$/);
    }
    const stored = metadata.functions.map(({ id }) => id.replace(/\./g, "_"));
    expect(new Set(stored).size).toBe(stored.length);
  });

  it("keeps every description within what all hosts and the store take, and every help page under https", () => {
    for (const f of metadata.functions) {
      for (const text of [f.description, ...f.parameters.map((p) => p.description)]) {
        expect(text.length, `${f.id}: ${text}`).toBeLessThanOrEqual(LONGEST_DESCRIPTION);
        expect(text.length).toBeGreaterThan(5);
      }
      expect(f.helpUrl).toMatch(new RegExp(`^https://.+/help/${f.id.toLowerCase()}\\.html$`));
      expect(f.parameters.length).toBeLessThanOrEqual(128);
    }
  });
});
