import { createHash } from "node:crypto";

/** What the browser keeps of one build, so that the bench opens without a network: all of it, or nothing. */
export interface OfflineSet {
  readonly version: string;
  /** What each file must be, as the browser checks it: "sha256-…" by address within the site. */
  readonly files: Readonly<Record<string, string>>;
}

/** What Excel loads comes from its server; what only servers and people who look after one read is not kept either. */
const LEFT_OUT = /^(taskpane\.|functions\.|manifest\.|sw\.js|sizes\.txt|rillwright-unified\.zip)|\.map$/;

/** The set of a build's files. */
export function offlineSet(files: ReadonlyMap<string, Uint8Array>): OfflineSet {
  const kept = [...files].filter(([name]) => !LEFT_OUT.test(name)).sort(([a], [b]) => (a < b ? -1 : 1));
  const sums = kept.map(([name, bytes]) => [name, `sha256-${hash(bytes).digest("base64")}`] as const);
  return {
    version: hash(sums.map((one) => one.join(" ")).join("\n"))
      .digest("hex")
      .slice(0, 16),
    files: Object.fromEntries(sums),
  };
}

/** The worker's script with the set before it: the browser looks for a newer one by the script's bytes. */
export function withSet(script: string, set: OfflineSet): string {
  return `self.offlineSet=${JSON.stringify(set)};\n${script}`;
}

function hash(content: Uint8Array | string) {
  return createHash("sha256").update(content);
}
