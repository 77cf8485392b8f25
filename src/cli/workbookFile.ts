/** A workbook file read, reported on, and written to another file. */
import { readFile } from "node:fs/promises";
import { openWorkbook } from "../host/embedded";
import { engineInNode } from "../host/embedded/recalculation/loadInNode";
import { spelledSheet } from "../workbook/spelling";
import type { ResultSheet } from "../workbook/resultSheet";
import type { WorkbookContent } from "../workbook/cell";
import { findTables } from "../workbook/findTables";
import { seasonReport } from "../workbook/report";
import type { SeasonReport } from "../workbook/seasonReport";
import { Refusal } from "./arguments";
import { refuseOtherEnding, refuseReplacing } from "./copyName";
import { marked } from "./madeByUs";
import { isSameFile } from "./sameFile";
import { onOneLine } from "./terminalText";
import { writtenBeside } from "./writtenBeside";

export type WorkbookFile = {
  readonly content: WorkbookContent;
  readonly report: SeasonReport;
  /** No table in it is one of ours, nor nearly named so. */
  readonly isOther: boolean;
  /**
   * Refuses a place where no copy can be written, before anything is.
   *
   * @param force a file that is there already and was not written by us may be replaced
   */
  readonly refuse: (path: string, force: boolean) => Promise<void>;
  /** Writes a copy of the workbook with our sheets in it; the file itself is never changed. */
  readonly writeCopy: (path: string, sheets: readonly ResultSheet[]) => Promise<void>;
};

/** Opens a workbook, works out its formulas and computes its season. The calculation engine is loaded only where there are any. */
export async function workbookFile(path: string): Promise<WorkbookFile> {
  const bytes = await orRefuse(`${path} cannot be read`, readFile(path));
  const opened = openWorkbook(bytes, { engine: engineInNode });
  if (!opened.ok) throw new Refusal(opened.problems.map((fault) => `${path}: ${fault.message}`).join("\n"));
  const workbook = opened.value;
  const content = await workbook.read();
  const found = findTables(content);
  const report = seasonReport(content);
  return {
    content,
    report,
    isOther: found.tables.size === 0 && found.problems.length === 0,
    refuse: async (copy, force) => {
      if (await isSameFile(copy, path)) throw new Refusal(`${onOneLine(copy)} is the workbook itself: name another file to write to.`);
      refuseOtherEnding(copy, workbook.kind);
      if (!force) await refuseReplacing(copy);
    },
    writeCopy: async (copy, sheets) => {
      await workbook.write(sheets.map((sheet) => spelledSheet(sheet, report)));
      await workbook.settled(); // the grower's own formulas may read our sheets
      await orRefuse(`${onOneLine(copy)} cannot be written`, writtenBeside(copy, marked(workbook.save())));
      workbook.undo();
    },
  };
}

/** What the file system refuses is for the person at the command line to mend. */
export async function orRefuse<Value>(what: string, doing: Promise<Value>): Promise<Value> {
  try {
    return await doing;
  } catch (cause) {
    throw new Refusal(`${what}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
  }
}
