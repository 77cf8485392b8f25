/** The tests that a mutation of the core or the workbook is tried on: those that need seconds, and the judges with few cases. */
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "src/{core,workbook}/**/*.test.ts",
      // The words of headings, which are declared with the columns.
      "src/pane/setup/nearHeadings.test.ts",
      "tests/{published,exact}/**/*.test.ts",
      "tests/problems/*.test.ts",
      "tests/schema/{countingPage,demo,standTables,tablesPage}.test.ts",
    ],
    // Minutes, and what has a stand-in under modules.
    exclude: ["tests/problems/everyNumber.test.ts", "tests/problems/workedOutOnce.test.ts"],
    testTimeout: 120_000,
    setupFiles: ["tests/mutation/setup.ts"],
  },
});
