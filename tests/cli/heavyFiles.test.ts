/** Small files made to take for ever or to fill the memory: the command line refuses each or ends with figures, soon and small. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, expect, it } from "vitest";
import { heavyFiles } from "../support/xlsx/heavyFiles";

/**
 * Seconds of the processor, so that it does not matter who else is at work: 5 on a machine at rest, and as much again for one whose caches
 * others use.
 */
const mostSeconds = 10;
const mostMegabytes = 1024;

let folder: string;
// Beside the packages, where the calculation engine is found.
const program = "node_modules/.pennyacre-heavy-files.mjs";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pennyacre-"));
  await build({
    entryPoints: ["src/cli/reportCommand.ts"],
    outfile: program,
    bundle: true,
    minify: true,
    platform: "node",
    format: "esm",
    logLevel: "error",
  });
  writeFileSync(
    join(folder, "used.mjs"),
    `import { writeFileSync } from "node:fs";
     process.on("exit", () => writeFileSync(process.env.USED, JSON.stringify(process.resourceUsage())));`,
  );
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(program, { force: true });
});

it.each(heavyFiles)("ends soon and small: $name", ({ bytes, ends }) => {
  const [file, used] = [join(folder, "heavy.xlsx"), join(folder, "used.json")];
  writeFileSync(file, bytes());
  rmSync(used, { force: true });
  const { status, stderr } = spawnSync(process.execPath, ["--import", join(folder, "used.mjs"), program, file], {
    encoding: "utf8",
    env: { ...process.env, USED: used },
    timeout: 120_000,
  });
  const usage = JSON.parse(readFileSync(used, "utf8")) as NodeJS.ResourceUsage;
  const seconds = (usage.userCPUTime + usage.systemCPUTime) / 1e6;
  const megabytes = usage.maxRSS / 1024;
  console.log(`${seconds.toFixed(1)} s, ${megabytes.toFixed(0)} MB`);
  expect(ends, stderr).toContain(status);
  expect(seconds).toBeLessThan(mostSeconds);
  expect(megabytes).toBeLessThan(mostMegabytes);
});
