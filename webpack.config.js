import CopyPlugin from "copy-webpack-plugin";
import HtmlPlugin from "html-webpack-plugin";
import CssPlugin from "mini-css-extract-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import path from "node:path";
import { baseAddress, WORKING_ADDRESS } from "./src/site/address.ts";
import { SitePlugin } from "./src/site/sitePlugin.ts";

const SCRIPTS = /^((functions|taskpane|cutPlanWorker|help|sw)|(\d+|drafting)\.\w{8})\.js$/;
const top = import.meta.dirname;

/** `npm run build -- --env base=https://example.org` makes the site for that address. */
export default async (env, { mode }) => {
  const page = (name, chunks) =>
    new HtmlPlugin({ filename: `${name}.html`, template: `src/${name}/${name}.html`, chunks, minify: false });
  return {
    context: top,
    entry: {
      // Excel loads functions.js on its own, so nothing of it may move to another file that its page would have to name;
      // what a function asks for on its first call, the page loads then. The pane's page shares what is in it.
      functions: "./src/functions/associate.ts",
      taskpane: { import: "./src/taskpane/index.ts", dependOn: "functions" },
      // Runs beside the pane's page, so it stands alone too.
      cutPlanWorker: "./src/taskpane/cutPlanWorker.ts",
      sw: "./src/bench/sw.ts",
      help: "./src/help/index.ts",
    },
    // Chunks stand beside the pages; an address found out at run time would need a page, which functions.js has not.
    output: { path: path.join(top, "dist"), publicPath: "", clean: true, chunkFilename: "[name].[contenthash:8].js" },
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
      new CssPlugin({ chunkFilename: "[name].[contenthash:8].css" }),
      page("taskpane", ["functions", "taskpane"]),
      // Its scripts are bundled apart, and named in the page itself.
      page("bench", []),
      new CopyPlugin({
        patterns: [
          { from: "manifest/icons/*.png", to: "icons/[name][ext]" },
          { from: "src/help/pictures/*.png", to: "help/pictures/[name][ext]" },
          { from: "templates/*.xlsx", to: "templates/[name][ext]" },
        ],
      }),
      new SitePlugin(top, baseAddress(env.base)),
    ],
    optimization: {
      // What is bundled here is made as small as can be; what comes from the other bundler is small already.
      minimizer: [new MinimizerPlugin({ include: SCRIPTS, extractComments: false })],
    },
    devServer: env.WEBPACK_SERVE ? await addinServer() : undefined,
    performance: { hints: false },
    // What was built, and how large it is, stands in dist/sizes.txt.
    stats: "errors-warnings",
  };
};

/** The https server that Excel loads the add-in from. Makes and trusts a certificate, so only serving may call it. */
async function addinServer() {
  const { getHttpsServerOptions } = await import("office-addin-dev-certs");
  return {
    // This machine alone: Excel runs here too.
    host: "localhost",
    port: Number(new URL(WORKING_ADDRESS).port),
    headers: { "Access-Control-Allow-Origin": "*" },
    server: { type: "https", options: await getHttpsServerOptions() },
    // Nothing is added to the pages: they are tested, and shipped, as they are.
    client: false,
    hot: false,
    liveReload: false,
  };
}
