import { unzipSync } from "fflate";
import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { functionPath } from "../../src/help/functionPage";
import { WORKING_ADDRESS } from "../../src/site/address";
import { ADDIN_BUDGET, ADDIN_FILES, BENCH_BUDGET, benchFiles, DRAFTING_FILES } from "../../src/site/sizes";
import { builtFile, builtFiles } from "../built";

const files = builtFiles();
const text = (name: string): string => builtFile(name).toString();
const base = /<SourceLocation DefaultValue="([^"]+)\/taskpane\.html"/.exec(text("manifest.xml"))?.[1] ?? "";
const version = (
  JSON.parse(readFileSync(path.join(import.meta.dirname, "../../package.json"), "utf8")) as { version: string }
).version;
const pages = files.filter((name) => name.endsWith(".html"));

const bench = [...benchFiles(new Map(files.map((name) => [name, builtFile(name)])))];

describe("the built site", () => {
  it("has everything a host or a person asks for", () => {
    const wanted = [
      ...[
        "index",
        "bench",
        "taskpane",
        "help/index",
        "help/guide",
        "help/limits",
        "help/support",
        "help/privacy",
        "help/terms",
      ].map((p) => `${p}.html`),
      ...["functions.js", "functions.json", "taskpane.js", "bench.js", "sw.js", "manifest.xml", "manifest.json"],
      ...["rillwright-unified.zip", "licences.txt", "sizes.txt"],
      ...["site", "pump", "price", "reconcile"].map((name) => `help/pictures/${name}.png`),
      ...["us-blank", "us-demo", "si-blank", "si-demo"].map((name) => `templates/rillwright-${name}.xlsx`),
      ...[16, 20, 24, 32, 40, 48, 64, 80, 128].map((size) => `icons/icon-${size}.png`),
      ...catalogue.map((d) => functionPath(d.name)),
    ];
    expect(wanted.filter((name) => !files.includes(name))).toEqual([]);
  });

  it.each([
    ["Excel load functions and pane", files.filter((name) => ADDIN_FILES.test(name)), 4, ADDIN_BUDGET],
    ["a browser load the bench", bench, 12, BENCH_BUDGET],
  ])("lets %s within the budget", (_, found, least, budget) => {
    expect(found.length).toBeGreaterThanOrEqual(least);
    const sent = found.map((name) => gzipSync(builtFile(name), { level: 9 }).length);
    expect(sent.reduce((sum, size) => sum + size, 0)).toBeLessThan(budget);
  });

  it("keeps what the bench loads to draft a job for when there is no network", () => {
    const drafting = files.filter((name) => name.startsWith("drafting.") && !DRAFTING_FILES.test(name));
    expect(drafting).toHaveLength(1);
    expect(text("sw.js")).toContain(drafting[0]);
  });

  it("serves each file that the manifests and functions.json name, from one address", () => {
    const named = ["manifest.xml", "manifest.json", "functions.json"].flatMap((name) =>
      [...text(name).matchAll(/https?:\/\/[^"<\s]+/g)].map(([url]) => url),
    );
    const own = named.filter((url) => url.startsWith(base));
    const foreign = named.filter((url) => !url.startsWith(base));
    expect(own.length).toBeGreaterThan(catalogue.length);
    for (const url of own) expect(files, url).toContain(decodeURI(url.slice(base.length + 1)));
    for (const url of foreign)
      expect(url).toMatch(/^https?:\/\/(schemas\.microsoft\.com|www\.w3\.org|developer\.microsoft\.com)\//);
  });

  // "npm test" builds for an address of its own; a build without one keeps the working address on purpose.
  it.skipIf(base === WORKING_ADDRESS)("leaves nothing of the working address, nor of this machine, anywhere", () => {
    const texts = files.filter((name) => /\.(html|js|json|xml|txt|css)$/.test(name));
    expect(texts.filter((name) => text(name).includes(WORKING_ADDRESS))).toEqual([]);
    // The embedded spreadsheet's own scripts hold addresses; they tell by them whether a link is one. The bench knows the
    // name alone, to tell whether another server of this machine may hold a draft.
    const address = /\/\/localhost|localhost:\d/;
    expect(texts.filter((name) => name !== "page.js" && address.test(text(name)))).toEqual([]);
  });

  it.each(pages)("%s runs scripts of its own files only, under a policy", (page) => {
    const markup = text(page);
    const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(markup)?.[1] ?? "";
    const scripts = /script-src ([^;]+)/.exec(policy)?.[1];
    expect(scripts).toBe(page === "taskpane.html" ? "'self' https://appsforoffice.microsoft.com" : "'self'");
    expect(policy).toMatch(/default-src '(self|none)'/);
    for (const [, attributes = "", body = ""] of markup.matchAll(/<script\b([^>]*)>([^<]*)/g)) {
      expect(attributes).toContain("src=");
      expect(body).toBe("");
    }
    expect(markup).not.toMatch(/\son[a-z]+="/);
  });

  it("names one version everywhere", () => {
    expect(text("manifest.xml")).toContain(`<Version>${version}.0</Version>`);
    expect((JSON.parse(text("manifest.json")) as { version: string }).version).toBe(version);
    expect(text("help/support.html")).toContain(`version ${version}`);
  });

  it("packs the unified manifest with its icons", () => {
    const packed = unzipSync(builtFile("rillwright-unified.zip"));
    expect(Object.keys(packed).sort()).toEqual(["color.png", "manifest.json", "outline.png"]);
    expect(Buffer.from(packed["manifest.json"] ?? []).toString()).toBe(text("manifest.json"));
  });

  it("carries the licence of every library in its bundles", () => {
    const licences = text("licences.txt");
    for (const library of ["mathjs", "big.js", "@univerjs/core", "fflate"]) expect(licences).toContain(`\n${library} `);
    expect(licences).toContain("The Rillwright authors");
  });
});
