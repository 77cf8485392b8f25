import type { WorkbookHost } from "../workbookHost";
import { attempt, type Attempted } from "./attempt";
import { watchChanges } from "./watchedChanges";
import { carryOut, type Command } from "./command";
import { hostState } from "./hostState";
import { opensWith } from "./opensWith";
import { workbookReader } from "./readWorkbook";
import { alikeRanges, selectedRange, selectPlace } from "./excelSelection";
import { excelSupports, excelUndoes } from "./supports";
import { writing, type Writing } from "./writingPart";

export type ExcelHostOptions = {
  /** How long to wait for Excel before telling the user that it does not answer, in seconds. */
  readonly seconds?: number;
  /** How long changes must have ceased before they are told, in milliseconds. */
  readonly quiet?: number;
};

/**
 * The open workbook of the Excel that the pane runs in; needs ExcelApi 1.7. Reading takes two round trips however many
 * tables there are, and a third where something stands below one; writing takes reading ones first and then a single one, which
 * Excel records as one step to undo.
 * A command ends only when it is known what is in the workbook.
 */
export function excelHost({ seconds = 30, quiet = 300 }: ExcelHostOptions = {}): WorkbookHost {
  const { follow, tell } = hostState();
  const run = <Value>(work: Attempted<Value>) => attempt({ seconds }, work);
  const command = async <Value>(asked: (by: Writing) => Command<Value>, what: string, after = "") =>
    carryOut(asked(await writing()), {
      seconds,
      waiting: (waiting) => tell({ waiting }),
      doneLate: () => tell({ late: `Excel has now done what it had not answered for: ${what}.${after}` }),
    });
  /** Offers to take an entry back, where Excel does not say that its own Undo does. */
  const entered = (words: string, undo: (by: Writing) => Command<void>) => {
    if (excelUndoes()) return;
    const takeBack = async () => {
      await command(undo, `${words}, taken back`);
      tell({ lastEntry: null });
    };
    tell({ lastEntry: { words, takeBack } });
  };
  const reader = workbookReader();
  const opening = opensWith();
  return {
    follow,
    ...(opening !== null && { opensWith: opening }),
    read: () => run(reader),
    write: (sheets) => command((by) => by.writeSheets(sheets, excelSupports), "the result sheets were written"),
    makeTables: (tables) => command((by) => by.makeTables(tables, excelSupports), "tables were made"),
    enterRows: async (entries) => {
      const words = `entries in ${entries.map(({ table }) => table.sheet).join(", ")}`;
      const done = await command(
        (by) => by.enterRows(entries, excelSupports),
        words,
        " If you entered it again, it is there twice: look, and delete one.",
      );
      if (done.added.length + done.made.length > 0) entered(words, (by) => by.takeBackEntered(done));
    },
    addRows: async (table, rows) => {
      const words = `${rows.length === 1 ? "an entry" : `${rows.length} entries`} in ${table.replaceAll("_", " ")}`;
      const added = await command(
        (by) => by.addRows(table, rows),
        words,
        " If you entered it again, it is there twice: look, and delete one.",
      );
      if (rows.length > 0) entered(words, (by) => by.takeBackRows(added));
    },
    growTable: async (table, rows) => {
      const grown = await command(
        (by) => by.growTable(table, rows, excelSupports),
        `${rows === 1 ? "an entry" : `${rows} entries`} taken into ${table.replaceAll("_", " ")}`,
      );
      entered(`${rows === 1 ? "an entry" : `${rows} entries`} taken into ${table.replaceAll("_", " ")}`, (by) => by.takeBackGrowth(grown));
    },
    changeCells: async (changes) => {
      const words =
        `${changes.length === 1 ? "a cell" : `${changes.length} cells`} in ` +
        `${[...new Set(changes.map(({ table }) => table.replaceAll("_", " ")))].join(" and ")}`;
      const changed = await command((by) => by.changeCells(changes), words);
      if (changes.length > 0) entered(words, (by) => by.takeBackCells(changed));
    },
    addColumn: (column) => command((by) => by.addColumn(column, excelSupports), `a column in ${column.table}`),
    select: (place) => run((context) => selectPlace(context, place)),
    selection: () => run(selectedRange),
    alike: (address) => run((context) => alikeRanges(context, address)),
    onChanged: (changed) => watchChanges(changed, { seconds, quiet, supports: excelSupports }),
  };
}
