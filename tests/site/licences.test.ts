import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { licenceText, packageFolder } from "../../src/site/licences";

function makePackage(facts: object, files: Readonly<Record<string, string>> = {}): string {
  const folder = mkdtempSync(path.join(tmpdir(), "package-"));
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, "package.json"), JSON.stringify(facts));
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  return folder;
}

const apacheText = "Apache License ... TERMS AND CONDITIONS ...";

describe("the licences of what is bundled", () => {
  it("finds the package of a file, scoped or not, nested or not", () => {
    expect(packageFolder("/x/node_modules/big.js/big.mjs")).toBe("/x/node_modules/big.js");
    expect(packageFolder("/x/node_modules/@a/b/lib/c.js")).toBe("/x/node_modules/@a/b");
    expect(packageFolder("/x/node_modules/a/node_modules/b/c.js")).toBe("/x/node_modules/a/node_modules/b");
    expect(packageFolder("/x/src/calc/solve.ts")).toBeUndefined();
  });

  it("prints our own licence, then each package's text and notice", () => {
    const one = makePackage(
      { name: "one", version: "1.2.3", license: "MIT" },
      { LICENSE: "one's text", NOTICE: "a notice" },
    );
    const text = licenceText([one], "our own");
    expect(text.indexOf("our own")).toBeLessThan(text.indexOf("one 1.2.3 (MIT)"));
    expect(text).toContain("one's text");
    expect(text).toContain("a notice");
  });

  it("adds the Apache text for a package that names the licence but does not carry it", () => {
    const full = makePackage({ name: "full", version: "1.0.0", license: "Apache-2.0" }, { LICENSE: apacheText });
    const bare = makePackage({ name: "bare", version: "1.0.0", license: "Apache-2.0" });
    const text = licenceText([full, bare], "");
    expect(text).toContain(`bare 1.0.0 (Apache-2.0)\nfull 1.0.0 (Apache-2.0)\n\n${apacheText}`);
    expect(text.split(apacheText), "a shared text is printed once").toHaveLength(2);
  });

  it("prints the MIT terms under the author's name for a package that carries no copy", () => {
    const bare = makePackage({ name: "b", version: "1.0.0", license: "MIT", author: "A. Maker" });
    expect(licenceText([bare], "Permission is hereby granted, to all.")).toContain(
      "Copyright (c) A. Maker\n\nPermission is",
    );
  });

  it("refuses a licence that does not go with the project's, or none", () => {
    expect(() => licenceText([makePackage({ name: "g", version: "1.0.0", license: "GPL-3.0" })], "")).toThrow(
      "GPL-3.0",
    );
    expect(() => licenceText([makePackage({ name: "n", version: "1.0.0" })], "")).toThrow("none stated");
    const bsd = makePackage({ name: "m", version: "1.0.0", license: "BSD-3-Clause" });
    expect(() => licenceText([bsd], "")).toThrow("no licence text");
  });

  it("reads the licence from the text where the package's facts are silent", () => {
    const silent = makePackage(
      { name: "s", version: "1.0.0" },
      { LICENSE: "Apache License\n  Version 2.0, January 2004" },
    );
    expect(licenceText([silent], "")).toContain("s 1.0.0 (Apache-2.0)");
  });

  it("accepts a choice that holds one accepted licence", () => {
    const either = makePackage({ name: "e", version: "1.0.0", license: "(GPL-2.0 OR MIT)" }, { LICENSE: "text" });
    expect(licenceText([either], "")).toContain("e 1.0.0");
  });
});
