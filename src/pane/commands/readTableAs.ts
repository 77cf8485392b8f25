import type { WorkbookHost } from "../../host/workbookHost";
import { inputTables } from "../../workbook/templates";
import { failureOfWords, outcome, type Outcome } from "../failure";
import { firstMatching, matchView } from "../setup/matchView";
import { keepMatch } from "./keepMatch";
import { sameName, tableNamed } from "./tableNamed";

/**
 * Reads a table of the grower's own as one of ours, by a match that names the table, so that it grows with its rows. The headings
 * that are alike are matched; where one that is needed has none alike, nothing is kept. Ours is not there, or both would be meant.
 */
export async function readTableAs(host: WorkbookHost, ours: string, theirs: string): Promise<Outcome<void>> {
  const read = await outcome(() => host.read());
  if (!read.ok) return read;
  const content = read.value;
  const [table, own] = [inputTables.find(({ name }) => sameName(name, ours)), tableNamed(content, theirs)];
  if (table === undefined || own === null)
    return failureOfWords(`The workbook has no table ${theirs} any more.`, "Read the workbook again.");
  if (tableNamed(content, ours) !== null)
    return failureOfWords(`The workbook has a table ${ours} by now, which counts.`, "Read the workbook again.");
  const { missing, rows } = matchView(table, own.name, firstMatching(table, own.headers));
  if (missing !== "") return failureOfWords(missing, `Match ${theirs} under Tables, where you choose which heading stands for which.`);
  return keepMatch(host, content, rows);
}
