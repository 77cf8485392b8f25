import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { initSync } from "@ironcalc/wasm";
import type { Engine } from "./engine";
import { ironCalcAnswer } from "./ironCalc";

let loaded: Promise<unknown> | undefined;

/** The engine in Node, its program read from the package the first time. */
export const engineInNode: Engine = async (request) => {
  loaded ??= readFile(createRequire(import.meta.url).resolve("@ironcalc/wasm/wasm_bg.wasm")).then((program) =>
    initSync({ module: program }),
  );
  await loaded;
  return ironCalcAnswer(request);
};
