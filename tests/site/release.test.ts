import { unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { packRelease } from "../../src/cli/release";
import { installGuide, PLACEHOLDER } from "../../src/papers/installGuide";
import { pdfOf } from "../../src/papers/pdf";
import { builtFiles } from "../built";
import { readPdf, type PrintedPage } from "../papers/readPdf";

/** A long address may be broken over lines. */
function spaceless(pages: readonly PrintedPage[]): string {
  return pages.map((page) => page.text.replace(/ /g, "")).join("");
}

describe("the release", () => {
  let files: Record<string, Uint8Array>;
  beforeAll(async () => {
    const { name, bytes } = await packRelease(PLACEHOLDER);
    expect(name).toMatch(/^rillwright-\d+\.\d+\.\d+\.zip$/);
    files = unzipSync(bytes);
  }, 120_000);

  it("holds the site, the workbooks, the guide and the license, in one folder", () => {
    const names = Object.keys(files);
    expect(new Set(names.map((name) => name.split("/")[0])).size).toBe(1);
    const within = names.map((name) => name.slice(name.indexOf("/") + 1));
    for (const name of [
      "START-HERE.txt",
      "install-guide.pdf",
      "LICENSE.txt",
      "site/bench.html",
      "site/taskpane.html",
    ]) {
      expect(within).toContain(name);
    }
    for (const name of ["site/manifest.xml", "site/functions.json", "site/licences.txt", "site/help/guide.html"]) {
      expect(within).toContain(name);
    }
    for (const units of ["us", "si"]) {
      for (const kind of ["blank", "demo"]) expect(within).toContain(`workbooks/rillwright-${units}-${kind}.xlsx`);
    }
    // Nothing of the site is missing but what an editor cannot give another address, and what is for builders.
    const missing = builtFiles().filter((name) => !within.includes(`site/${name}`));
    for (const name of missing) expect(name).toMatch(/\.map$|^(sizes\.txt|manifest\.json|rillwright-unified\.zip)$/);
  });

  it("has an address in no file but the two that the guide names", () => {
    const address = /https:\/\/(?:localhost:3000|your\.server\/rillwright|rillwright\.example\/app)/;
    const holding = Object.entries(files)
      .filter(([name]) => /\.(html|js|json|xml|css|txt)$/.test(name))
      .filter(([, bytes]) => address.test(Buffer.from(bytes).toString("utf8")))
      .map(([name]) => name.slice(name.indexOf("/site/") + 6));
    expect(holding.sort()).toEqual(["functions.json", "manifest.xml"]);
  });

  it("has a guide of two pages that leads from the zip to a first estimate and to Excel for all", async () => {
    const guide = Object.entries(files).find(([name]) => name.endsWith("install-guide.pdf"))?.[1] ?? new Uint8Array();
    const pages = await readPdf(guide);
    expect(pages).toHaveLength(2);
    const text = spaceless(pages);
    for (const word of ["bench.html", "functions.json", PLACEHOLDER, "Integrated apps", "not affiliated"]) {
      expect(text).toContain(word.replace(/ /g, ""));
    }
    for (const { prints } of pages) for (const { size } of prints) expect(size).toBeGreaterThanOrEqual(10);
  });

  it("names the company's own address where the build is made for it", async () => {
    const pages = await readPdf(await pdfOf(installGuide("1.2.3", "https://tools.brook.example/rill")));
    const text = spaceless(pages);
    expect(text).toContain("https://tools.brook.example/rill/bench.html");
    expect(text).not.toContain(PLACEHOLDER);
  });
});
