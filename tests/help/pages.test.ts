import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { WEIGHT_ERROR } from "../../src/calc/stone/boulder";
import { catalogue } from "../../src/functions/catalogue";
import { HELP_BASE } from "../../src/functions/contract/metadata";
import { escapeHtml } from "../../src/help/html";
import { functionPath } from "../../src/help/functionPage";
import { helpPages } from "../../src/help/pages";
import { WORKING_ADDRESS } from "../../src/site/address";
import { demoJob } from "../../src/site/demoJob";
import { recalculate } from "../../src/workbook/recalculate";
import { numberSources } from "../../src/site/numberSources";

const pages = helpPages(catalogue, "1.2.3", await demoJob(path.join(import.meta.dirname, "../..")), numberSources());
/** Files that the build adds beside the pages. */
const BUILT = [
  /^icons\/icon-\d+\.png$/,
  /^templates\/rillwright-(us|si)-(blank|demo|company|company-blank)\.xlsx$/,
  /^help\.(css|js)$/,
  /^help\/pictures\/(site|ground|pump|price|reconcile)\.png$/,
  /^(manifest\.xml|rillwright-unified\.zip|licences\.txt|bench\.html)$/,
];

describe("the help pages", () => {
  it("has one page for each function, at the address Excel is told", () => {
    expect(HELP_BASE.startsWith(`${WORKING_ADDRESS}/`)).toBe(true);
    for (const { name } of catalogue) {
      expect(`${WORKING_ADDRESS}/${functionPath(name)}`).toBe(`${HELP_BASE}/${name.toLowerCase()}.html`);
      expect(pages.has(functionPath(name)), name).toBe(true);
    }
  });

  it.each(catalogue.map((d) => [d.name, d] as const))("tells all of %s", (name, declaration) => {
    const page = pages.get(functionPath(name)) ?? "";
    const { summary, formula, source, limits, caution, args } = declaration;
    for (const text of [summary, formula, source, limits, caution ?? ""]) expect(page).toContain(escapeHtml(text));
    for (const [key, argument] of Object.entries(args)) {
      expect(page).toContain(`<code>${argument.optional ? `[${key}]` : key}</code>`);
      expect(page).toContain(escapeHtml(argument.about));
      for (const column of Object.keys(argument.columns ?? {})) expect(page, column).toContain(column);
    }
  });

  it("gives one figure for the error of a stone's weight: here, in the functions and in the README", () => {
    const readme = readFileSync(path.join(import.meta.dirname, "../../README.md"), "utf8");
    const texts = [readme, pages.get("help/limits.html") ?? ""];
    for (const name of ["BOULDERWEIGHT", "BOULDERMIX", "BOULDERTONS"]) texts.push(pages.get(functionPath(name)) ?? "");
    for (const text of texts) expect(text).toContain(WEIGHT_ERROR);
    for (const text of texts) expect(text).not.toMatch(/off by a fifth|15 % either way|scatter by a third/);
  });

  it("types no figure into the ten steps of a first job: each is the demo's, as its cells show it", async () => {
    const page = pages.get("help/first-job.html") ?? "";
    const steps = page.slice(page.indexOf("<h1"), page.indexOf("</main>"));
    expect(steps.match(/<h2>\d+\. /g)).toHaveLength(10);
    // But for the notes that are to be typed, and the numbers of the steps.
    const prose = steps.replace(/<code>.*?<\/code>|<output.*?<\/output>|<h2>\d+\./g, "").replace(/<[^>]*>/g, "");
    expect(prose.match(/\d[^ ]*/g) ?? []).toEqual([]);
    const figures = [...steps.matchAll(/<output data-name="(\w+)">([^<]*)/g)];
    expect(figures.length).toBeGreaterThan(6);
    const demo = await recalculate(readFileSync("templates/rillwright-us-demo.xlsx"));
    for (const [, name = "", said = ""] of figures) {
      const value = demo.named(name)?.[0]?.[0] ?? "";
      if (typeof value === "string") expect(said).toBe(value);
      // As many decimals as are said: half of the last one either way.
      else {
        const decimals = /\.(\d+)/.exec(said)?.[1]?.length ?? 0;
        expect(Math.abs(Number(said.replace(/[$,]/g, "")) - Number(value)), name).toBeLessThanOrEqual(
          0.5 * 10 ** -decimals + 1e-9,
        );
      }
    }
  });

  it("lists every function in the index", () => {
    for (const { name } of catalogue) expect(pages.get("help/index.html")).toContain(`>${name}</a>`);
  });

  it.each([...pages])("%s leads nowhere that does not exist, and runs no script of its own", (path, text) => {
    for (const [, target = ""] of text.matchAll(/(?:href|src)="([^"#]+)[^"]*"/g)) {
      const resolved = new URL(target, `https://site/${path}`);
      expect(resolved.origin, target).toBe("https://site");
      const file = resolved.pathname.slice(1);
      expect(pages.has(file) || BUILT.some((pattern) => pattern.test(file)), `${path} → ${target}`).toBe(true);
    }
    expect(text).not.toMatch(/<script(?![^>]*\bsrc=)/);
    expect(text).not.toMatch(/\son[a-z]+=|style=/);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
    expect(text.match(/<h1/g)).toHaveLength(1);
  });
});
