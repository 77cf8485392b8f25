/** A new workbook with tables, written to a file. */
import { filledWorkbook } from "../host/embedded/package/filledWorkbook";
import type { InputTable } from "../workbook/inputTable";
import { refuseOtherEnding, refuseReplacing } from "./copyName";
import { marked } from "./madeByUs";
import { onOneLine } from "./terminalText";
import { orRefuse } from "./workbookFile";
import { writtenBeside } from "./writtenBeside";

/** Refuses a place where no new workbook can be written. @param force a file that is there and not ours may be replaced */
export async function refuseNew(path: string, force: boolean): Promise<void> {
  refuseOtherEnding(path, "plain");
  if (!force) await refuseReplacing(path);
}

/** @param notes lines for the sheet Notes that every new workbook begins with */
export async function writeNew(path: string, tables: readonly InputTable[], notes: readonly string[]): Promise<void> {
  const bytes = await filledWorkbook(tables, notes);
  await orRefuse(`${onOneLine(path)} cannot be written`, writtenBeside(path, marked(bytes)));
}
