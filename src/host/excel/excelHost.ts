import type { WorkbookHost } from "../workbookHost";
import { addColumn } from "./addColumn";
import { addRows } from "./addRows";
import { attempt, type Work } from "./attempt";
import { changeCells } from "./changeCells";
import { watchChanges } from "./changes";
import { makeTables } from "./makeTables";
import { workbookReader } from "./readWorkbook";
import { selectedRange, selectPlace } from "./selection";
import { excelSupports } from "./supports";
import { writeSheets } from "./writeSheets";

export type ExcelHostOptions = {
  /** How long to wait for Excel before telling the user that it does not answer, in seconds. */
  readonly seconds?: number;
  /** How long changes must have ceased before they are told, in milliseconds. */
  readonly quiet?: number;
};

/**
 * The open workbook of the Excel that the pane runs in; needs ExcelApi 1.7. Reading takes two round trips however many
 * tables there are; writing takes reading ones first and then a single one, which Excel records as one step to undo.
 */
export function excelHost({ seconds = 30, quiet = 300 }: ExcelHostOptions = {}): WorkbookHost {
  const run = <Value>(work: Work<Value>) => attempt({ seconds }, work);
  const reader = workbookReader();
  return {
    read: () => run(reader),
    write: (sheets) => run((context, goOn) => writeSheets(context, sheets, excelSupports, goOn)),
    makeTables: (tables) => run((context, goOn) => makeTables(context, tables, excelSupports, goOn)),
    addRows: (table, rows) => run((context, goOn) => addRows(context, table, rows, goOn)),
    changeCells: (changes) => run((context, goOn) => changeCells(context, changes, goOn)),
    addColumn: (column) => run((context, goOn) => addColumn(context, column, excelSupports, goOn)),
    select: (place) => run((context) => selectPlace(context, place)),
    selection: () => run(selectedRange),
    onChanged: (changed) => watchChanges(changed, { seconds, quiet, supports: excelSupports }),
  };
}
