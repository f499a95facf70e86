import CopyPlugin from "copy-webpack-plugin";
import MetadataPlugin from "custom-functions-metadata-plugin";
import HtmlPlugin from "html-webpack-plugin";
import CssPlugin from "mini-css-extract-plugin";
import { readdirSync } from "node:fs";
import path from "node:path";
import { baseAddress } from "./src/site/address.ts";
import { SitePlugin } from "./src/site/sitePlugin.ts";

const top = import.meta.dirname;
const worksheet = "./src/functions/worksheet";
const functionFiles = readdirSync(path.join(top, worksheet)).map((file) => `${worksheet}/${file}`);

/** `npm run build -- --env base=https://example.org` makes the site for that address. */
export default (env, { mode }) => {
  const page = (name, chunks) =>
    new HtmlPlugin({ filename: `${name}.html`, template: `src/${name}/${name}.html`, chunks, minify: false });
  return {
    context: top,
    entry: {
      // Excel loads functions.js on its own, so nothing of it may move to another file;
      // the pane's page loads it too, and shares what is in it.
      functions: functionFiles,
      taskpane: { import: "./src/taskpane/index.ts", dependOn: "functions" },
      bench: "./src/bench/index.ts",
      sw: "./src/bench/sw.ts",
      help: "./src/help/index.ts",
    },
    output: { path: path.join(top, "dist"), clean: true, chunkFilename: "[name].[contenthash:8].js" },
    devtool: mode === "production" ? false : "source-map",
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        {
          test: /\.ts$/,
          loader: "ts-loader",
          // "npm run typecheck" looks at the types.
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
        { test: /\.css$/, use: [CssPlugin.loader, "css-loader"] },
      ],
    },
    plugins: [
      new MetadataPlugin({ output: "functions.json", input: functionFiles }),
      new CssPlugin({ chunkFilename: "[name].[contenthash:8].css" }),
      page("taskpane", ["functions", "taskpane"]),
      page("bench", ["bench"]),
      new CopyPlugin({
        patterns: [
          { from: "manifest/icons/*.png", to: "icons/[name][ext]" },
          { from: "templates/*.xlsx", to: "templates/[name][ext]" },
        ],
      }),
      new SitePlugin(top, baseAddress(env.base)),
    ],
    performance: { hints: false },
  };
};
