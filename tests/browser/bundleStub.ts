import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import webpack from "webpack";

/** The script that stands in for office.js, bundled for a page. */
export async function officeStub(): Promise<string> {
  const folder = mkdtempSync(path.join(tmpdir(), "rillwright-"));
  try {
    await new Promise<void>((resolve, reject) =>
      webpack(
        {
          mode: "development",
          devtool: false,
          entry: path.join(import.meta.dirname, "officeStub.ts"),
          output: { path: folder, filename: "office.js" },
          resolve: { extensions: [".ts", ".js"] },
          module: {
            rules: [
              {
                test: /\.ts$/,
                loader: "ts-loader",
                options: { transpileOnly: true, compilerOptions: { noEmit: false } },
              },
            ],
          },
        },
        (error, stats) => {
          if (error) reject(error);
          else if (stats?.hasErrors()) reject(new Error(stats.toString("errors-only")));
          else resolve();
        },
      ),
    );
    return readFileSync(path.join(folder, "office.js"), "utf8");
  } finally {
    rmSync(folder, { recursive: true });
  }
}
