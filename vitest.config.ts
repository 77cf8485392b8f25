import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["src/**/*.test.{ts,tsx}", "tests/{published,problems,exact,host,schema}/**/*.test.ts"],
          testTimeout: 20_000,
        },
      },
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
