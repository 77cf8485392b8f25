/** The desk as one HTML file that opens from a disk: its programs, styles, demo, help and calculation engine inside. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { Script } from "node:vm";
import { build } from "esbuild";
import { strToU8, zipSync } from "fflate";

/** Written by the build before the file is put together: what is in the pages is in it. */
const noticesFile = "third-party-notices.txt";
const mtime = new Date(1980, 0, 1);

/** One program of all its modules, and the styles that they ask for. */
async function bundled(entry, target) {
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    format: "iife",
    jsx: "automatic",
    minify: true,
    target,
    legalComments: "inline",
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".wasm": "binary" },
    // What would lie beside the page is carried inside, so nothing is looked for from there.
    logOverride: { "empty-import-meta": "silent" },
    write: false,
    outdir: "bundled",
  });
  const text = (ending) => outputFiles.find(({ path }) => path.endsWith(ending))?.text ?? "";
  return { script: text(".js"), style: text(".css") };
}

/**
 * The program as it can stand in a page: there `<!--` changes how the end of a script is found, and in a text of the program
 * `<\!--` means the same. That it still is a program is tried.
 *
 * @throws where something else of it cannot stand in a page
 */
function standing(script) {
  const made = script.replaceAll("<!--", "<\\!--");
  new Script(made);
  // The one would end its element, and the others are read as other characters than were hashed.
  if (/<\/script|\r|\0/i.test(made)) throw new Error("The desk's program cannot stand in a page as it is");
  return made;
}

/** Replaces what stands there exactly once. */
function once(text, from, to) {
  if (text.split(from).length !== 2) throw new Error(`The desk's page has ${text.split(from).length - 1} times: ${from}`);
  return text.replace(from, () => to);
}

/** Nothing but what is in the file itself: its one program by its hash, the engine's worker, and no connection anywhere. */
const policyFor = (script) =>
  [
    "default-src 'none'",
    `script-src 'sha256-${createHash("sha256").update(script).digest("base64")}' 'wasm-unsafe-eval'`,
    "worker-src blob:",
    "connect-src 'none'",
    "style-src 'unsafe-inline'",
    "img-src data:",
    "font-src data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/**
 * @param {{ page: string, script: string, style: string, icon: Uint8Array, files: Record<string, Uint8Array> }} parts the desk's page
 *   as it is written, and what it is to carry
 */
export function oneFile({ page, script: program, style, icon, files }) {
  const script = standing(program);
  if (/<\/style/i.test(style)) throw new Error("The desk's styles cannot stand in a page as they are");
  const policy = /(http-equiv="Content-Security-Policy" content=")([^"]+)"/.exec(page);
  if (policy === null) throw new Error("The desk's page has no policy");
  const carried = Buffer.from(zipSync(files, { level: 9, mtime })).toString("base64");
  let made = once(page, policy[0], `${policy[1]}${policyFor(script)}"`);
  made = once(
    made,
    "Everything comes from where the page came from, and nothing goes anywhere else.",
    "Everything is in this file, and nothing goes anywhere.",
  );
  made = once(
    made,
    '<link rel="icon" href="icons/coin.svg" type="image/svg+xml">',
    `<link rel="icon" href="data:image/svg+xml;base64,${Buffer.from(icon).toString("base64")}" type="image/svg+xml">`,
  );
  made = once(made, '<link rel="alternate icon" href="icons/icon-32.png" type="image/png">', "");
  made = once(made, "</head>", `<style>${style}</style>\n  </head>`);
  return once(
    made,
    "</body>",
    `<script id="carried-files" type="application/zip;base64">${carried}</script>\n    <script>${script}</script>\n  </body>`,
  );
}

/** Adds the desk as one file to what the build makes. */
export class OneFilePlugin {
  /** @param {{ name: string, page: string, entry: string, engine: string, trial: string, target: string | string[] }} options */
  constructor(options) {
    this.options = options;
  }

  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    const { name, page, entry, engine, trial, target } = this.options;
    compiler.hooks.thisCompilation.tap("OneFilePlugin", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_REPORT - 1;
      compilation.hooks.processAssets.tapPromise({ name: "OneFilePlugin", stage }, async (assets) => {
        const bytes = (file) => {
          if (assets[file] === undefined) throw new Error(`The build has no ${file}`);
          return new Uint8Array(assets[file].buffer());
        };
        const [desk, worker, tried] = await Promise.all([entry, engine, trial].map((each) => bundled(each, target)));
        const beside = ["demo-season.xlsx", "demo-season-with-problems.xlsx", "help.html", noticesFile].map((file) => [file, bytes(file)]);
        const made = oneFile({
          page: readFileSync(page, "utf8"),
          ...desk,
          icon: bytes("icons/coin.svg"),
          files: { ...Object.fromEntries(beside), "engine.js": strToU8(worker.script), "trial.js": strToU8(tried.script) },
        });
        compilation.emitAsset(name, new sources.RawSource(made));
      });
    });
  }
}
