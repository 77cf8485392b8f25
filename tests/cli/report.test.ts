/** The command line as a person or another program meets it: what it prints, how it ends, and what it leaves alone. */
import { spawn } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newWorkbook } from "../../src/host/embedded";
import { reportJson } from "../../src/workbook/reportJson";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { demo, opened } from "../support/demoReport";

const season = "shared/demo-season.xlsx";
const withProblems = "shared/demo-season-with-problems.xlsx";

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pennyacre-"));
  // One file starts in a tenth of the time that the sources take.
  await build({
    entryPoints: ["src/cli/reportCommand.ts"],
    outfile: at("report.mjs"),
    bundle: true,
    platform: "node",
    format: "esm",
    logLevel: "error",
  });
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const at = (...names: readonly string[]) => join(folder, ...names);

type Ended = { readonly code: number | null; readonly out: string; readonly error: string };

const report = (...words: readonly string[]): Promise<Ended> => started([at("report.mjs"), ...words]);
const started = (words: readonly string[]): Promise<Ended> =>
  new Promise((ended, failed) => {
    const child = spawn(process.execPath, words, { stdio: ["ignore", "pipe", "pipe"] });
    let [out, error] = ["", ""];
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      error += text;
    });
    child.on("error", failed).on("close", (code) => {
      ended({ code, out, error });
    });
  });

const sheetNames = (path: string) =>
  opened(readFileSync(path))
    .sheets()
    .map(({ name }) => name);

describe("a season without problems", () => {
  it("is told on a page for people, and ends with 0", async () => {
    const { code, out, error } = await started(["--import", "tsx", "src/cli/reportCommand.ts", season]);
    expect({ code, error }).toEqual({ code: 0, error: "" });
    expect(out).toMatch(/^Season 2026, USD\n/);
    for (const words of ["Corn, 860.7 ac", "break-even price/bu", "Still to buy", "not financial, tax or legal advice"])
      expect(out).toContain(words);
    expect(out).not.toContain("INCOMPLETE");
  });

  it("is told to programs as the description of the JSON has it", async () => {
    const { code, out } = await report(season, "--json");
    expect(code).toBe(0);
    const told = JSON.parse(out) as Record<string, unknown>;
    expect(told).toEqual(JSON.parse(JSON.stringify(reportJson((await demo()).report))));
    const described = readFileSync("docs/report-json.md", "utf8");
    for (const key of Object.keys(told)) expect(described).toContain(`"${key}"`);
    expect(told["complete"]).toBe(true);
  });

  it("is written into copies with our sheets behind the grower's, and its own file stays as it is, byte for byte", async () => {
    const input = at("season.xlsx");
    copyFileSync(season, input);
    const before = readFileSync(input);
    const { code } = await report(input, "--out", at("out.xlsx"), "--lender", at("lender.xlsx"));
    expect(code).toBe(0);
    expect(readFileSync(input).equals(before)).toBe(true);
    const theirs = sheetNames(input);
    expect(sheetNames(at("out.xlsx")).slice(0, theirs.length + 3)).toEqual([...theirs, "Cost per acre", "Break-even", "Field pages"]);
    expect(sheetNames(at("lender.xlsx"))).toEqual([...theirs, "Lender pages", "Cash flow"]);
  });
});

describe("a season with formulas in its input tables, stored without values as other programs do", () => {
  const sources = (...words: readonly string[]) => started(["--import", "tsx", "src/cli/reportCommand.ts", ...words]);

  it("has the figures of one with the same entries typed", async () => {
    const [formulas, typed] = await Promise.all(
      ["Formulas", "Typed"].map((name) => sources(`tests/fixtures/season${name}.xlsx`, "--json")),
    );
    expect({ code: typed!.code, error: typed!.error }).toEqual({ code: 0, error: "" });
    expect(formulas).toEqual(typed);
    expect(typed!.out).toContain('"acres": "118.5"'); // 80.5 and 38
  });

  it("is copied with values in them, and the file itself stays without", async () => {
    const { code } = await sources("tests/fixtures/seasonFormulas.xlsx", "--out", at("worked.xlsx"), "--lender", at("workedPages.xlsx"));
    expect(code).toBe(0);
    const worked = opened(readFileSync(at("worked.xlsx")));
    const cell = (row: number, column: number) => worked.cellAt("Purchases", { row, column });
    expect(cell(1, 5)).toMatchObject({ value: 13303.5, formula: "C2*E2", stale: false });
    expect(cell(3, 2)).toMatchObject({ value: -3.5, stale: false });
    expect(opened(readFileSync("tests/fixtures/seasonFormulas.xlsx")).cellAt("Purchases", { row: 1, column: 5 })).toMatchObject({
      value: "",
      stale: true,
    });
  });
});

