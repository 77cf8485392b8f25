/** docs/counting.md names a module and a test for each rule: they are there, and a rule has both. */
import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const rules = readFileSync("docs/counting.md", "utf8")
  .split(/\n(?=- )/)
  .slice(1)
  .map((rule) => rule.split("\n## ")[0]!);
const pathsOf = (rule: string) => [...rule.matchAll(/`((?:src|tests)\/[^`]+\.ts)`/g)].map(([, path]) => path!);

it("names only modules and tests that are there", () => {
  expect(rules.flatMap(pathsOf).filter((path) => !existsSync(path))).toEqual([]);
});

it("gives each rule a module that works it out and a test that holds it", () => {
  const isTest = (path: string) => path.endsWith(".test.ts");
  expect(rules.length).toBeGreaterThan(25);
  expect(rules.filter((rule) => !pathsOf(rule).some(isTest) || pathsOf(rule).every(isTest))).toEqual([]);
});
