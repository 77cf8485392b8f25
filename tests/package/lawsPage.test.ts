import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { lawsPart } from "../schema/checksPage";

it("docs/checks.md ends with the laws and judges of the tests, and how many cases each looks at (npm run docs writes it)", () => {
  expect(readFileSync("docs/checks.md", "utf8").endsWith(`\n${lawsPart()}`)).toBe(true);
});
