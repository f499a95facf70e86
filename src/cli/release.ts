import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { installGuide, PLACEHOLDER } from "../papers/installGuide";
import { pdfOf } from "../papers/pdf";
import { baseAddress } from "../site/address";
import { releaseZip } from "../site/release";
import { runCommand } from "./runCommand";

const USAGE = "Usage: npm run release [-- --base https://your.server/path]";

const TOP = path.join(import.meta.dirname, "../..");

/** Packs a build, made for `base`, into one zip. */
export async function packRelease(base: string): Promise<{ readonly name: string; readonly bytes: Uint8Array }> {
  const { version } = JSON.parse(readFileSync(path.join(TOP, "package.json"), "utf8")) as { version: string };
  const bytes = releaseZip({
    version,
    site: filesIn("dist"),
    workbooks: new Map([...filesIn("templates")].filter(([name]) => name.endsWith(".xlsx"))),
    guide: await pdfOf(installGuide(version, base)),
    license: readFileSync(path.join(TOP, "LICENSE"), "utf8"),
    addressed: base !== PLACEHOLDER,
  });
  return { name: `rillwright-${version}.zip`, bytes };
}

function filesIn(folder: string): Map<string, Uint8Array> {
  const top = path.join(TOP, folder);
  const files = readdirSync(top, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    files.map((entry) => {
      const file = path.join(entry.parentPath, entry.name);
      return [path.relative(top, file).split(path.sep).join("/"), new Uint8Array(readFileSync(file))];
    }),
  );
}

/** Builds the site for an address, the company's own where it is given, and writes the zip; gives the sentence to print. */
async function release(args: readonly string[]): Promise<string> {
  const { values } = parseArgs({ args: [...args], options: { base: { type: "string" } } });
  const base = values.base === undefined ? PLACEHOLDER : baseAddress(values.base);
  const build = spawnSync("npm", ["run", "-s", "build", "--", "--env", `base=${base}`], {
    cwd: TOP,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (build.status !== 0) throw new Error("the site could not be built");
  const { name, bytes } = await packRelease(base);
  writeFileSync(path.join(TOP, name), bytes);
  return `${name}: ${(bytes.length / 1e6).toFixed(1)} MB; begin with install-guide.pdf in it`;
}

if (process.argv[1] && import.meta.filename === process.argv[1]) await runCommand(USAGE, release);
