import { build } from "esbuild";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { packageFolder } from "./licences";

/** The bench's files, and the folders of the packages that are in them. */
export interface BenchBundle {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly packages: ReadonlySet<string>;
}

/**
 * Bundles the bench apart from the add-in: modules that a browser loads as they are run in half the time that the add-in's
 * bundler needs for them, and what the first screen does not need comes later.
 */
export async function bundleBench(top: string, production: boolean): Promise<BenchBundle> {
  const grid = path.join(top, "node_modules/@univerjs");
  const own = ownAccessors(grid);
  const { outputFiles, metafile } = await build({
    absWorkingDir: top,
    entryPoints: {
      bench: "src/bench/first.ts",
      page: "src/bench/index.ts",
      calculation: "src/bench/calculation/worker.ts",
      // Runs beside the pane, in Excel too.
      companyBook: "src/company/worker.ts",
    },
    outdir: path.join(top, "dist"),
    bundle: true,
    splitting: true,
    format: "esm",
    target: "es2022",
    minify: production,
    sourcemap: production ? false : "inline",
    legalComments: "none",
    define: { "process.env.NODE_ENV": JSON.stringify(production ? "production" : "development") },
    chunkNames: "[name].[hash]",
    // Packages that the grid loads for documents and never needs for sheets: 260 kB, compressed.
    alias: {
      "cjk-regex": path.join(top, "src/bench/standIns/cjk.ts"),
      "franc-min": path.join(top, "src/bench/standIns/franc.ts"),
      "opentype.js": path.join(top, "src/bench/standIns/opentype.ts"),
    },
    write: false,
    metafile: true,
    logLevel: "warning",
    plugins: [
      {
        name: "assigned fields",
        setup: ({ onLoad }) =>
          onLoad({ filter: /[\\/]@univerjs[\\/][^\\/]+[\\/]lib[\\/]es[\\/].*\.js$/ }, ({ path: file }) => ({
            contents: withAssignedFields(withNamesAlone(readFileSync(file, "utf8")), own),
            loader: "js",
          })),
      },
    ],
  });
  const folders = Object.keys(metafile.inputs).flatMap((file) => packageFolder(path.resolve(top, file)) ?? []);
  return {
    files: new Map(outputFiles.map(({ path: file, contents }) => [path.basename(file), contents])),
    packages: new Set(folders),
  };
}

/**
 * The grid library defines every field of every object by a call of `Object.defineProperty`, thousands of them while it
 * starts. An assignment does the same where no class above has a getter or setter of that name.
 */
export function withAssignedFields(code: string, accessors: ReadonlySet<string>): string {
  return code.replace(/\b_defineProperty\(this, "(\w+)", /g, (call, field: string) =>
    accessors.has(field) ? call : `(this.${field} = `,
  );
}

/**
 * The grid's own functions, of which only the names are left: it offers them while a formula is typed, and our engine
 * calculates. Their code then stands in no list and is left out.
 */
export function withNamesAlone(code: string): string {
  return code.replace(/^const function[A-Z]\w* = \[[^;]*\];$/gm, (list) =>
    list.replace(/\[([A-Z]\w*), ("[^"]+")\]/g, "[BaseFunction, $2]"),
  );
}

/** The names of all getters and setters of the library's classes, and of those that it builds its own on. */
function ownAccessors(folder: string): Set<string> {
  const names = new Set(["observed", "closed", "value"]);
  for (const name of readdirSync(folder)) {
    const file = path.join(folder, name, "lib/es/index.js");
    if (!existsSync(file)) continue;
    for (const [, found = ""] of readFileSync(file, "utf8").matchAll(/^\s*(?:static )?(?:get|set) (\w+)\(/gm))
      names.add(found);
  }
  return names;
}