describe("a season with problems", () => {
  it("is told all the same, marked, with every problem on stderr, and ends with 1", async () => {
    const { code, out, error } = await report(withProblems);
    expect(code).toBe(1);
    expect(out).toContain("INCOMPLETE");
    expect(error.trim().split("\n")).toHaveLength(2);
    for (const line of error.trim().split("\n")) expect(line).toMatch(/^Purchases, entry \d+, [A-Z][a-z]+ \([A-Z]+\d+\): /);
  });

  it("is JSON with the same problems in it", async () => {
    const { code, out } = await report(withProblems, "--json");
    expect(code).toBe(1);
    const { complete, problems } = JSON.parse(out) as {
      readonly complete: boolean;
      readonly problems: readonly { readonly what: string; readonly remedy: string }[];
    };
    expect(complete).toBe(false);
    expect(problems).toHaveLength(2);
    for (const { what, remedy } of problems) expect(`${what}${remedy}`.length).toBeGreaterThan(20);
  });
});

it("ends without a word where nobody reads on", async () => {
  const child = spawn(process.execPath, [at("report.mjs"), season, "--json"], { stdio: ["ignore", "pipe", "pipe"] });
  child.stdout.destroy();
  const error: string[] = [];
  child.stderr.setEncoding("utf8").on("data", (text: string) => error.push(text));
  await new Promise((ended) => child.on("close", ended));
  expect(error).toEqual([]);
});

