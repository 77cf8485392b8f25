/**
 * Builds and serves the pages: the desk (`index.html`), which opens workbooks in a plain browser, the pane (`pane.html`),
 * which Excel shows beside a workbook, the help (`help.html`), and how all that gets into Excel (`install.html`).
 *
 *   webpack serve                                  the desk at http://localhost:3000/, or the next free port
 *   webpack serve --env excel                      all pages at https://localhost:3000/, where manifest.xml points
 *   webpack --env production                       all pages into dist/, and a zip of them
 *   webpack --env production origin=https://…      the same, with a manifest.xml that points there
 */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import CopyPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlPlugin from "html-webpack-plugin";
import { certificateIn } from "./shared/build/localhost.js";
import { OneFilePlugin } from "./shared/build/oneFile.js";
import { NoticesPlugin } from "./shared/build/notices.js";
import { mustBeFree } from "./shared/build/takenPort.js";
import { ZipPlugin } from "./shared/build/zip.js";

/** Where the manifest of the source says that the pages are. */
const servedHere = "https://localhost:3000";
/** The oldest browsers that the pages run in; src/pane/check.js asks for what came with them. */
const target = ["chrome98", "edge98", "firefox104", "safari15.4"];
const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** Excel on the web loads the ribbon's icons into a page of its own, which the server would refuse. */
function iconsForEverybody(middlewares) {
  const check = middlewares.find(({ name }) => name === "cross-origin-header-check");
  if (check === undefined) throw new Error("The server looks elsewhere now for requests of other pages, and icons may be refused.");
  const forOthers = (request, response, next) => (request.url.startsWith("/icons/") ? next() : check.middleware(request, response, next));
  return middlewares.map((each) => (each === check ? { ...check, middleware: forOthers } : each));
}

/** @param {{ production?: boolean, excel?: boolean, origin?: string }} env */
export default async (env) => {
  // `port: "auto"` looks for a free port from here on.
  process.env.WEBPACK_DEV_SERVER_BASE_PORT ??= "3000";
  const origin = env.origin?.replace(/\/$/, "");
  if (origin !== undefined && !origin.startsWith("https://"))
    throw new Error(`Office loads add-ins over https only, so origin cannot be ${origin}`);
  const check = readFileSync(here("src/pane/check.js"), "utf8");
  const { version } = JSON.parse(readFileSync(here("package.json"), "utf8"));
  if (env.excel) await mustBeFree(3000);
  const certificate = env.excel ? await certificateIn(here(".localhost")) : null;
  return {
    // Also when serving: people work with what `npm start` shows, and React is quicker without its checks.
    mode: "production",
    target: "web",
    entry: { desk: here("src/desk/index.tsx"), pane: here("src/pane/index.tsx"), install: here("src/install/index.ts") },
    output: {
      path: here("dist"),
      // Names change with their content, so that nobody keeps an old version.
      filename: env.production ? "[name].[contenthash:12].js" : "[name].js",
      chunkFilename: env.production ? "part.[contenthash:12].js" : "[id].js",
      cssFilename: env.production ? "[name].[contenthash:12].css" : "[name].css",
      assetModuleFilename: env.production ? "[name].[contenthash:12][ext]" : "[name][ext]",
      publicPath: "auto",
      clean: true,
    },
    resolve: { extensions: [".tsx", ".ts", ".js"] },
    module: {
      rules: [
        { test: /\.tsx?$/, loader: "esbuild-loader", options: { target } },
        { test: /\.xml$/, type: "asset/source" },
      ],
    },
    experiments: { css: true },
    devtool: "source-map",
    // Programs and styles only: the pages stay as they were written, to be read by whoever wonders what they load.
    optimization: { minimize: Boolean(env.production), minimizer: [new EsbuildPlugin({ target, css: true, legalComments: "inline" })] },
    performance: { hints: false },
    plugins: [
      new HtmlPlugin({ filename: "index.html", template: here("src/desk/index.html"), chunks: ["desk"], minify: false }),
      // At the end of the body, after Office.js, so that the page shows something before either arrives.
      new HtmlPlugin({
        filename: "pane.html",
        template: here("src/pane/index.html"),
        chunks: ["pane"],
        minify: false,
        inject: "body",
        scriptLoading: "blocking",
        templateParameters: { check, checkHash: `sha256-${createHash("sha256").update(check).digest("base64")}` },
      }),
      // The help needs no program: its text is put into the page here, from what the pane shows of it.
      new HtmlPlugin({ filename: "help.html", template: here("src/pane/help/helpHtml.ts"), chunks: [], inject: false, minify: false }),
      new HtmlPlugin({ filename: "install.html", template: here("src/install/installHtml.ts"), chunks: ["install"], minify: false }),
      new CopyPlugin({
        patterns: [
          { from: here("shared/*.xlsx"), to: "[name][ext]" },
          { from: here("shared/icons/*.{png,svg}"), to: "icons/[name][ext]" },
          // Without an origin the install page writes it: one for another address would be loaded by mistake.
          ...(origin === undefined && env.production
            ? []
            : [{ from: here("manifest.xml"), transform: (bytes) => bytes.toString("utf8").replaceAll(servedHere, origin ?? servedHere) }]),
        ],
      }),
      ...(env.production
        ? [
            new OneFilePlugin({
              name: "pennyacre-desk.html",
              page: here("src/desk/index.html"),
              entry: here("src/desk/index.tsx"),
              engine: here("src/desk/carriedEngine.ts"),
              trial: here("src/desk/trialWorker.ts"),
              target,
            }),
            new NoticesPlugin(),
            new ZipPlugin(`pennyacre-${version}.zip`),
          ]
        : []),
    ],
    stats: env.production ? "errors-warnings" : "none",
    infrastructureLogging: { level: "warn" },
    devServer: {
      host: "localhost",
      port: env.excel ? 3000 : "auto",
      server: certificate === null ? "http" : { type: "https", options: { cert: certificate.cert, key: certificate.key } },
      setupMiddlewares: iconsForEverybody,
      // A page with somebody's unsaved work in it is not reloaded under their hands.
      hot: false,
      liveReload: false,
      client: false,
      static: false,
      devMiddleware: { stats: "errors-warnings" },
      onListening: ({ server, options, middleware }) => {
        const address = `${env.excel ? "https" : "http"}://${options.host}:${server.address().port}/`;
        console.log("Building the pages …");
        if (certificate?.isNew) console.log(`Trust this certificate first, once a year (docs/excel.md says how): ${certificate.cert}`);
        middleware.waitUntilValid(() =>
          console.log(`\nPennyacre is at ${address}${env.excel ? "  (the pane for Excel: pane.html)" : ""}\nStop it with Ctrl+C.\n`),
        );
      },
    },
  };
};
