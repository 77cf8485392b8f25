import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { tablesPage } from "./tablesPage";

it("docs/tables.md says what the columns are declared to be (npm run docs writes it)", () => {
  expect(readFileSync("docs/tables.md", "utf8")).toBe(tablesPage());
});
