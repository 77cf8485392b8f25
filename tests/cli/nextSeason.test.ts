/** The commands that start the next season and put several years together, as a person meets them. */
import { spawn } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openWorkbook } from "../../src/host/embedded";
import { seasonReport } from "../../src/workbook/report";

const demo = "shared/demo-season.xlsx";
let folder: string;
const at = (...names: readonly string[]) => join(folder, ...names);
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pennyacre-"));
  await build({
    entryPoints: ["src/cli/nextCommand.ts", "src/cli/yearsCommand.ts"],
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    platform: "node",
    format: "esm",
    logLevel: "error",
  });
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const run = (program: "next" | "years", ...words: readonly string[]): Promise<{ code: number | null; out: string; error: string }> =>
  new Promise((ended, failed) => {
    const child = spawn(process.execPath, [at(`${program}Command.mjs`), ...words], { stdio: ["ignore", "pipe", "pipe"] });
    let [out, error] = ["", ""];
    child.stdout.setEncoding("utf8").on("data", (text: string) => (out += text));
    child.stderr.setEncoding("utf8").on("data", (text: string) => (error += text));
    child.on("error", failed).on("close", (code) => {
      ended({ code, out, error });
    });
  });
async function reportOf(path: string) {
  const opened = openWorkbook(readFileSync(path));
  if (!opened.ok) throw new Error(opened.problems.map(({ message }) => message).join(" "));
  return seasonReport(await opened.value.read());
}

describe("the next season from the command line", () => {
  it("is a workbook without entries to fix, with the same bytes each time, and leaves the old one alone", async () => {
    const before = readFileSync(demo);
    const [first, second] = [await run("next", demo, at("one.xlsx")), await run("next", demo, at("two.xlsx"))];
    expect([first.code, first.error, second.code]).toEqual([0, "", 0]);
    expect(first.out).toContain("Season 2027, made from the workbook of season 2026");
    expect(readFileSync(at("one.xlsx")).equals(readFileSync(at("two.xlsx")))).toBe(true);
    expect(readFileSync(demo).equals(before)).toBe(true);
    const report = await reportOf(at("one.xlsx"));
    expect(report.problems.filter(({ code }) => code !== "date-missing").map(({ code, at: place }) => `${code} ${place.table}`)).toEqual(
      [],
    );
    expect(report.season.settings.seasonYear).toBe("2027");
    expect(report.season.purchases.length).toBeGreaterThan(10);
    expect(report.season.purchases.every(({ isOpening }) => isOpening)).toBe(true);
  });

  it("replaces no file of somebody's, and says what it needs", async () => {
    writeFileSync(at("mine.xlsx"), "mine");
    const refused = await run("next", demo, at("mine.xlsx"));
    expect([refused.code, refused.error]).toEqual([2, expect.stringContaining("--force")]);
    expect(readFileSync(at("mine.xlsx"), "utf8")).toBe("mine");
    // Also with --force, and where the season is a workbook that this command made: all of it would be gone.
    copyFileSync(demo, at("this.xlsx"));
    symlinkSync(at("this.xlsx"), at("link.xlsx"));
    const bytes = readFileSync(demo);
    for (const to of ["this.xlsx", "link.xlsx"]) {
      const itself = await run("next", at("this.xlsx"), at(to), "--force");
      expect([itself.code, itself.error]).toEqual([2, expect.stringContaining("is the season's workbook itself")]);
    }
    expect(readFileSync(at("this.xlsx")).equals(bytes)).toBe(true);
    expect((await run("next", at("one.xlsx"), at("one.xlsx"))).code).toBe(2);
    expect((await run("next", demo)).error).toContain("Usage: npm run -s next");
    expect((await run("next", demo, at("next.csv"))).code).toBe(2);
  });
});

describe("several years from the command line", () => {
  it("stand in one table, each field and year once, whichever workbooks remember them", async () => {
    mkdirSync(at("years"));
    copyFileSync(demo, at("years", "2026.xlsx"));
    copyFileSync(at("one.xlsx"), at("years", "2027.xlsx"));
    writeFileSync(at("years", "torn.xlsx"), "no workbook");
    const { code, out } = await run("years", at("years"), "--out", at("all.xlsx"));
    // One file could not be read.
    expect([code, out]).toEqual([2, expect.stringContaining("torn.xlsx: NOT READ.")]);
    expect(out).not.toContain("has other figures");
    const { season } = await reportOf(at("all.xlsx"));
    expect(season.pastSeasons.length).toBe(43);
    expect(new Set(season.pastSeasons.map(({ season: year }) => year))).toEqual(new Set(["2026", "2025", "2024", "2023"]));
  });

  it("replace no workbook that they are read from, and leave out the table that was written there before", async () => {
    mkdirSync(at("both"));
    copyFileSync(demo, at("both", "2026.xlsx"));
    const over = await run("years", at("both"), "--out", at("both", "2026.xlsx"), "--force");
    expect([over.code, over.error]).toEqual([2, expect.stringContaining("is one of the workbooks that are read")]);
    expect(readFileSync(at("both", "2026.xlsx")).equals(readFileSync(demo))).toBe(true);
    const first = await run("years", at("both"), "--out", at("both", "all.xlsx"));
    const bytes = readFileSync(at("both", "all.xlsx"));
    expect(await run("years", at("both"), "--out", at("both", "all.xlsx"))).toEqual(first);
    expect(readFileSync(at("both", "all.xlsx")).equals(bytes)).toBe(true);
    expect(first.code).toBe(0);
  });

  it("are none in a folder without any", async () => {
    mkdirSync(at("empty"));
    const { code, error } = await run("years", at("empty"), "--out", at("none.xlsx"));
    expect([code, error]).toEqual([2, expect.stringContaining("has no workbook")]);
  });
});
