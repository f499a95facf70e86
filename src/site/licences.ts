import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** What a bundle under the MIT licence may hold. */
const ACCEPTED = new Set(["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "CC0-1.0", "Unlicense"]);

const ISC_TERMS = `Permission to use, copy, modify, and/or distribute this software for any
purpose with or without fee is hereby granted, provided that the above
copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES
WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF
MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR
ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES
WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN
ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF
OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`;

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
  const apache = parts.find((part) => part.licence === "Apache-2.0" && part.text.includes("TERMS AND CONDITIONS"));
  const titles = new Map<string, string[]>();
  for (const { title, licence, author, text } of parts) {
    const body = (text || standardText(licence, author, own, apache?.text))?.trim();
    if (!body) throw new Error(`${title} (${licence}) carries no licence text`);
    titles.set(body, [...(titles.get(body) ?? []), `${title} (${licence})`]);
  }
  const sections = [...titles].map(([body, names]) => `${"-".repeat(72)}\n${names.join("\n")}\n\n${body}\n`);
  return [own.trim(), "\n\nRillwright is built with the following software.\n\n", ...sections].join("\n");
}

/** The text of a licence for a package that names it but carries no copy: the MIT terms are those of our own. */
function standardText(licence: string, author: string, own: string, apache: string | undefined): string | undefined {
  if (licence === "Apache-2.0") return apache;
  const mit = own.slice(own.indexOf("Permission is hereby granted"));
  const terms = licence === "MIT" ? mit : licence === "ISC" ? ISC_TERMS : undefined;
  return terms && `Copyright (c) ${author || "its authors"}\n\n${terms}`;
}

function describe(folder: string): { title: string; licence: string; author: string; text: string } {
  const facts = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8")) as PackageFacts;
  const files = readdirSync(folder).filter((name) => /^(licen[cs]e|notice|copying)/i.test(name));
  const text = files.map((name) => readFileSync(path.join(folder, name), "utf8").trim()).join("\n\n");
  const stated = typeof facts.license === "object" ? facts.license.type : facts.license;
  const licence = stated ?? facts.licenses?.[0]?.type ?? readFrom(text);
  const offered = licence.replace(/[()]/g, "").split(/ OR /i);
  if (!offered.some((one) => ACCEPTED.has(one))) {
    throw new Error(`${facts.name} is under "${licence}", which the project cannot ship`);
  }
  const author = typeof facts.author === "object" ? (facts.author.name ?? "") : (facts.author ?? "");
  return { title: `${facts.name} ${facts.version}`, licence, author, text };
}

/** The licence of a package that states none in its facts, by the opening words of its text. */
function readFrom(text: string): string {
  if (/Apache License\s+Version 2\.0/.test(text)) return "Apache-2.0";
  return /Permission is hereby granted, free of charge/.test(text) ? "MIT" : "none stated";
}
