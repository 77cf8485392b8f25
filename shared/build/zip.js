/** The pages as one file to carry to a web server: `pennyacre-VERSION.zip`, a folder `pennyacre` with all that the build made. */
import { zipSync } from "fflate";

/** Bytes follow from the pages alone. */
const mtime = new Date(1980, 0, 1);

/** Source maps are left out: they are for whoever builds, and four times as large as all the rest. */
const isWanted = (name) => !name.endsWith(".map");

/** Has to stand after whatever else makes files. */
export class ZipPlugin {
  /** @param {string} name of the zip in the output folder */
  constructor(name) {
    this.name = name;
  }

  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap("ZipPlugin", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "ZipPlugin", stage: Compilation.PROCESS_ASSETS_STAGE_REPORT }, (assets) => {
        const files = Object.entries(assets)
          .filter(([name]) => isWanted(name))
          .sort(([one], [other]) => (one < other ? -1 : 1))
          .map(([name, source]) => [`pennyacre/${name}`, new Uint8Array(source.buffer())]);
        compilation.emitAsset(this.name, new sources.RawSource(Buffer.from(zipSync(Object.fromEntries(files), { level: 9, mtime }))));
      });
    });
  }
}
