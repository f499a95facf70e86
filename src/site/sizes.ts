import { gzipSync } from "node:zlib";

/** What Excel has to load before the first cell answers: the functions and the pane, compressed. */
export const ADDIN_BUDGET = 150_000;
export const ADDIN_FILES = ["functions.js", "taskpane.js", "taskpane.css", "taskpane.html"];

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
  const addin = rows.filter(({ name }) => ADDIN_FILES.includes(name));
  const total = (key: "raw" | "sent", of: typeof rows): number => of.reduce((sum, row) => sum + row[key], 0);
  return [
    line("file", "bytes", "gzip"),
    ...rows.map(({ name, raw, sent }) => line(name, raw, sent)),
    line("all files", total("raw", rows), total("sent", rows)),
    line(`functions and pane (budget ${ADDIN_BUDGET})`, total("raw", addin), total("sent", addin)),
    "",
  ].join("\n");
}
