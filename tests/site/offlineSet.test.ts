import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { offlineSet, type OfflineSet } from "../../src/site/offlineSet";
import { builtFile, builtFiles } from "../built";

describe("the set of files that the browser keeps", () => {
  it("names every file of the bench and of the help with its sum, and what Excel loads not", () => {
    const [, text = "{}"] = /^self\.offlineSet=(.*);\n/.exec(builtFile("sw.js").toString()) ?? [];
    const { files } = JSON.parse(text) as OfflineSet;
    const wanted = builtFiles().filter(
      (name) => /^(bench|help|\d|index|templates|icons)/.test(name) && !name.endsWith(".map"),
    );
    expect(wanted.filter((name) => !(name in files))).toEqual([]);
    for (const [name, sum] of Object.entries(files))
      expect(`sha256-${createHash("sha256").update(builtFile(name)).digest("base64")}`, name).toBe(sum);
    expect(Object.keys(files).filter((name) => /taskpane|functions|manifest|sw\.js/.test(name))).toEqual([]);
  });

  it("has another version as soon as one byte of one file differs", () => {
    const one = offlineSet(new Map([["bench.js", new Uint8Array([1])]]));
    expect(offlineSet(new Map([["bench.js", new Uint8Array([2])]])).version).not.toBe(one.version);
    expect(
      offlineSet(
        new Map([
          ["bench.js", new Uint8Array([1])],
          ["sw.js", new Uint8Array([3])],
        ]),
      ),
    ).toEqual(one);
  });
});