describe("what cannot be done", () => {
  const refused = async (words: readonly string[], sentence: RegExp) => {
    const { code, out, error } = await report(...words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(error).toMatch(sentence);
    expect(error).not.toMatch(/\n\s+at /);
  };

  it.each([
    ["no file", []],
    ["two files", [season, withProblems]],
    ["an option that nobody knows", [season, "--lender-pages"]],
    ["an option without its value", [season, "--out"]],
  ])("is %s: it shows the usage", (_, words) => refused(words, /Usage: npm run -s report/));

  it("is a file that is not there, or no workbook", async () => {
    await refused([at("nowhere.xlsx")], /nowhere\.xlsx cannot be read/);
    await refused(["package.json"], /package\.json: This is plain text/);
    writeFileSync(at("bills.csv"), "Date;Item\r\n");
    await refused([at("bills.csv")], /bills\.csv: This is plain text, as in a \.csv.*save it there as an Excel workbook \(\.xlsx\)/);
  });

  it("is writing over the workbook, however it is spelled", async () => {
    const input = at("kept.xlsx");
    copyFileSync(season, input);
    symlinkSync(input, at("link.xlsx"));
    for (const spelled of [input, relative(".", input), at("link.xlsx")]) {
      for (const option of ["--out", "--lender"]) await refused([input, option, spelled], /is the workbook itself/);
    }
    expect(readFileSync(input).equals(readFileSync(season))).toBe(true);
  });

  it("is one file for two results, or a place where nothing can be written", async () => {
    await refused([season, "--out", at("both.xlsx"), "--lender", join(folder, ".", "both.xlsx")], /name two files/);
    await refused([season, "--out", at("no", "such", "folder.xlsx")], /cannot be written/);
    expect(existsSync(at("both.xlsx"))).toBe(false);
  });

  it("is a folder without a folder to write to, with an option for one workbook, or with none in it", async () => {
    mkdirSync(at("empty"));
    await refused([folder], /is a folder: name another folder with --lender/);
    await refused([folder, "--lender", at("pages"), "--json"], /take one workbook/);
    await refused([at("empty"), "--lender", at("pages")], /has no workbook \(\.xlsx\) in it\.$/m);
    writeFileSync(at("empty", "season.ods"), "");
    await refused([at("empty"), "--lender", at("pages")], /has no workbook.*Left out: season\.ods\..*save it there as/);
    await refused([folder, "--lender", season], /cannot be made/);
  });
});

describe("a folder", () => {
  it("has one line for each workbook, goes on past a bad one, and ends with the worst code", async () => {
    const [from, to] = [at("farms"), at("their pages")];
    mkdirSync(from);
    copyFileSync(withProblems, join(from, "a.xlsx"));
    writeFileSync(join(from, "b.xlsx"), "no workbook");
    copyFileSync(season, join(from, "c.XLSX"));
    writeFileSync(join(from, "~$c.xlsx"), "Excel keeps this beside an open workbook");
    writeFileSync(join(from, "notes.txt"), "no workbook either");
    const { code, out, error } = await report(from, "--lender", to);
    expect({ code, error }).toEqual({ code: 2, error: "" });
    const lines = out.trimEnd().split("\n");
    expect(lines).toHaveLength(5);
    expect(lines[0]).toBe("1/3 a.xlsx: incomplete, 2 entries to fix");
    for (const line of lines.slice(1, 3)) expect(line).toMatch(/^ {2}Purchases, entry \d+, [A-Z][a-z]+ \([A-Z]+\d+\): /);
    expect(lines[3]).toMatch(/^2\/3 b\.xlsx: NOT WRITTEN\. /);
    expect(lines[4]).toBe("3/3 c.XLSX: complete");
    expect(readdirSync(to).sort()).toEqual(["a.xlsx", "c.XLSX"]);
    for (const name of readdirSync(to)) expect(sheetNames(join(to, name))).toEqual(expect.arrayContaining(["Lender pages", "Cash flow"]));
    expect(readFileSync(join(from, "a.xlsx")).equals(readFileSync(withProblems))).toBe(true);

    rmSync(join(from, "b.xlsx"));
    writeFileSync(join(from, "Neighbour.xls"), "of the old kind");
    expect((await report(from, "--lender", to)).out).toMatch(/^2\/2 c\.XLSX: complete\nLeft out: Neighbour\.xls\. /m);
    expect((await report(from, "--lender", to)).code).toBe(1);
    expect((await report(from, "--lender", `${relative(".", from)}/`)).code).toBe(2);
    expect(readFileSync(join(from, "c.XLSX")).equals(readFileSync(season))).toBe(true);
  });

  it("of many workbooks is written by several threads, and says and writes what they come to one by one", async () => {
    const [from, to, alone] = [at("many"), at("many pages"), at("alone pages")];
    for (const each of [from, alone]) mkdirSync(each);
    for (const name of ["a", "b", "d", "f"]) copyFileSync(name === "b" ? withProblems : season, join(from, `${name}.xlsx`));
    writeFileSync(join(from, "c.xlsx"), "no workbook");
    writeFileSync(join(from, "e.xlsx"), newWorkbook().save());
    const { code, out, error } = await report(from, "--lender", to);
    expect({ code, error }).toEqual({ code: 2, error: "" });
    expect(out.split("\n").filter((line) => /^\d/.test(line))).toEqual([
      "1/6 a.xlsx: complete",
      "2/6 b.xlsx: incomplete, 2 entries to fix",
      expect.stringMatching(/^3\/6 c\.xlsx: NOT WRITTEN\. /),
      "4/6 d.xlsx: complete",
      "5/6 e.xlsx: left out, none of its tables is one of a season.",
      "6/6 f.xlsx: complete",
    ]);
    for (const name of ["a", "b", "f"]) {
      await report(join(from, `${name}.xlsx`), "--lender", join(alone, `${name}.xlsx`));
      expect(readFileSync(join(to, `${name}.xlsx`)).equals(readFileSync(join(alone, `${name}.xlsx`)))).toBe(true);
    }
    // What stands there and is not ours is refused in a thread as well.
    writeFileSync(join(to, "a.xlsx"), "a neighbour's");
    expect((await report(from, "--lender", to)).out).toMatch(/^1\/6 a\.xlsx: NOT WRITTEN\. .*--force/m);
  });

  it("leaves out workbooks that have none of our tables, says so, and takes a folder of only such for nothing done", async () => {
    const [from, to] = [at("mixed"), at("mixed pages")];
    mkdirSync(from);
    writeFileSync(join(from, "bills.xlsx"), newWorkbook().save());
    const alone = await report(from, "--lender", to);
    expect(alone).toEqual({ code: 2, out: "1/1 bills.xlsx: left out, none of its tables is one of a season.\n", error: "" });
    copyFileSync(season, join(from, "season.xlsx"));
    const { code, out } = await report(from, "--lender", to);
    expect({ code, out }).toEqual({
      code: 0,
      out: "1/2 bills.xlsx: left out, none of its tables is one of a season.\n2/2 season.xlsx: complete\n",
    });
    expect(readdirSync(to)).toEqual(["season.xlsx"]);
  });
});

/** The demo season with the text of a part changed. */
function changed(part: string, from: string, to: string): Uint8Array {
  const parts = unzipSync(readFileSync(season));
  const text = strFromU8(parts[part]!);
  expect(text).toContain(from);
  return zipSync({ ...parts, [part]: strToU8(text.replaceAll(from, to)) });
}

describe("a file that is there already", () => {
  it("is replaced without asking only where we wrote it and nobody has saved it since", async () => {
    const out = at("again.xlsx");
    expect((await report(season, "--out", out)).code).toBe(0);
    expect((await report(season, "--out", out)).code).toBe(0);
    writeFileSync(out, zipSync(unzipSync(readFileSync(out)))); // as another program packs it
    const theirs = readFileSync(out);
    const refused = await report(season, "--lender", at("first.xlsx"), "--out", out);
    expect({ code: refused.code, out: refused.out }).toEqual({ code: 2, out: "" });
    expect(refused.error).toMatch(/again\.xlsx is there already .*--force/);
    expect(readFileSync(out).equals(theirs)).toBe(true);
    expect(existsSync(at("first.xlsx"))).toBe(false);
    expect((await report(season, "--out", out, "--force")).code).toBe(0);
    expect(readFileSync(out).equals(theirs)).toBe(false);
  });

  it.skipIf(process.platform === "win32")("stays whole where the new one finds no room, and nothing is left beside it", async () => {
    const home = at("full");
    mkdirSync(home);
    const out = join(home, "kept.xlsx");
    expect((await report(season, "--out", out)).code).toBe(0);
    const before = readFileSync(out);
    const limited = `ulimit -f 8; exec "${process.execPath}" "${at("report.mjs")}" ${season} --out "${out}"`;
    const code = await new Promise((ended) => spawn("/bin/bash", ["-c", limited], { stdio: "ignore" }).on("close", ended));
    expect(code).toBe(2);
    expect(readFileSync(out).equals(before)).toBe(true);
    expect(readdirSync(home)).toEqual(["kept.xlsx"]);
  });
});

describe("the name of a copy", () => {
  it("ends as the workbook does: with macros in .xlsm, without in .xlsx, and in nothing else", async () => {
    const macros = at("macros.xlsm");
    const plain = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
    writeFileSync(macros, changed("[Content_Types].xml", plain, "application/vnd.ms-excel.sheet.macroEnabled.main+xml"));
    expect((await report(macros, "--out", at("macros out.xlsm"))).code).toBe(0);
    for (const [from, to, why] of [
      [macros, "lost.xlsx", /has macros.*\.xlsm/],
      [season, "none.xlsm", /has no macros.*\.xlsx/],
      [season, "out.csv", /no name of a workbook/],
      [season, "out", /no name of a workbook/],
    ] as const) {
      const { code, error } = await report(from, "--out", at(to));
      expect({ code, there: existsSync(at(to)) }).toEqual({ code: 2, there: false });
      expect(error).toMatch(why);
    }
  });
});

it("sends a terminal nothing that steers it, whatever a file is called", async () => {
  const { error } = await report(at("\u001b[2Jno such\u009b31m.xlsx"));
  expect(error).toContain("no such");
  expect(error).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
});
