/**
 * The command line: a season's figures on the terminal or as JSON, as result sheets, and as lender pages.
 *
 * Exit codes: 0 everything is computed, 1 computed but incomplete, 2 nothing could be read or written, 70 a fault of our
 * own. Entries to fix and entries to check are on stderr; those to check leave the code at 0.
 */
import { stat } from "node:fs/promises";
import { resolve } from "node:path";
import { isMainThread } from "node:worker_threads";
import { toFix } from "../workbook/problem";
import { reportJson } from "../workbook/reportJson";
import type { SeasonReport } from "../workbook/seasonReport";
import { resultSheets } from "../workbook/sheets/resultSheets";
import { spelledText } from "../workbook/spelling";
import { cashFlowSheet } from "../workbook/sheets/lender/cashFlowSheet";
import { lenderPages } from "../workbook/sheets/lender/lenderPages";
import { asked, Refusal } from "./arguments";
import { writeFolder, writeOne, type FolderJob } from "./manyFiles";
import { answerJobs } from "./onAllCores";
import { ended, type ExitCode } from "./ended";
import { isSameFile } from "./sameFile";
import { printed, printedJson } from "./terminalText";
import { problemLine } from "./problemLine";
import { summary } from "./summary";
import { workbookFile } from "./workbookFile";

async function run(words: readonly string[]): Promise<ExitCode> {
  const { path, json, out, lender, force } = asked(words);
  const isFolder = await stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
  if (isFolder) {
    if (lender === null) throw new Refusal(`${path} is a folder: name another folder with --lender to write lender pages to.`);
    if (json || out !== null) throw new Refusal(`${path} is a folder: --json and --out take one workbook.`);
    return writeFolder({ from: path, to: lender, force }, lenderSheets, new URL(import.meta.url), (line) => {
      process.stdout.write(`${printed(line)}\n`);
    });
  }
  if (out !== null && lender !== null && (resolve(out) === resolve(lender) || (await isSameFile(out, lender))))
    throw new Refusal(`--out and --lender both name ${out}: name two files.`);
  const { report, refuse, writeCopy } = await workbookFile(path);
  for (const copy of [out, lender]) if (copy !== null) await refuse(copy, force);
  if (out !== null) await writeCopy(out, resultSheets(report));
  if (lender !== null) await writeCopy(lender, lenderSheets(report));
  process.stdout.write(
    `${json ? printedJson(JSON.stringify(reportJson(report), null, 2)) : printed(spelledText(summary(report), report))}\n`,
  );
  for (const problem of report.problems) {
    process.stderr.write(`${problemLine(problem, report)}\n`);
  }
  return toFix(report.problems).length === 0 ? 0 : 1;
}

const lenderSheets = (report: SeasonReport) => [lenderPages(report, { date: today() }), cashFlowSheet(report)];

/** The day where the program runs, `YYYY-MM-DD`. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), String(now.getMonth() + 1).padStart(2, "0"), String(now.getDate()).padStart(2, "0")].join("-");
}

// A folder is written by threads that run this same file.
if (isMainThread) await ended(run);
else answerJobs((job: FolderJob) => writeOne(job, lenderSheets));
