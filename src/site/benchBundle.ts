import { build, type BuildOptions } from "esbuild";
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
  const own = ownAccessors(path.join(top, "node_modules/@univerjs"));
  const bench = await build({
    ...shared(top, production),
    entryPoints: {
      bench: "src/bench/first.ts",
      page: "src/bench/index.ts",
      calculation: "src/bench/calculation/worker.ts",
    },
    chunkNames: "[name].[hash]",
    // Packages that the grid loads for documents and never needs for sheets: 260 kB, compressed.
    alias: {
      "cjk-regex": path.join(top, "src/bench/standIns/cjk.ts"),
      "franc-min": path.join(top, "src/bench/standIns/franc.ts"),
      "opentype.js": path.join(top, "src/bench/standIns/opentype.ts"),
    },
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
  // Run beside the pane when asked, in Excel too; apart, so that the bench does not wait for what they alone need.
  const beside = await build({
    ...shared(top, production),
    entryPoints: { companyBook: "src/company/worker.ts", papers: "src/papers/worker.ts" },
    chunkNames: "beside.[hash]",
    loader: { ".ttf": "base64" },
  });
  const files = [...bench.outputFiles, ...beside.outputFiles];
  const inputs = [bench, beside].flatMap(({ metafile }) => Object.keys(metafile.inputs));
  return {
    files: new Map(files.map(({ path: file, contents }) => [path.basename(file), contents])),
    packages: new Set(inputs.flatMap((file) => packageFolder(path.resolve(top, file)) ?? [])),
  };
}

function shared(top: string, production: boolean) {
  return {
    absWorkingDir: top,
    outdir: path.join(top, "dist"),
    bundle: true,
    splitting: true,
    format: "esm",
    target: "es2022",
    minify: production,
    sourcemap: production ? false : "inline",
    legalComments: "none",
    define: { "process.env.NODE_ENV": JSON.stringify(production ? "production" : "development") },
    write: false,
    metafile: true,
    logLevel: "warning",
  } as const satisfies BuildOptions;
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
