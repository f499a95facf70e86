import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** What a bundle under the MIT licence may hold. */
const ACCEPTED = new Set(["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "CC0-1.0", "Unlicense"]);

interface PackageFacts {
  readonly name: string;
  readonly version: string;
  readonly license?: string | { type?: string };
  readonly licenses?: readonly { type?: string }[];
  readonly author?: string | { name?: string };
}

/** The folder of the package that a module's file belongs to, or undefined for files of our own. */
export function packageFolder(file: string): string | undefined {
  const match = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(file);
  return match?.[0];
}

/** One text with the licence of every package in the bundles. Refuses a package whose licence is not accepted. */
export function licenceText(folders: Iterable<string>, own: string): string {
  const parts = [...new Set(folders)].map(describe).sort((a, b) => a.title.localeCompare(b.title));
  const shared = parts.find(
    (part) => part.licence === "Apache-2.0" && part.text.includes("TERMS AND CONDITIONS"),
  )?.text;
  const sections = parts.map(({ title, licence, text }) => {
    const body = text !== "" ? text : licence === "Apache-2.0" ? (shared ?? "") : "";
    if (body === "") throw new Error(`${title} (${licence}) carries no licence text`);
    return `${"-".repeat(72)}\n${title} (${licence})\n\n${body.trim()}\n`;
  });
  return [own.trim(), "\n\nRillwright is built with the following software.\n\n", ...sections].join("\n");
}

function describe(folder: string): { title: string; licence: string; text: string } {
  const facts = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8")) as PackageFacts;
  const stated = typeof facts.license === "object" ? facts.license.type : facts.license;
  const licence = stated ?? facts.licenses?.[0]?.type ?? "none stated";
  const offered = licence.replace(/[()]/g, "").split(/ OR /i);
  if (!offered.some((one) => ACCEPTED.has(one))) {
    throw new Error(`${facts.name} is under "${licence}", which the project cannot ship`);
  }
  const files = readdirSync(folder).filter((name) => /^(licen[cs]e|notice|copying)/i.test(name));
  const texts = files.map((name) => readFileSync(path.join(folder, name), "utf8").trim());
  return { title: `${facts.name} ${facts.version}`, licence, text: texts.join("\n\n") };
}
