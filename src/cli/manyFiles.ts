/** Lender pages for every workbook in a folder, on all cores: one line each, past those that cannot be read. */
import { mkdir, readdir } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { HostError } from "../host/workbookHost";
import { toFix } from "../workbook/problem";
import type { ResultSheet } from "../workbook/resultSheet";
import type { SeasonReport } from "../workbook/seasonReport";
import { Refusal } from "./arguments";
import { onAllCores } from "./onAllCores";
import { onOneLine } from "./terminalText";
import { problemLine } from "./problemLine";
import { orRefuse, workbookFile } from "./workbookFile";
import { isWorkbook } from "./workbookNames";

/** Spreadsheets that only other programs read: a farm's season kept in one would else be missed without a word. */
const isOtherSpreadsheet = (name: string): boolean => /\.(xls|xlsb|ods|numbers|csv|tsv)$/i.test(name) && !name.startsWith("~$");

type Code = 0 | 1 | 2 | 70;
const larger = (one: Code, other: Code): Code => (one > other ? one : other);

/** One workbook of a folder: the `index`th of `count`, and where its pages go. */
export type FolderJob = {
  readonly from: string;
  readonly to: string;
  readonly name: string;
  readonly index: number;
  readonly count: number;
  /** Files there that we did not write may be replaced. */
  readonly force: boolean;
};
/** What came of it: a line for it and one for each of its entries to fix. `isSeason`: it was read, and has one of our tables. */
export type FolderAnswer = { readonly code: Code; readonly lines: readonly string[]; readonly isSeason: boolean };

/** Fewer workbooks are done before another thread has started. */
const fewestForThreads = 4;

/**
 * Writes the sheets of every workbook of a folder into copies in another.
 *
 * @param program what a thread runs that writes one workbook after another, on a machine with several cores
 * @param say takes the lines of each workbook in the order of their names, and one for the spreadsheets of other kinds
 * @returns the worst exit code of all: 70 where one met a fault of ours, 2 where one could not be read or written, 1 where one is
 *   incomplete
 */
export async function writeFolder(
  { from, to, force }: Pick<FolderJob, "from" | "to" | "force">,
  sheets: Sheets,
  program: URL,
  say: (line: string) => void,
): Promise<Code> {
  const all = (await orRefuse(`${from} cannot be read`, readdir(from))).sort();
  const names = all.filter(isWorkbook);
  const others = all.filter(isOtherSpreadsheet);
  const leftOut =
    others.length === 0
      ? ""
      : `Left out: ${others.join(", ")}. Open such a file in a spreadsheet program and save it there as an Excel workbook (.xlsx).`;
  if (names.length === 0) throw new Refusal([`${from} has no workbook (.xlsx) in it.`, leftOut].join(" ").trimEnd());
  await orRefuse(`${to} cannot be made`, mkdir(to, { recursive: true }));
  const jobs = names.map((name, index): FolderJob => ({ from, to, name, index, count: names.length, force }));
  const threads = Math.min(availableParallelism(), jobs.length);
  const isApart = threads > 1 && jobs.length >= fewestForThreads;
  const answers = isApart ? onAllCores(program, threads, jobs, notWritten) : null;
  let worst: Code = 0;
  let seasons = 0;
  for (const [index, job] of jobs.entries()) {
    const { code, lines, isSeason } = await (answers?.[index] ?? writeOne(job, sheets));
    worst = larger(worst, code);
    if (isSeason) seasons += 1;
    for (const line of lines) say(line);
  }
  if (leftOut !== "") say(leftOut);
  // Whoever waits for pages must not take a folder without a season for one that is done.
  if (seasons === 0) worst = larger(worst, 2);
  return worst;
}

type Sheets = (report: SeasonReport) => readonly ResultSheet[];

const placeOf = ({ index, count, name }: FolderJob): string => `${index + 1}/${count} ${onOneLine(name)}`;

/** Writes the sheets of one workbook of a folder. What goes wrong with it is its answer, so that the others are written. */
export async function writeOne(job: FolderJob, sheets: Sheets): Promise<FolderAnswer> {
  const { from, to, name, force } = job;
  let isSeason = false;
  try {
    const workbook = await workbookFile(join(from, name));
    if (workbook.isOther) return { code: 0, lines: [`${placeOf(job)}: left out, none of its tables is one of a season.`], isSeason };
    isSeason = true;
    const { report, refuse, writeCopy } = workbook;
    await refuse(join(to, name), force);
    await writeCopy(join(to, name), sheets(report));
    const faults = toFix(report.problems);
    const problems = faults.length;
    const checks = report.problems.length - problems;
    const entries = `${problems} ${problems === 1 ? "entry" : "entries"} to fix`;
    const words = `${problems === 0 ? "complete" : `incomplete, ${entries}`}${checks === 0 ? "" : `, ${checks} to check`}`;
    const lines = [`${placeOf(job)}: ${words}`, ...faults.map((fault) => `  ${problemLine(fault, report)}`)];
    return { code: problems > 0 ? 1 : 0, lines, isSeason };
  } catch (cause) {
    return { ...notWritten(job, cause), isSeason };
  }
}

/** A fault of ours in one workbook must not keep the pages of the others back; the code says that there was one. */
function notWritten(job: FolderJob, cause: unknown): FolderAnswer {
  const isTheirs = cause instanceof Refusal || cause instanceof HostError;
  const words = onOneLine(isTheirs ? cause.message : `A fault of Pennyacre itself: ${String(cause)}`);
  return { code: isTheirs ? 2 : 70, lines: [`${placeOf(job)}: NOT WRITTEN. ${words}`], isSeason: false };
}
