/** One word an idea: no file of the source and no exported type is called as another is. */
import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { expect, it } from "vitest";

const files = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((file) => `src/${file.replaceAll("\\", "/")}`)
  .filter((file) => /\.tsx?$/.test(file) && !/\.(test|typetest|d)\./.test(file));

/** The names that stand at more than one place, with the places. */
function twice(named: readonly (readonly [name: string, place: string])[]): readonly string[] {
  const places = new Map<string, string[]>();
  for (const [name, place] of named) places.set(name, [...(places.get(name) ?? []), place]);
  return [...places].filter(([, all]) => all.length > 1).map(([name, all]) => `${name}: ${all.join(", ")}`);
}

it("has no file name twice, but for the columns and the reader of a table, which are called after it", () => {
  const own = files.filter((file) => !/^src\/workbook\/(columns|tables)\/|\/index\.tsx?$/.test(file));
  expect(
    twice(
      own.map((file) => [
        basename(file)
          .replace(/\.tsx?$/, "")
          .toLowerCase(),
        file,
      ]),
    ),
  ).toEqual([]);
});

it("has no exported type twice", () => {
  const types = files.flatMap((file) =>
    [...readFileSync(file, "utf8").matchAll(/^export (?:declare )?(?:type|class|interface) (\w+)/gm)].map(
      ([, name]) => [name!, file] as const,
    ),
  );
  expect(types.length).toBeGreaterThan(300);
  expect(twice(types)).toEqual([]);
});
