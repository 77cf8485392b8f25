import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import type { Source } from "./source";

/** Every source that a table of printed figures names, wherever in it. */
function sourcesIn(value: unknown, seen = new Set<unknown>()): readonly Source[] {
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  if ("title" in value && "publisher" in value) return [value as Source];
  return Object.values(value).flatMap((each) => sourcesIn(each, seen));
}

it("every table of printed figures says who printed it, when, and where to read it", async () => {
  const modules = readdirSync(fileURLToPath(new URL(".", import.meta.url))).filter((name) => /^[a-zA-Z]+\.ts$/.test(name));
  const sources = (await Promise.all(modules.map((name) => import(`./${name.slice(0, -3)}.ts`) as Promise<unknown>))).flatMap((each) =>
    sourcesIn(each),
  );
  expect(sources.length).toBeGreaterThan(20);
  for (const { title, publisher, year, address } of sources) {
    const said = `${title}, ${publisher}`;
    expect(title, said).toMatch(/\w{3}/);
    expect(publisher, said).toMatch(/\w{3}/);
    expect(year, said).toMatch(/\d{4}|not printed/);
    expect(address, said).toMatch(/^https?:\/\/[\w.-]+\.\w+\/|^not kept$/);
  }
});
