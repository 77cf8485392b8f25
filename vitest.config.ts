import { defineConfig } from "vitest/config";

/** Tests that put stand-ins under modules or globals, and so need a module graph of their own. */
const alone = ["src/host/excel/start.test.ts", "src/pane/seasonWatch.test.ts", "tests/problems/workedOutOnce.test.ts"];

export default defineConfig({
  test: {
    maxWorkers: "100%",
    projects: [
      {
        test: {
          name: "unit",
          include: ["src/**/*.test.{ts,tsx}", "tests/{published,problems,exact,host,schema,fuzz}/**/*.test.ts"],
          exclude: alone,
          testTimeout: 20_000,
          // Most of a run would be the loading of the same modules again.
          isolate: false,
        },
      },
      { test: { name: "alone", include: alone, testTimeout: 20_000 } },
      // Tests that start Chromium, LibreOffice or the command line, or build the pages first.
      {
        test: {
          name: "outside",
          include: ["tests/{browser,libreoffice,package,cli}/**/*.test.ts"],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
