import { gzipSync } from "node:zlib";

/** What Excel has to load before the first cell answers: the functions and the pane, compressed. */
export const ADDIN_BUDGET = 150_000;
export const ADDIN_FILES = /^(functions\.js|taskpane\.(js|css|html))$/;

/** What drafting a job adds to that when the first cell asks for it, compressed; the bench has a smaller file for it. */
export const DRAFTING_BUDGET = 65_000;
export const DRAFTING_FILES = /^drafting\.[0-9a-f]{8}\.js$/;

/** What a browser has to load once for the bench, compressed; nearly all of it is the embedded spreadsheet. */
export const BENCH_BUDGET = 1_850_000;
export const BENCH_FILES = /^((bench|page|calculation)\.(js|css|html)|chunk\.\w+\.js)$/;

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
  return [
    line("file", "bytes", "gzip"),
    ...rows.map(({ name, raw, sent }) => line(name, raw, sent)),
    total("all files", rows),
    total(`bench (budget ${BENCH_BUDGET})`, among(BENCH_FILES)),
    total(`drafting, on the first call (budget ${DRAFTING_BUDGET})`, among(DRAFTING_FILES)),
    total(`functions and pane (budget ${ADDIN_BUDGET})`, among(ADDIN_FILES)),
    "",
  ].join("\n");
}
