/** The entries to fix and to check, by the cell that each is in. */
import { explain } from "../workbook/explain";
import { gradeOf } from "../workbook/problem";
import { around, spelledText } from "../workbook/spelling";
import type { SeasonReport } from "../workbook/seasonReport";
import type { At } from "../host/address";

/** What is said of a cell, and whether figures are incomplete because of it. */
type CellFault = { readonly words: string; readonly isToFix: boolean };
export type CellFaults = ReadonlyMap<string, CellFault>;

const none: CellFaults = new Map();

/** Names a cell among the faults of its sheet. */
export const faultKey = ({ row, column }: At): string => `${row}:${column}`;

/** Faults by sheet. One that is of a whole row or table stands in the first cell of it; several of one cell are said after each other. */
export function cellFaults(report: Pick<SeasonReport, "problems" | "placeOf" | "season">): ReadonlyMap<string, CellFaults> {
  const bySheet = new Map<string, Map<string, CellFault>>();
  for (const problem of report.problems) {
    const place = report.placeOf(problem.at);
    if (place === null) continue;
    const { what, remedy } = explain(problem);
    const onSheet = bySheet.get(place.sheet) ?? new Map<string, CellFault>();
    bySheet.set(place.sheet, onSheet);
    const before = onSheet.get(faultKey(place));
    const words = around(`${what} ${remedy}`, problem.found, (ours) => spelledText(ours, report));
    onSheet.set(faultKey(place), {
      words: before === undefined ? words : `${before.words} ${words}`,
      isToFix: gradeOf(problem) === "fix" || before?.isToFix === true,
    });
  }
  return bySheet;
}

/** The faults of one sheet. */
export const faultsOn = (faults: ReadonlyMap<string, CellFaults>, sheet: string): CellFaults => faults.get(sheet) ?? none;
