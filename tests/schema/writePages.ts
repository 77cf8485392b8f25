/** Writes the pages of docs that follow from the code and from its tests. */
import { spawnSync } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { tablesPage } from "./tablesPage";

writeFileSync("docs/tables.md", tablesPage());

/** Each test file writes its subject into docs/checks.md, one after the other, and the last one what stands before them. */
function writeChecks(...tests: readonly string[]): void {
  const { status } = spawnSync("npx", ["--no-install", "vitest", "run", "--project", "unit", "--no-file-parallelism", ...tests], {
    stdio: "inherit",
    env: { ...process.env, PENNYACRE_DOCS: "write" },
  });
  if (status !== 0) process.exitCode = 1;
}
writeFileSync("docs/checks.md", "# Checks\n\n");
const last = "tests/published/checksPage.test.ts";
const published = readdirSync("tests/published").map((file) => `tests/published/${file}`);
writeChecks(...published.filter((file) => file.endsWith(".test.ts") && file !== last), "src/core/numbers/measure.test.ts");
writeChecks(last);
