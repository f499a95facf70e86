import { gzipSync } from "node:zlib";

/** What Excel has to load before the first cell answers: the functions and the pane, compressed. */
export const ADDIN_BUDGET = 150_000;
export const ADDIN_FILES = /^(functions\.js|taskpane\.(js|css|html))$/;

/**
 * What drafting a job adds to that when the first cell asks for it, compressed; the bench has a smaller file for it. The whole
 * model of the job is in it, its checks, the range of a price and the shipped book: about a tenth of a second at 6 Mbit/s.
 */
export const DRAFTING_BUDGET = 72_000;
export const DRAFTING_FILES = /^drafting\.[0-9a-f]{8}\.js$/;

/** What a browser has to load once for the bench, compressed; nearly all of it is the embedded spreadsheet. */
export const BENCH_BUDGET = 1_850_000;
const BENCH_ENTRIES = /^(bench|page|calculation)\.(js|css|html)$/;
/** What a script asks for before it runs; what it asks for later, by a call, is no part of it. */
const AT_ONCE = /(?:from|import)\s*"\.\/([\w.]+\.js)"/g;

/** The files that the bench has to load: its pages and scripts, and what these ask for at once. */
export function benchFiles(files: ReadonlyMap<string, Uint8Array>): ReadonlySet<string> {
  const wanted = new Set<string>();
  const open = [...files.keys()].filter((name) => BENCH_ENTRIES.test(name));
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    const bytes = files.get(name);
    if (!bytes || wanted.has(name)) continue;
    wanted.add(name);
    if (!name.endsWith(".js")) continue;
    for (const [, other = ""] of new TextDecoder().decode(bytes).matchAll(AT_ONCE)) open.push(other);
  }
  return wanted;
}

/** A table of the site's files with their size as stored and as sent. */
export function sizeReport(files: ReadonlyMap<string, Uint8Array>): string {
  const rows = [...files].map(([name, bytes]) => ({
    name,
    raw: bytes.length,
    sent: gzipSync(bytes, { level: 9 }).length,
  }));
  rows.sort((a, b) => b.sent - a.sent || a.name.localeCompare(b.name));
  const line = (name: string, raw: number | string, sent: number | string): string =>
    `${String(raw).padStart(12)}${String(sent).padStart(12)}  ${name}`;
  const total = (title: string, of: typeof rows): string => {
    const sum = (key: "raw" | "sent"): number => of.reduce((all, row) => all + row[key], 0);
    return line(title, sum("raw"), sum("sent"));
  };
  const among = (names: RegExp): typeof rows => rows.filter(({ name }) => names.test(name));
  const bench = benchFiles(files);
  return [
    line("file", "bytes", "gzip"),
    ...rows.map(({ name, raw, sent }) => line(name, raw, sent)),
    total("all files", rows),
    total(
      `bench (budget ${BENCH_BUDGET})`,
      rows.filter(({ name }) => bench.has(name)),
    ),
    total(`functions and pane (budget ${ADDIN_BUDGET})`, among(ADDIN_FILES)),
    "",
  ].join("\n");
}
