import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import type * as IronCalc from "@ironcalc/wasm";
import type { Engine } from "./engine";
import { ironCalcAnswer } from "./ironCalc";

let program: Promise<typeof IronCalc> | null = null;
let loads = 0;

/** An instance of the program of its own, so that one which broke down can be replaced: a module is another under another address. */
async function load(): Promise<typeof IronCalc> {
  const { resolve } = createRequire(import.meta.url);
  loads += 1;
  const loaded = (await import(`${pathToFileURL(resolve("@ironcalc/wasm")).href}?load=${loads}`)) as typeof IronCalc;
  loaded.initSync({ module: await readFile(resolve("@ironcalc/wasm/wasm_bg.wasm")) });
  return loaded;
}

/** The engine in Node, its program read from the package the first time, and again after it broke down. */
export const engineInNode: Engine = async (request) => {
  program ??= load();
  const { Model } = await program;
  try {
    return ironCalcAnswer(request, Model);
  } catch (fault) {
    program = null;
    throw fault;
  }
};
