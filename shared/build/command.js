/**
 * Runs a command of src/cli as one built file, which starts in a third of the time that its sources take. It is built the first
 * time, and again once anything that it was built from is another: `node shared/build/command.js reportCommand WORDS`.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = join(root, ".tmp", "commands");
const [command] = process.argv.splice(2, 1);
const built = join(folder, `${command}.mjs`);
const noted = join(folder, `${command}.json`);

/** When each file was changed last that goes into the command; null where one is gone. */
const timesOf = (files) => files.map((file) => statSync(join(root, file), { throwIfNoEntry: false })?.mtimeMs ?? null);

function isAsBuilt() {
  if (!existsSync(built) || !existsSync(noted)) return false;
  const { node, files, times } = JSON.parse(readFileSync(noted, "utf8"));
  return node === process.version && timesOf(files).every((time, index) => time !== null && time === times[index]);
}

async function build() {
  const { build: bundle } = await import("esbuild");
  mkdirSync(folder, { recursive: true });
  // Two runs may build at once: each puts what it made in place as a whole.
  const beside = (path) => `${path}.${process.pid}`;
  const { metafile } = await bundle({
    absWorkingDir: root,
    entryPoints: [`src/cli/${command}.ts`],
    outfile: beside(built),
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    // It starts a sixth sooner. Where a fault of ours came from, the sources tell: node --import tsx src/cli/reportCommand.ts WORDS.
    minify: true,
    metafile: true,
    logLevel: "error",
  });
  const files = [...Object.keys(metafile.inputs), "package-lock.json"];
  writeFileSync(beside(noted), JSON.stringify({ node: process.version, files, times: timesOf(files) }));
  renameSync(beside(built), built);
  renameSync(beside(noted), noted);
}

if (!isAsBuilt()) await build();
await import(pathToFileURL(built).href);
