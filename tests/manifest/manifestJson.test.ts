import AjvDraft04 from "ajv-draft-04";
import addFormats from "ajv-formats";
import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { WORKING_ADDRESS } from "../../src/site/address";
import { pngHasAlpha, pngSize } from "./png";

const top = path.join(import.meta.dirname, "../..");
const read = (file: string): string => readFileSync(path.join(top, file), "utf8");
const text = read("manifest/manifest.json");
const manifest = JSON.parse(text) as {
  manifestVersion: string;
  version: string;
  id: string;
  extensions: {
    runtimes: { code: { page: string; script: string }; customFunctions: { namespace: object; metadataUrl: string } }[];
    alternates: { hide: { customOfficeAddin: { officeAddinId: string } } }[];
  }[];
};
const schemas = "node_modules/@microsoft/app-manifest/build/json-schemas/teams";

function problems(candidate: unknown, version: string): string[] {
  const ajv = new AjvDraft04({ allErrors: true, strict: false });
  addFormats(ajv);
  const validate = ajv.compile(JSON.parse(read(`${schemas}/v${version}/MicrosoftTeams.schema.json`)) as object);
  validate(candidate);
  return (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ""}`);
}

describe("the unified manifest", () => {
  it("is valid by the published schema of its version", () => {
    expect(problems(manifest, manifest.manifestVersion)).toEqual([]);
  });

  it("would be refused with a namespace that Excel cannot take", () => {
    const wrong = JSON.parse(text.replace('"id": "RILL"', '"id": "RI LL"')) as unknown;
    expect(problems(wrong, manifest.manifestVersion).join()).toContain("namespace");
  });

  it("is valid by the newest published schema too, but for its number", () => {
    expect(problems({ ...manifest, manifestVersion: "1.30", $schema: undefined }, "1.30")).toEqual([]);
  });

  it("has a GUID of its own, and hides the add-in only manifest's where both are installed", () => {
    const xmlId = /<Id>([^<]+)<\/Id>/.exec(read("manifest/manifest.xml"))?.[1];
    expect(manifest.id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(manifest.id).not.toBe(xmlId);
    expect(manifest.extensions[0]?.alternates[0]?.hide.customOfficeAddin.officeAddinId).toBe(xmlId);
  });

  it("has the version of the package", () => {
    expect(manifest.version).toBe((JSON.parse(read("package.json")) as { version: string }).version);
  });

  it("names the files of the build, with https under the working address only", () => {
    const [runtime] = manifest.extensions[0]?.runtimes ?? [];
    expect(runtime?.code).toEqual({
      page: `${WORKING_ADDRESS}/taskpane.html`,
      script: `${WORKING_ADDRESS}/functions.js`,
    });
    expect(runtime?.customFunctions.metadataUrl).toBe(`${WORKING_ADDRESS}/functions.json`);
    expect(runtime?.customFunctions.namespace).toEqual({ id: "RILL", name: "RILL" });
    const addresses = [...text.matchAll(/"([a-z]+:\/\/[^"]+)"/g)].map((match) => match[1] ?? "");
    for (const address of addresses.filter((a) => !a.includes("developer.microsoft.com")))
      expect(address.startsWith(`${WORKING_ADDRESS}/`), address).toBe(true);
  });

  it("has a colour icon of 192 px and a transparent outline of 32 px", () => {
    const icons = path.join(top, "manifest/icons");
    expect(pngSize(path.join(icons, "color.png"))).toEqual([192, 192]);
    expect(pngSize(path.join(icons, "outline.png"))).toEqual([32, 32]);
    expect(pngHasAlpha(path.join(icons, "outline.png"))).toBe(true);
  });
});
