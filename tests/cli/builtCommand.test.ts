/** The commands as `npm run` starts them: built once from their sources, and again when those are others. */
import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";

const season = "shared/demo-season.xlsx";
const noted = ".tmp/commands/reportCommand.json";
type Noted = { readonly files: readonly string[]; readonly times: readonly number[] };

const printed = (...words: readonly string[]) => execFileSync(process.execPath, words, { encoding: "utf8" });
const built = () => printed("shared/build/command.js", "reportCommand", season, "--json");
const asNoted = () => JSON.parse(readFileSync(noted, "utf8")) as Noted;

it("a built command prints what its sources print", () => {
  expect(built()).toBe(printed("--import", "tsx", "src/cli/reportCommand.ts", season, "--json"));
});

it("a command whose source is another than when it was built is built again", () => {
  built();
  const { files, times, ...rest } = asNoted();
  expect(files).toEqual(expect.arrayContaining(["src/cli/reportCommand.ts", "src/core/numbers/decimal.ts", "package-lock.json"]));
  const changed = files.indexOf("src/core/numbers/decimal.ts");
  writeFileSync(noted, JSON.stringify({ ...rest, files, times: times.with(changed, 0) }));
  built();
  expect(asNoted().times).toEqual(times);
});
