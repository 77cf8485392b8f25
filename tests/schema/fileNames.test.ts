import { readdirSync } from "node:fs";
import { expect, it } from "vitest";

/** On Windows and Mac two such files are one, and imports go to the wrong of them. */
it("has no two files of which the names differ in capitals alone, or in their ending beside that", () => {
  const names = ["src", "tests", "shared"].flatMap((folder) => readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => `${folder}/${name}`));
  const bare = (name: string) => name.replace(/\.tsx?$/, "");
  const alike = names.filter((name) => names.some((other) => other !== name && bare(other) !== bare(name) && bare(other).toLowerCase() === bare(name).toLowerCase()));
  expect(alike).toEqual([]);
});
