import typescript from "@typescript-eslint/eslint-plugin";
import { ESLint, type Linter } from "eslint";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";

const top = path.join(import.meta.dirname, "../..");
let eslint: ESLint;

beforeAll(() => {
  // Rules that need the types of the whole project are not tried here: reading them takes longer than all the rest.
  eslint = new ESLint({
    cwd: top,
    overrideConfigFile: path.join(top, ".config/eslint.config.js"),
    overrideConfig: typescript.configs["flat/disable-type-checked"] as Linter.Config,
  });
});

/** The rules that `code` breaks if it stands in `file`, which must exist: the linter knows only the project's files. */
async function broken(file: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath: path.join(top, file) });
  return (result?.messages ?? []).map((message) => message.ruleId ?? message.message);
}

describe("the linter keeps the floors of the house apart", () => {
  it("refuses an import from above in the calculations", async () => {
    const code = 'import { catalogue } from "../functions/catalogue";\nexport const size = catalogue.length;\n';
    expect(await broken("src/calc/solve.ts", code)).toContain("no-restricted-imports");
  });

  it("lets the calculations import each other", async () => {
    const code = 'import { invalid } from "./problem";\nexport const problem = invalid("x");\n';
    expect(await broken("src/calc/solve.ts", code)).toEqual([]);
  });

  it("refuses an import from above in the functions", async () => {
    const code = 'import { Host } from "../host/port";\nexport const host = Host;\n';
    expect(await broken("src/functions/catalogue.ts", code)).toContain("no-restricted-imports");
  });

  it("refuses all but the calculations in the job", async () => {
    const code = 'import { recalculate } from "../workbook/recalculate";\nexport const work = recalculate;\n';
    expect(await broken("src/job/derived.ts", code)).toContain("no-restricted-imports");
    const calc = 'import { invalid } from "../calc/problem";\nexport const problem = invalid("x");\n';
    expect(await broken("src/job/derived.ts", calc)).toEqual([]);
  });

  it("keeps reading, saving and keeping in the bench apart, and off the grid", async () => {
    const imports = (place: string): string => `import * as x from "${place}";\nexport const one = x;\n`;
    for (const file of ["reading/toGrid", "saving/saveWorkbook", "keeping/draft"]) {
      for (const place of ["reading/locks", "saving/pictures", "keeping/slots", "grid/model"])
        if (place.split("/")[0] !== file.split("/")[0])
          expect(await broken(`src/bench/${file}.ts`, imports(`../${place}`)), place).toEqual([
            "no-restricted-imports",
          ]);
      expect(await broken(`src/bench/${file}.ts`, imports("../work/work")), file).toEqual([]);
      expect(await broken(`src/bench/${file}.ts`, imports("../../cli/icons")), file).toEqual(["no-restricted-imports"]);
    }
  });

  it("refuses Excel outside src/host/excel, as a value and as a type", async () => {
    expect(await broken("src/calc/solve.ts", "export const x = Excel.run;\n")).toContain("no-restricted-globals");
    expect(await broken("src/functions/catalogue.ts", "export type Cell = Excel.Range;\n")).toContain(
      "no-restricted-syntax",
    );
  });

  it("refuses the page and the host in the calculations", async () => {
    for (const name of ["document", "Office", "CustomFunctions", "fetch"])
      expect(await broken("src/calc/solve.ts", `export const x = ${name};\n`), name).toContain("no-restricted-globals");
  });

  it("refuses a promise nobody waits for", async () => {
    const plain = new ESLint({ cwd: top, overrideConfigFile: path.join(top, ".config/eslint.config.js") });
    const { rules } = (await plain.calculateConfigForFile(path.join(top, "src/calc/solve.ts"))) as {
      rules: Readonly<Record<string, readonly unknown[]>>;
    };
    // 2 is "error".
    for (const rule of ["no-floating-promises", "no-misused-promises", "await-thenable"])
      expect(rules[`@typescript-eslint/${rule}`]?.[0], rule).toBe(2);
  });
});
