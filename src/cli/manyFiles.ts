/** Lender pages for every workbook in a folder: one line each, past those that cannot be read. */
import { mkdir, readdir } from "node:fs/promises";
import { join } from "node:path";
import { HostError } from "../host/workbookHost";
import type { ResultSheet } from "../workbook/resultSheet";
import type { SeasonReport } from "../workbook/seasonReport";
import { Refusal } from "./arguments";
import { orRefuse, workbookFile } from "./workbookFile";

/** Files that Excel keeps beside an open workbook begin so. */
const isWorkbook = (name: string): boolean => /\.xls[xm]$/i.test(name) && !name.startsWith("~$");

/**
 * Writes the sheets of every workbook of a folder into copies in another.
 *
 * @param say takes one line for each workbook, as it is done
 * @returns the worst exit code of all: 2 where one could not be read or written, 1 where one is incomplete
 */
export async function writeFolder(from: string, to: string, sheets: (report: SeasonReport) => readonly ResultSheet[], say: (line: string) => void): Promise<0 | 1 | 2> {
  const names = (await orRefuse(`${from} cannot be read`, readdir(from))).filter(isWorkbook).sort();
  if (names.length === 0) throw new Refusal(`${from} has no workbook (.xlsx) in it.`);
  await orRefuse(`${to} cannot be made`, mkdir(to, { recursive: true }));
  let worst: 0 | 1 | 2 = 0;
  for (const [index, name] of names.entries()) {
    const place = `${index + 1}/${names.length} ${name}`;
    try {
      const { report, writeCopy } = await workbookFile(join(from, name));
      await writeCopy(join(to, name), sheets(report));
      const problems = report.problems.length;
      if (problems > 0 && worst === 0) worst = 1;
      say(`${place}: ${problems === 0 ? "complete" : `incomplete, ${problems} ${problems === 1 ? "problem" : "problems"}`}`);
    } catch (cause) {
      if (!(cause instanceof Refusal) && !(cause instanceof HostError)) throw cause;
      worst = 2;
      say(`${place}: NOT WRITTEN. ${cause.message}`);
    }
  }
  return worst;
}
