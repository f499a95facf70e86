import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

const top = path.join(import.meta.dirname, "../..");
const read = (name: string): unknown => JSON.parse(readFileSync(path.join(top, name), "utf8"));
const { packages } = read("package-lock.json") as { packages: Readonly<Record<string, Locked>> };
const manifest = read("package.json") as Locked;

/** Whether some folder that `from` can see has the package. */
function found(from: string, name: string): boolean {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf("/node_modules/")))) {
    if (packages[`${folder === "" ? "" : `${folder}/`}node_modules/${name}`]) return true;
    if (folder === "" || !folder.includes("/node_modules/")) break;
  }
  return packages[`node_modules/${name}`] !== undefined;
}

describe("the lock file", () => {
  it("names every package, those for other machines too: npm ci refuses a lock that leaves one out", () => {
    const missing = Object.entries(packages).flatMap(([from, { dependencies, optionalDependencies }]) =>
      Object.keys({ ...dependencies, ...optionalDependencies }).filter((name) => !found(from, name)),
    );
    expect(missing).toEqual([]);
  });

  it("says the same as package.json", () => {
    expect(packages[""]?.dependencies).toEqual(manifest.dependencies);
    expect(packages[""]?.devDependencies).toEqual(manifest.devDependencies);
    expect(packages[""]?.version).toBe(manifest.version);
  });

  it("pins exact versions, and no server to fetch them from", () => {
    for (const [name, version] of Object.entries({ ...manifest.dependencies, ...manifest.devDependencies }))
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
    expect(Object.values(packages).filter((entry) => entry.resolved !== undefined)).toEqual([]);
  });
});
