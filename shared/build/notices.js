/**
 * `third-party-notices.txt`: the packages of which the build has something in it, each with its licence as it brings it. What is
 * in the build is what the bundler put there, so that no list can be forgotten.
 */
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";

/** Licences under which we may ship what we ship, given their words with it. */
const shippable = /^\(?(MIT|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|MIT\/Apache-2\.0|MIT OR Apache-2\.0)\)?$/;
const licenceFile = /^(licen[cs]e|copying|notice)([.-].*)?$/i;

/** The folder of the package that a file of `node_modules` belongs to; `null` for a file of ours. */
function packageFolder(file) {
  if (!/(^|[\\/])node_modules[\\/]/.test(file)) return null;
  for (let folder = dirname(resolve(file)); folder !== dirname(folder); folder = dirname(folder)) {
    const own = join(folder, "package.json");
    if (existsSync(own) && JSON.parse(readFileSync(own, "utf8")).name !== undefined) return folder;
  }
  return null;
}

/**
 * @param {Iterable<string>} files that are in the build
 * @returns {string} the notices
 * @throws {Error} where a package has no licence, or one under which we may not ship it
 */
export function notices(files) {
  const folders = new Set([...files].map(packageFolder).filter((folder) => folder !== null));
  const packages = [...folders].map((folder) => {
    const { name, version, license, author } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    if (typeof license !== "string" || !shippable.test(license)) throw new Error(`${name} ${version} has the licence ${license}`);
    const words = readdirSync(folder)
      .filter((file) => licenceFile.test(file))
      .sort()
      .map((file) => readFileSync(join(folder, file), "utf8").replaceAll("\r\n", "\n").trim());
    const by = typeof author === "string" ? author : author?.name;
    // A package that brings no words of its licence names it; who wrote it stands beside.
    return { name, version, text: `${name} ${version}\n${license}${by === undefined ? "" : `, ${by}`}\n\n${words.join("\n\n")}`.trim() };
  });
  const rule = `\n\n${"-".repeat(72)}\n\n`;
  const sorted = packages.sort((one, other) => (`${one.name} ${one.version}` < `${other.name} ${other.version}` ? -1 : 1));
  return `Pennyacre contains these packages of others, each under its own licence.${rule}${sorted.map(({ text }) => text).join(rule)}\n`;
}

/** Every file of a compilation, those of joined modules and of workers too. */
function filesOf(compilation) {
  const files = new Set();
  const take = (module) => {
    if (typeof module.resource === "string") files.add(module.resource.split("?")[0]);
    for (const inner of module.modules ?? []) take(inner);
  };
  for (const module of compilation.modules) take(module);
  for (const child of compilation.children) for (const file of filesOf(child)) files.add(file);
  return files;
}

export class NoticesPlugin {
  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap("NoticesPlugin", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "NoticesPlugin", stage: Compilation.PROCESS_ASSETS_STAGE_SUMMARIZE }, () => {
        // The tool that makes the pages is a compilation of its own and not in the build.
        const files = [...filesOf(compilation)].filter((file) => !/html-webpack-plugin|lodash/.test(file));
        compilation.emitAsset("third-party-notices.txt", new sources.RawSource(notices(files)));
      });
    });
  }
}
