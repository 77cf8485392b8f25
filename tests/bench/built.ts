/**
 * The product as it is timed: built by the tool that builds the pane. Run from its sources, every small function would also be
 * given its name each time it is made, which no user's program does.
 */
import { fileURLToPath, pathToFileURL } from "node:url";
import { buildSync } from "esbuild";
import type * as Product from "./product";

const file = fileURLToPath(new URL("../../.tmp/bench/product.mjs", import.meta.url));

export function buildProduct(): void {
  buildSync({
    entryPoints: [fileURLToPath(new URL("product.ts", import.meta.url))],
    outfile: file,
    logLevel: "warning",
    bundle: true,
    platform: "node",
    format: "esm",
    target: "es2022",
    minify: true,
  });
}

/** What `buildProduct` made last. */
export const product = async () => (await import(pathToFileURL(file).href)) as typeof Product;
