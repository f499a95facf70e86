import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { lintWorkbook } from "../../src/workbook/lint";
import { writeWorkbook } from "../../src/workbook/write";
import { OFFICES, validate } from "../bench/validate";
import { ALL } from "../effort";
import { builtTemplates, type BuiltTemplate } from "./templates";

const top = path.join(import.meta.dirname, "../..");
const functions = new Set(catalogue.map(({ name }) => name));
let built: readonly BuiltTemplate[];
beforeAll(async () => {
  built = await builtTemplates();
});

describe("the files", () => {
  it.each(OFFICES)("open clean in the Open XML validator for %s", async (office) => {
    for (const { file, bytes, model } of built) {
      expect(validate(bytes, office), file).toEqual([]);
      if (ALL) expect(validate(await writeWorkbook(model, { charts: false }), office), file).toEqual([]);
    }
  });

  it("pass the lint, with and without charts", async () => {
    for (const { file, bytes, model } of built) {
      expect(lintWorkbook(bytes, { functions }), file).toEqual([]);
      expect(lintWorkbook(await writeWorkbook(model, { charts: false }), { functions }), file).toEqual([]);
    }
  });

  it("store results, ask for no calculation, and mark dynamic arrays", () => {
    for (const { file, bytes } of built) {
      const parts = unzipSync(bytes);
      expect(Object.keys(parts), file).not.toContain("xl/calcChain.xml");
      expect(strFromU8(parts["xl/workbook.xml"] ?? new Uint8Array())).toContain('<calcPr calcId="191029"/>');
      const sheets = Object.keys(parts).filter((name) => name.startsWith("xl/worksheets/sheet"));
      const xml = sheets.map((name) => strFromU8(parts[name] ?? new Uint8Array())).join("");
      if (xml.includes("_xldudf_")) expect(Object.keys(parts), file).toContain("xl/metadata.xml");
      expect(xml.match(/<f[ >]/g)?.length).toBe(xml.match(/<f[ >][^<]*<\/f><v>/g)?.length);
    }
  });

  it("show no green triangle at formulas that may be typed over, or differ from their neighbors'", () => {
    for (const { file, bytes } of built) {
      for (const [part, bytesOf] of Object.entries(unzipSync(bytes))) {
        if (!/^xl\/worksheets\/sheet\d+\.xml$/.test(part)) continue;
        const [, ignored = ""] =
          /<ignoredErrors><ignoredError ([^>]*)\/><\/ignoredErrors>/.exec(strFromU8(bytesOf)) ?? [];
        for (const one of ['sqref="A1:XFD1048576"', 'formula="1"', 'formulaRange="1"', 'unlockedFormula="1"'])
          expect(ignored, `${file} ${part}`).toContain(one);
        // A cell in error keeps its triangle.
        expect(ignored, `${file} ${part}`).not.toContain("evalError");
      }
    }
  });

  it("say the height of every row above a table that may grow: the sheet's usual one is that of its rows", () => {
    for (const { file, bytes, model } of built) {
      const parts = unzipSync(bytes);
      model.sheets.forEach(({ name, openFrom }, index) => {
        if (openFrom === undefined) return;
        const xml = strFromU8(parts[`xl/worksheets/sheet${index + 1}.xml`] ?? new Uint8Array());
        const rows = [...xml.matchAll(/<row r="(\d+)"([^>]*)>/g)].filter(([, row]) => Number(row) < openFrom);
        expect(rows, `${file}, ${name}`).toHaveLength(openFrom - 1);
        for (const [, row, given] of rows) expect(given, `${file}, ${name}, row ${row ?? ""}`).toMatch(/ ht="/);
      });
    }
  });

  it("are those in templates/; `npm run templates` writes them anew", () => {
    for (const { file, bytes } of built) {
      const kept = readFileSync(path.join(top, "templates", file));
      expect(Buffer.compare(kept, Buffer.from(bytes)), `${file} is out of date: run npm run templates`).toBe(0);
    }
  });

  it("come out byte for byte the same in another time zone", { timeout: 180_000 }, () => {
    const tried = ALL ? built : built.slice(1, 2);
    const script = `
      import { createHash } from "node:crypto";
      import { buildWorkbook, TEMPLATES } from "${path.join(top, "src/workbook/build.ts")}";
      const tried = ${JSON.stringify(tried.map(({ file }) => file))};
      for (const { file, system, filled } of TEMPLATES.filter((one) => tried.includes(one.file))) {
        const hash = createHash("sha256").update(await buildWorkbook(system, filled)).digest("hex");
        console.log(file, hash, new Date(0).getTimezoneOffset());
      }`;
    const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
    const file = path.join(folder, "hashes.mts");
    try {
      writeFileSync(file, script);
      // Half a day from here, whichever way the machine is set.
      const east = new Date(0).getTimezoneOffset() > -300;
      const env = { ...process.env, TZ: east ? "Pacific/Auckland" : "America/Los_Angeles" };
      const there = execFileSync(path.join(top, "node_modules/.bin/tsx"), [file], { encoding: "utf8", cwd: top, env });
      const here = tried.map(({ file: name, bytes }) => `${name} ${createHash("sha256").update(bytes).digest("hex")}`);
      expect(
        there
          .trim()
          .split("\n")
          .map((line) => line.replace(/ -?\d+$/, "")),
      ).toEqual(here);
      expect(there).not.toMatch(new RegExp(` ${new Date(0).getTimezoneOffset()}$`, "m"));
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it("can leave out what readers without our functions would recalculate", async () => {
    const [, demo] = built;
    if (!demo) throw new Error("no demo");
    const bytes = await writeWorkbook(demo.model, { form: "values" });
    const xml = Object.entries(unzipSync(bytes)).filter(([name]) => name.startsWith("xl/worksheets/sheet"));
    expect(xml.some(([, part]) => strFromU8(part).includes("_xldudf_"))).toBe(false);
    // The mark of a dynamic array goes with its formula: until November 2026 it stayed on cells behind an empty one.
    const unmarked = /<c [^>]*\bcm="[^>]*>(?!<f)/;
    for (const [name, part] of xml) expect(unmarked.exec(strFromU8(part))?.[0], name).toBeUndefined();
    expect(validate(bytes, "Microsoft365")).toEqual([]);
  });
});
