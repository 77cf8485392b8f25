/** Small files made to take for ever or to fill the memory: the command line refuses each or ends with figures, soon and small. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, expect, it } from "vitest";
import { heavyFiles } from "../support/xlsx/heavyFiles";

/**
 * Seconds of the processor, so that it does not matter who else is at work. Others at work take its caches and half of its core, too, so
 * that the same work counts up to twice: the least of a few runs is what the file takes.
 */
const mostSeconds = 5;
const mostRuns = 4;
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

/** The command line with the file, and what it took. */
function ended(file: string) {
  const used = join(folder, "used.json");
  rmSync(used, { force: true });
  const { status, stderr } = spawnSync(process.execPath, ["--import", join(folder, "used.mjs"), program, file], {
    encoding: "utf8",
    env: { ...process.env, USED: used },
  });
  const usage = JSON.parse(readFileSync(used, "utf8")) as NodeJS.ResourceUsage;
  return { status, stderr, seconds: (usage.userCPUTime + usage.systemCPUTime) / 1e6, megabytes: usage.maxRSS / 1024 };
}

it.each(heavyFiles)("ends soon and small: $name", ({ bytes, ends }) => {
  const file = join(folder, "heavy.xlsx");
  writeFileSync(file, bytes());
  let run = ended(file);
  const most = run.megabytes;
  for (let left = mostRuns - 1; left > 0 && run.seconds >= mostSeconds; left -= 1) run = ended(file);
  console.log(`${run.seconds.toFixed(1)} s, ${most.toFixed(0)} MB`);
  expect(ends, run.stderr).toContain(run.status);
  expect(run.seconds).toBeLessThan(mostSeconds);
  expect(most).toBeLessThan(mostMegabytes);
});
