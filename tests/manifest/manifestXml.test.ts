import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { WORKING_ADDRESS } from "../../src/site/address";
import { pngSize } from "./png";

const top = path.join(import.meta.dirname, "../..");
const file = path.join(top, "manifest/manifest.xml");
const xml = readFileSync(file, "utf8");
const packageVersion = (JSON.parse(readFileSync(path.join(top, "package.json"), "utf8")) as { version: string })
  .version;

const values = (pattern: RegExp): string[] => [...xml.matchAll(pattern)].map((match) => match[1] ?? "");
const section = (name: string): string => new RegExp(`<bt:${name}>([\\s\\S]*?)</bt:${name}>`).exec(xml)?.[1] ?? "";

describe("the add-in only manifest", () => {
  // The schemas are Microsoft's and are not ours to ship; RILLWRIGHT_SCHEMAS names a folder that has them.
  const folders = [process.env.RILLWRIGHT_SCHEMAS, path.join(top, "../shared/schemas")];
  const schema = folders.map((folder) => path.join(folder ?? "", "OfficeAppManifestV1_1.xsd")).find(existsSync);
  const xmllint = spawnSync("xmllint", ["--version"]).error === undefined;
  if (!schema || !xmllint) {
    const lack = schema ? "xmllint is not installed" : "the XML schemas are absent (set RILLWRIGHT_SCHEMAS)";
    console.warn(`\nSKIPPED: manifest.xml is not held against Microsoft's XML schemas, because ${lack}.\n`);
  }

  it.skipIf(!schema || !xmllint)("is valid by Microsoft's schemas", () => {
    const run = spawnSync("xmllint", ["--noout", "--schema", schema ?? "", file], { encoding: "utf8" });
    expect(run.stderr).toContain("manifest.xml validates");
  });

  it.skipIf(!xmllint)("is well-formed", () => {
    expect(spawnSync("xmllint", ["--noout", file], { encoding: "utf8" }).stderr).toBe("");
  });

  it("resolves every resid, uses every resource, and keeps ids within 32 characters", () => {
    const used = new Set(values(/resid="([^"]+)"/g));
    const given = values(/<bt:(?:Image|Url|String) id="([^"]+)"/g);
    expect([...used].sort()).toEqual([...given].sort());
    for (const id of given) expect(id.length, id).toBeLessThanOrEqual(32);
  });

  it("keeps texts within the lengths the host takes", () => {
    for (const [, text] of section("ShortStrings").matchAll(/DefaultValue="([^"]*)"/g))
      expect(text?.length).toBeLessThanOrEqual(125);
    for (const [, text] of section("LongStrings").matchAll(/DefaultValue="([^"]*)"/g))
      expect(text?.length).toBeLessThanOrEqual(250);
  });

  it("names one page for runtime, functions, commands and pane: the shared runtime", () => {
    for (const tag of ["Runtime", "FunctionFile"])
      expect(values(new RegExp(`<${tag} resid="([^"]+)"`, "g"))).toEqual(["Pane.Url"]);
    expect(/<Page>\s*<SourceLocation resid="([^"]+)"/.exec(xml)?.[1]).toBe("Pane.Url");
    expect(/ShowTaskpane">\s*<SourceLocation resid="([^"]+)"/.exec(xml)?.[1]).toBe("Pane.Url");
    expect(xml).toContain('<Runtime resid="Pane.Url" lifetime="long"/>');
    expect(xml).not.toContain("TaskpaneId");
  });

  it("has https addresses only, all under the working address", () => {
    const addresses = values(/DefaultValue="([a-z]+:\/\/[^"]+)"/g);
    expect(addresses.length).toBeGreaterThan(10);
    for (const address of addresses) expect(address.startsWith(`${WORKING_ADDRESS}/`), address).toBe(true);
  });

  it("has a GUID of its own and the version of the package", () => {
    expect(xml).toMatch(/<Id>[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}<\/Id>/);
    expect(values(/<Version>([^<]+)<\/Version>/g)).toEqual([`${packageVersion}.0`]);
  });

  it("has the support address and both icons the store asks for", () => {
    expect(xml).toMatch(/<SupportUrl DefaultValue="[^"]+"\/>/);
    expect(xml).toMatch(/<IconUrl DefaultValue="[^"]+icon-32\.png"\/>/);
    expect(xml).toMatch(/<HighResolutionIconUrl DefaultValue="[^"]+icon-64\.png"\/>/);
  });

  it("offers the ribbon icons in every size, and each file has that size", () => {
    for (const size of [16, 20, 24, 32, 40, 48, 64, 80]) {
      expect(xml).toContain(`/icons/icon-${size}.png"`);
      expect(pngSize(path.join(top, `manifest/icons/icon-${size}.png`))).toEqual([size, size]);
    }
  });

  it("keeps the namespace short and fixed: workbooks hold it", () => {
    expect(xml).toContain('<bt:String id="Functions.Namespace" DefaultValue="RILL"/>');
  });
});
