/**
 * `npm test`: everything, in order of speed. Goes on after a failure, so that one run shows all of them, and ends with
 * one line of counts. `npm test -- fast` has the types and the tests that take seconds; `npm test -- long` only the
 * judges of random seasons, with twenty times as many of them, and a minute of strange cells, files and entries.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { missingPrograms } from "./programs";

type Counts = { readonly passed: number; readonly failed: number; readonly skipped: number };

const long = process.argv.includes("long");
const fast = process.argv.includes("fast") || long;

/** Runs an npm script's command line and says whether it ended well. */
function run(title: string, command: string, ...words: readonly string[]): boolean {
  console.log(`\n── ${title}`);
  const { status, error } = spawnSync("npx", ["--no-install", command, ...words], { stdio: "inherit" });
  if (error !== undefined) throw error;
  return status === 0;
}

/** One check counts as one. */
const check = (title: string, command: string, ...words: readonly string[]): Counts =>
  run(title, command, ...words) ? { passed: 1, failed: 0, skipped: 0 } : { passed: 0, failed: 1, skipped: 0 };

/** The tests of one vitest project, counted one by one. A run that failed without a failed test counts as one failure. */
function tests(project: "unit" | "alone" | "outside", ...only: readonly string[]): Counts {
  mkdirSync(".tmp", { recursive: true });
  const file = `.tmp/${project}-results.json`;
  rmSync(file, { force: true });
  const well = run(
    `tests: ${project}`,
    "vitest",
    "run",
    "--project",
    project,
    ...only,
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${file}`,
  );
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(readFileSync(file, "utf8")) as Record<
    string,
    number
  >;
  const failed = numFailedTests ?? 0;
  return { passed: numPassedTests ?? 0, failed: well || failed > 0 ? failed : 1, skipped: (numPendingTests ?? 0) + (numTodoTests ?? 0) };
}

const missing = fast ? [] : missingPrograms();
if (missing.length > 0) {
  for (const sentence of missing) console.error(sentence);
  console.error("\n0 passed, nothing was run.");
  process.exit(1);
}

/** More random seasons than every run can wait for, and a minute of strange cases, whose seed is a new one with each change of the code. */
function longJudges(): readonly Counts[] {
  process.env.PENNYACRE_JUDGE = "long";
  const judges = tests("unit", "tests/exact", "tests/problems/everyNumber.test.ts");
  process.env.PENNYACRE_FUZZ ??= "60";
  return [judges, tests("unit", "tests/fuzz")];
}

/** What stands beside the code, and printed figures: seconds. */
const quick = ["src", "tests/published", "tests/schema"];

const types = (): Counts => check("types", "tsc", "--noEmit", "-p", ".", "--incremental", "--tsBuildInfoFile", ".tmp/types.json");
const rules = (): readonly Counts[] => [
  check("lint", "eslint", "--config", "tests/rules/eslint.config.js", "src", "tests", "shared"),
  check("imports", "depcruise", "--config", "tests/rules/imports.js", "src", "tests", "shared"),
  check("unused", "knip", "--config", "tests/rules/knip.json"),
  check("format", "prettier", "--check", "--log-level", "warn", "{src,tests,shared}/**/*.{ts,tsx,css,js}"),
];

const all: readonly Counts[] = long
  ? longJudges()
  : fast
    ? [types(), tests("unit", ...quick), tests("alone")]
    : [types(), ...rules(), tests("unit"), tests("alone"), check("build", "webpack", "--env", "production"), tests("outside")];
const total = (of: keyof Counts) => all.reduce((sum, counts) => sum + counts[of], 0);
const skipped = total("skipped");
console.log(`\n${total("passed")} passed, ${total("failed")} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = total("failed") > 0 ? 1 : 0;
