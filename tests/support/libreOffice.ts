/**
 * LibreOffice as a spreadsheet that is not ours: it opens workbooks, works every formula out again and prints. It runs
 * with a profile of its own, because by default it trusts the values that a file brings along.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";

/** The cells of a sheet as text, row by row from A1. */
export type CellTexts = readonly (readonly string[])[];

const usualPlaces = ["/Applications/LibreOffice.app/Contents/MacOS/soffice", "C:\\Program Files\\LibreOffice\\program\\soffice.exe"];

/** @throws Error in words when there is none, so that a missing LibreOffice is never taken for a fault of a workbook */
function libreOfficePath(): string {
  const onPath = (process.env["PATH"] ?? "")
    .split(delimiter)
    .flatMap((folder) => ["soffice", "libreoffice"].map((name) => join(folder, name)));
  const found = [...onPath, ...usualPlaces].find((path) => existsSync(path));
  if (found === undefined)
    throw new Error("No LibreOffice found. Install it (Debian: apt-get install libreoffice-calc) or put soffice on the PATH.");
  return found;
}

/** When formulas are worked out as a file is opened. LibreOffice's own default is never, for files that Excel seems to have written. */
const recalculate = { always: 0, never: 1 };
const settings = (when: keyof typeof recalculate) => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>${recalculate[when]}</value></prop></item>
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>en-US</value></prop></item>
</oor:items>
`;

/** Runs a program to its end; `stdout` as text. */
function run(program: string, ...words: readonly string[]): string {
  const { status, error, stdout, stderr } = spawnSync(program, words, { encoding: "utf8", maxBuffer: 1 << 28 });
  if (error !== undefined) throw new Error(`${program} cannot be run: ${error.message}`, { cause: error });
  if (status !== 0) throw new Error(`${program} ended with ${String(status)}: ${stderr}`);
  return stdout;
}

/** Converts workbooks in one call and hands the folder of results over; nothing stays on the disk. */
function converted<Value>(
  workbooks: Readonly<Record<string, Uint8Array>>,
  to: string,
  take: (folder: string) => Value,
  when: keyof typeof recalculate = "always",
  go: (program: string, ...words: readonly string[]) => unknown = run,
): Value {
  const root = mkdtempSync(join(tmpdir(), "pennyacre-"));
  try {
    const [profile, from, results] = ["profile", "from", "results"].map((name) => join(root, name)) as [string, string, string];
    for (const folder of [join(profile, "user"), from, results]) mkdirSync(folder, { recursive: true });
    writeFileSync(join(profile, "user", "registrymodifications.xcu"), settings(when));
    const files = Object.entries(workbooks).map(([name, bytes]) => {
      const file = join(from, `${name}.xlsx`);
      writeFileSync(file, bytes);
      return file;
    });
    go(
      libreOfficePath(),
      `-env:UserInstallation=${pathToFileURL(profile).href}`,
      "--headless",
      "--convert-to",
      to,
      "--outdir",
      results,
      ...files,
    );
    return take(results);
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}

/** Comma, double quote, UTF-8, from line 1; as shown or as stored; no formulas; every sheet (the twelfth token). */
const csvFilter = (asShown: boolean): string =>
  `csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,${String(asShown)},${String(asShown)},false,false,-1`;

/**
 * Every sheet of every workbook, all formulas worked out anew.
 *
 * @param workbooks bytes by a name without hyphens
 * @param asShown cells in their number format (`1,234.50`), else as they are stored (`1234.5`)
 * @returns by workbook, then by sheet
 */
export function recalculated(
  workbooks: Readonly<Record<string, Uint8Array>>,
  asShown: boolean,
): ReadonlyMap<string, ReadonlyMap<string, CellTexts>> {
  return converted(workbooks, csvFilter(asShown), (folder) => {
    const files = readdirSync(folder);
    return new Map(
      Object.keys(workbooks).map((name) => {
        const sheets = files.filter((file) => file.startsWith(`${name}-`));
        if (sheets.length === 0) throw new Error(`LibreOffice could not open ${name}`);
        return [
          name,
          new Map(sheets.map((file) => [file.slice(name.length + 1, -".csv".length), cellTexts(readFileSync(join(folder, file), "utf8"))])),
        ];
      }),
    );
  });
}

/** Comma-separated cells, those with commas, quotes or line ends in double quotes. */
function cellTexts(text: string): CellTexts {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\n|$)/g)) {
    row.push(quoted?.replaceAll('""', '"') ?? plain ?? "");
    if (end === ",") continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

/** The workbook as it prints: takes a PDF file that is gone afterwards. */
export const printed = <Value>(workbook: Uint8Array, take: (pdf: string) => Value): Value =>
  converted({ workbook }, "pdf", (folder) => take(join(folder, "workbook.pdf")));

/** The text of each page of a PDF, laid out as printed. */
export function pageTexts(pdf: string): readonly string[] {
  const pages = run("pdftotext", "-layout", pdf, "-").split("\f");
  return pages.slice(0, -1);
}

/** Writes one page of a PDF, counted from 1, as a PNG at so many dots an inch. */
export function pagePicture(pdf: string, page: number, dots: number, png: string): void {
  run("pdftoppm", "-r", String(dots), "-f", String(page), "-l", String(page), "-singlefile", "-png", pdf, png.replace(/\.png$/, ""));
}

/**
 * Milliseconds of the processor that LibreOffice takes to work out all formulas of a workbook once: what opening it takes longer
 * where they are worked out than where the values that the file brings along are taken.
 */
export function recalculationTime(workbook: Uint8Array): number {
  const stored = converted({ book: workbook }, "xlsx", (folder) => readFileSync(join(folder, "book.xlsx")));
  const taken = (when: keyof typeof recalculate) => {
    let milliseconds = 0;
    converted(
      { book: stored },
      csvFilter(false),
      () => undefined,
      when,
      (...command) => {
        milliseconds = processorTime(...command);
      },
    );
    return milliseconds;
  };
  const least = (when: keyof typeof recalculate) => Math.min(taken(when), taken(when));
  return least("always") - least("never");
}

/** A shell's own clock tells what a program took of the processor with all that it started; Node does not. */
function processorTime(...command: readonly string[]): number {
  const { status, stderr } = spawnSync("bash", ["-c", 'TIMEFORMAT="%U %S"; time "$@" > /dev/null 2>&1', "time", ...command], {
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`${command[0]} ended with ${String(status)}`);
  const [user = NaN, system = NaN] = stderr.trim().split(" ").map(Number);
  return (user + system) * 1000;
}
