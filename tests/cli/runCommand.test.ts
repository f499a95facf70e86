import { readFileSync } from "node:fs";
import path from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { runCommand } from "../../src/cli/runCommand";

afterEach(() => {
  vi.restoreAllMocks();
  process.exitCode = undefined;
});

/** What a command prints and ends with. */
async function ran(args: readonly string[]): Promise<{ out: unknown[]; faults: unknown[]; ends: unknown }> {
  const out = vi.spyOn(console, "log").mockImplementation(() => undefined);
  const faults = vi.spyOn(console, "error").mockImplementation(() => undefined);
  const command = ([file]: readonly string[]): Promise<string> =>
    file === undefined ? Promise.reject(new Error("No file.")) : Promise.resolve(`${file} is written.`);
  await runCommand("Usage: FILE", command, args);
  return { out: out.mock.calls.flat(), faults: faults.mock.calls.flat(), ends: process.exitCode };
}

describe("a command", () => {
  it.each([[["--help"]], [["-h"]], [["job.xlsx", "--help"]]])(
    "prints its usage for %j and ends with 0",
    async (args) => {
      expect(await ran(args)).toEqual({ out: ["Usage: FILE"], faults: [], ends: undefined });
    },
  );

  it("prints what it did, or tells a fault apart and ends with 1", async () => {
    expect(await ran(["job.xlsx"])).toEqual({ out: ["job.xlsx is written."], faults: [], ends: undefined });
    expect(await ran([])).toMatchObject({ faults: ["No file."], ends: 1 });
  });

  it.each(["estimate", "job", "papers", "issue", "copy", "release"])("%s is run this way", (name) => {
    const source = readFileSync(path.join(import.meta.dirname, `../../src/cli/${name}.ts`), "utf8");
    expect(source).toMatch(/await runCommand\(/);
  });
});
