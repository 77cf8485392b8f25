/** Lender pages for every workbook in a folder: one line each, past those that cannot be read. */
import { mkdir, readdir } from "node:fs/promises";
import { join } from "node:path";
import { HostError } from "../host/workbookHost";
import { toFix } from "../workbook/problem";
import type { ResultSheet } from "../workbook/resultSheet";
import type { SeasonReport } from "../workbook/seasonReport";
import { Refusal } from "./arguments";
import { onOneLine } from "./terminalText";
import { problemLine } from "./problemLine";
import { orRefuse, workbookFile } from "./workbookFile";
import { isWorkbook } from "./workbookNames";

/** Spreadsheets that only other programs read: a farm's season kept in one would else be missed without a word. */
const isOtherSpreadsheet = (name: string): boolean => /\.(xls|xlsb|ods|numbers|csv|tsv)$/i.test(name) && !name.startsWith("~$");

type Code = 0 | 1 | 2 | 70;
const larger = (one: Code, other: Code): Code => (one > other ? one : other);

/**
 * Writes the sheets of every workbook of a folder into copies in another.
 *
 * @param force files there that we did not write may be replaced
 * @param say takes one line for each workbook, as it is done, one for each of its entries to fix, and one for the spreadsheets of
 *   other kinds
 * @returns the worst exit code of all: 70 where one met a fault of ours, 2 where one could not be read or written, 1 where one is
 *   incomplete
 */
export async function writeFolder(
  from: string,
  to: string,
  force: boolean,
  sheets: (report: SeasonReport) => readonly ResultSheet[],
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
  let worst: Code = 0;
  let seasons = 0;
  for (const [index, name] of names.entries()) {
    const place = `${index + 1}/${names.length} ${onOneLine(name)}`;
    try {
      const { report, isOther, refuse, writeCopy } = await workbookFile(join(from, name));
      if (isOther) {
        say(`${place}: left out, none of its tables is one of a season.`);
        continue;
      }
      seasons += 1;
      await refuse(join(to, name), force);
      await writeCopy(join(to, name), sheets(report));
      const faults = toFix(report.problems);
      const problems = faults.length;
      const checks = report.problems.length - problems;
      if (problems > 0) worst = larger(worst, 1);
      say(
        `${place}: ${problems === 0 ? "complete" : `incomplete, ${problems} ${problems === 1 ? "entry" : "entries"} to fix`}${checks === 0 ? "" : `, ${checks} to check`}`,
      );
      for (const fault of faults) say(`  ${problemLine(fault, report)}`);
    } catch (cause) {
      // A fault of ours in one workbook must not keep the pages of the others back; the code says that there was one.
      const isOurs = !(cause instanceof Refusal) && !(cause instanceof HostError);
      worst = isOurs ? 70 : larger(worst, 2);
      say(`${place}: NOT WRITTEN. ${onOneLine(isOurs ? `A fault of Pennyacre itself: ${String(cause)}` : cause.message)}`);
    }
  }
  if (leftOut !== "") say(leftOut);
  // Whoever waits for pages must not take a folder without a season for one that is done.
  if (seasons === 0) worst = larger(worst, 2);
  return worst;
}
