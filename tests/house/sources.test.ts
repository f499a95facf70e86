import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import arithmetic from "../arithmetic/cases.json";
import published from "../published/cases.json";

const top = path.join(import.meta.dirname, "../..");

/** What no source may be: a web page, or a place where people answer each other. */
const NO_SOURCE =
  /https?:|www\.|\w\.(?:com|org|net|edu|co|uk|info)\b|\b(?:forum|wiki|blog|vignette|midterm|question page|exam page|calculator)\b/i;
/** A file, which must then be in the repository. */
const FILE = /[\w/.-]+\.(?:json|c?js|ts|py|csv|inp|xlsx)\b/g;

const code = readdirSync(path.join(top, "src"), { recursive: true, encoding: "utf8" })
  .filter((name) => /^(calc|functions|help|workbook)\b.*\.ts$/.test(name))
  .map((name) => [name, readFileSync(path.join(top, "src", name), "utf8")] as const);

describe("sources", () => {
  it.each([
    ["geology.about.com, 2014", true],
    ["a forum page", true],
    ["V. M. Ponce, midterm solution", true],
    ["EPA SWMM Reference Manual vol. II, Table 6-3", false],
    ["29 CFR 1926 Subpart P", false],
  ])("%s is refused: %s", (source, refused) => expect(NO_SOURCE.test(source)).toBe(refused));

  it.each([...published, ...arithmetic].map((c) => [c.id, c] as const))("of %s", (_, c) => {
    const text = [c.source, "note" in c ? c.note : "", c.description].join(" ");
    expect(text).not.toMatch(NO_SOURCE);
    expect(text.match(FILE) ?? []).toEqual([]);
  });

  it.each(code)("named in %s", (_, text) => {
    const said = text.split("\n").filter((line) => /source|[Ff]rom:|^\s*"/.test(line));
    expect(said.filter((line) => NO_SOURCE.test(line))).toEqual([]);
  });

  it("are read, remembered or solved by others when published, and computed when arithmetic", () => {
    expect(new Set(published.map(({ how }) => how))).toEqual(new Set(["read", "memory", "solved"]));
    expect(new Set(arithmetic.map(({ how }) => how))).toEqual(new Set(["computed"]));
  });
});
