/** The tests that a mutation of the core or the workbook is tried on: those that need seconds, and the judges with few cases. */
import { basename, dirname } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Whether what the tests that cover a place did not notice is tried on all. */
const onAllTests = process.env.PENNYACRE_MUTATION_ALL !== undefined;
/**
 * What takes longest, shortest first: a run on all tests ends with the first that notices. The last one notices any change of a word, so
 * that what it alone notices is counted apart.
 */
const last = [
  "exact/drydown",
  "everySheet",
  "checksPage",
  "cents",
  "exact/standParts",
  "messy",
  "spelling",
  "missingTables",
  "frozenReports",
];
const place = ({ moduleId }: TestSpecification): number => last.findIndex((name) => moduleId.includes(`/${name}.test.ts`));

/** How near tests stand to the code that is mutated, 0 the nearest: what stands beside it mostly notices, and the run ends with that. */
function distance(tests: string, code: string): number {
  const [test, module] = [tests, code].map((path) => path.replace(/^.*\/(src|tests)\//, "$1/").replace(/(\.test)?\.tsx?$/, ""));
  if (test === module) return 0;
  if (basename(test!) === basename(module!)) return 1;
  return dirname(test!) === dirname(module!) ? 2 : 3;
}

class NearAndQuickFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const [code = ""] = this.ctx.config.related ?? [];
    const rank = (file: TestSpecification) => [distance(file.moduleId, code), place(file), file.moduleId.length];
    const ranks = new Map(files.map((file) => [file, rank(file)]));
    const compared = (one: TestSpecification, other: TestSpecification) =>
      ranks.get(one)!.reduce((sum, each, index) => (sum !== 0 ? sum : each - ranks.get(other)![index]!), 0);
    return Promise.resolve([...files].sort(compared));
  }
}

export default defineConfig({
  test: {
    include: [
      "src/{core,workbook}/**/*.test.ts",
      "tests/{published,exact}/**/*.test.ts",
      "tests/problems/*.test.ts",
      "tests/schema/{countingPage,demo,standTables,tablesPage}.test.ts",
    ],
    exclude: [
      // Minutes, and what has a stand-in under modules.
      "tests/problems/everyNumber.test.ts",
      "tests/problems/workedOutOnce.test.ts",
      ...(onAllTests ? [] : ["tests/exact/**", ...last.map((name) => `**/${name}.test.ts`)]),
    ],
    testTimeout: 120_000,
    isolate: false,
    setupFiles: ["tests/mutation/setup.ts"],
    sequence: { sequencer: NearAndQuickFirst, hooks: "list" },
  },
});
