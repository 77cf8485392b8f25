/** How the mutation tool runs here; `npm run mutation` says what it mutates. */
import { readFileSync } from "node:fs";

const code = ["src/{core,workbook}/**/*.ts", "!src/**/*.{test,typetest}.ts"];
/** The places of the sample, of which only the mutations in it are tried; without one, all of the code. */
const sample = process.env.PENNYACRE_MUTATIONS;
const places =
  sample === undefined
    ? code
    : JSON.parse(readFileSync(sample, "utf8")).map(
        ({ fileName, location: { start, end } }) => `${fileName}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`,
      );
const onAllTests = process.env.PENNYACRE_MUTATION_ALL !== undefined;

export default {
  testRunner: "vitest",
  plugins: ["@stryker-mutator/vitest-runner", "./tests/mutation/plugins.js"],
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: true },
  mutate: places,
  checkers: sample === undefined ? [] : ["sample"],
  // First each on the tests that pass through it; what stands outside of every test, or is not noticed, is tried on all tests.
  coverageAnalysis: onAllTests ? "off" : "perTest",
  ignoreStatic: !onAllTests,
  ignorePatterns: ["/dist", "/docs/pictures", "/.tmp", "/.localhost", "/coverage"],
  concurrency: 2,
  // A machine that others use must not decide what is noticed.
  timeoutMS: 60_000,
  timeoutFactor: 3,
  dryRunTimeoutMinutes: 60,
  tempDirName: ".tmp/mutation/sandbox",
  reporters: sample === undefined ? [] : ["noter", "progress-append-only"],
  allowConsoleColors: false,
  warnings: { slow: false },
};
