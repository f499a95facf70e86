import { createServer } from "node:http";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { offlineSet, withSet } from "../../src/site/offlineSet";
import { serve } from "../../src/site/serve";
import { SITE_FOLDER } from "./browser";

/** What a server does that people meet: an error of the one before it, a page to sign in at, nothing at all. */
export type Mood = "good" | "bad gateway" | "sign-in page" | "newer build";

/** The built site behind one address whose answers can change between two visits, as they do in life. */
export interface ChangingSite {
  readonly address: string;
  mood: Mood;
  close(): void;
}

export async function startChangingSite(): Promise<ChangingSite> {
  const newer = newerBuild();
  const [older, later] = await Promise.all([serve(SITE_FOLDER, 0), serve(newer, 0)]);
  const site = { mood: "good" as Mood };
  const server = createServer((request, response) => {
    if (site.mood === "bad gateway") return void response.writeHead(502).end("Bad gateway");
    if (site.mood === "sign-in page")
      return void response.writeHead(200, { "Content-Type": "text/html" }).end("<title>Sign in</title>");
    (site.mood === "newer build" ? later : older).server.emit("request", request, response);
  });
  const port = await new Promise<number>((resolve) =>
    server.listen(0, "localhost", () => resolve((server.address() as { port: number }).port)),
  );
  return Object.assign(site, {
    address: `http://localhost:${port}`,
    close() {
      for (const one of [server, older.server, later.server]) one.close();
      rmSync(newer, { recursive: true });
    },
  });
}

/** A build that says so in the page and in the guide. */
function newerBuild(): string {
  const folder = mkdtempSync(path.join(tmpdir(), "rillwright-newer-"));
  cpSync(SITE_FOLDER, folder, { recursive: true });
  const change = (name: string, how: (text: string) => string): void =>
    writeFileSync(path.join(folder, name), how(readFileSync(path.join(folder, name), "utf8")));
  change("bench.js", (text) => `document.documentElement.dataset.build = "newer";\n${text}`);
  change("help/guide.html", (text) => text.replace("<html", '<html data-build="newer"'));
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)));
  const set = offlineSet(new Map(names.map((name) => [name, readFileSync(path.join(folder, name))])));
  change("sw.js", (text) => withSet(text.replace(/^self\.offlineSet=.*\n/, ""), set));
  return folder;
}
