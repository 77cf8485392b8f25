/** The embedded workbook as the grid wants it. */
import { typingStyle } from "../workbook/tables/settings";
import { plain } from "../workbook/words";
import { isDateFormat } from "numfmt";
import { newWorkbook, openWorkbook, type EmbeddedWorkbook, type CellEntry, type Options, type SheetChart } from "../host/embedded";
import { failed, ok, type Result } from "../result";
import type { Cell, RawTable } from "../workbook/cell";
import { decimalOf } from "../workbook/numbers";
import type { At } from "../host/address";
import { entered, entryText, type EntrySettings } from "./cellEntry";
import type { GridBook, DeskCell, DeskSheet } from "./gridBook";
import { laterInPage, type Later } from "./later";

/** A workbook over the bytes of a file, or in words why it cannot be opened. */
export function openBook(bytes: Uint8Array, options: BookOptions): Result<GridBook, string> {
  const opened = openWorkbook(bytes, options);
  return opened.ok ? ok(gridBook(opened.value, options)) : failed(...opened.problems.map(({ message }) => message));
}

/** An empty workbook with one sheet. */
export const newBook = (options: BookOptions): GridBook => gridBook(newWorkbook(options), options);

export type BookOptions = Options & {
  /** The workbook lies in no file although nothing has changed since it was opened: a draft. */
  readonly isDraft?: boolean;
  readonly later?: Later;
};

/** Nobody who saves waits longer for formulas, in milliseconds. */
const longestWait = 5_000;

let count = 0;

function gridBook(workbook: EmbeddedWorkbook, { isDraft = false, later = laterInPage }: BookOptions): GridBook {
  count += 1;
  let isInNoFile = isDraft;
  const sheets = oncePerVersion(workbook, () =>
    workbook
      .sheets()
      .filter(({ hidden }) => !hidden)
      .map(gridSheet),
  );
  const charts = oncePerVersion(workbook, () => new Map<string, readonly SheetChart[]>());
  const season = oncePerVersion(workbook, () => {
    const { decimalComma, seasonYear = null } = typingStyle(seasonTable(workbook));
    return { decimalComma, seasonYear, dateSystem: workbook.dateSystem };
  });
  const settingsAt = (sheet: string, at: At): EntrySettings => ({ numberFormat: workbook.numberFormatAt(sheet, at), ...season() });
  return {
    id: `workbook-${count}`,
    host: workbook,
    sheets,
    cell: (sheet, at) => gridCell(workbook, sheet, at, settingsAt),
    charts: (sheet) => {
      const known = charts().get(sheet) ?? workbook.charts(sheet);
      charts().set(sheet, known);
      return known;
    },
    choices: (sheet, at) => workbook.choices(sheet, at),
    enter: (sheet, entries) => {
      const rows = new Set(entries.map(({ at }) => at.row)).size;
      workbook.setCells(
        sheet,
        entries.map(({ at, text }): CellEntry => {
          const settings = settingsAt(sheet, at);
          const above = settings.numberFormat === "General" ? rowToBeLike(sheets(), sheet, at, rows) : null;
          return {
            ...at,
            ...entered(text, above === null ? settings : { ...settings, numberFormat: workbook.numberFormatAt(sheet, above) }),
          };
        }),
      );
    },
    addRow: (table) => workbook.addTableRow(table),
    undo: () => workbook.undo(),
    redo: () => workbook.redo(),
    insertRows: (table, above, rows) => workbook.insertTableRows(table, above, rows),
    deleteRows: (table, rows) => workbook.deleteTableRows(table, rows),
    sort: (table, column, downwards) => workbook.sortTable(table, column, downwards),
    widen: (sheet, column, wide) => workbook.widenColumn(sheet, column, characters(wide)),
    toUndo: () => workbook.toUndo,
    toRedo: () => workbook.toRedo,
    hasChanges: () => isInNoFile || workbook.unsaved,
    version: () => workbook.version,
    subscribe: (changed) => workbook.subscribe(changed),
    onShow: (show) => workbook.onShow(show),
    selected: (sheet, block) => workbook.pick(sheet, block),
    engineFault: () => workbook.engineFault?.message ?? null,
    save: async () => {
      let callOff = () => {};
      await Promise.race([
        workbook.settled(),
        new Promise<void>((resolve) => {
          callOff = later(longestWait, resolve);
        }),
      ]);
      callOff();
      const { bytes, keep } = workbook.toSave();
      return {
        bytes,
        keep: () => {
          isInNoFile = false;
          keep();
        },
      };
    },
    draft: () => workbook.toDraft(),
    notSaved: () => {
      isInNoFile = true;
    },
  };
}

/** The cell whose look a cell right under a table takes over, when that many rows are entered there: the one in the last row. */
function rowToBeLike(sheets: readonly DeskSheet[], name: string, { row, column }: At, rows: number): At | null {
  const table = sheets
    .find((sheet) => sheet.name === name)
    ?.tables.find(({ block }) => row > block.bottom && row <= block.bottom + rows && column >= block.left && column <= block.right);
  return table === undefined ? null : { row: table.block.bottom, column };
}

/** Works something out again only after a change of the workbook. */
function oncePerVersion<Value>(workbook: EmbeddedWorkbook, work: () => Value): () => Value {
  let known: { readonly version: number; readonly value: Value } | null = null;
  return () => {
    if (known?.version !== workbook.version) known = { version: workbook.version, value: work() };
    return known.value;
  };
}

/** A character of the usual font is about seven pixels wide, and a cell has five of margin (ECMA-376 part 1, 18.3.1.13). */
const pixels = (characters: number): number => Math.round(Math.min(Math.max(characters, 2), 80) * 7 + 5);
const characters = (wide: number): number => Math.max(wide - 5, 14) / 7;
const usualWidth = pixels(10.7);

function gridSheet({
  name,
  isResult,
  used,
  columnsBesideLists,
  tables,
  widths,
  merges,
}: ReturnType<EmbeddedWorkbook["sheets"]>[number]): DeskSheet {
  return {
    name,
    isResult,
    merges,
    columnsBesideLists,
    used: { rows: used === null ? 0 : used.bottom + 1, columns: used === null ? 0 : used.right + 1 },
    tables: tables.map(({ name: table, area, body }) => ({
      name: table,
      headingRow: body.top > area.top ? area.top : null,
      block: { ...area, bottom: body.bottom },
    })),
    widthOf: (column) => {
      const width = widths.get(column);
      return width === undefined ? usualWidth : pixels(width);
    },
  };
}

function gridCell(workbook: EmbeddedWorkbook, sheet: string, at: At, settingsAt: (sheet: string, at: At) => EntrySettings): DeskCell {
  const { value, isError, formula, text, stale, bold, italic, align, shaded, numberFormat } = workbook.cellAt(sheet, at);
  return {
    text,
    isFormula: formula !== null,
    isStale: stale,
    kind: isError ? "error" : kindOf(value),
    look: { bold, italic, align, shaded },
    // Worked out only for the cells that are selected.
    get amount() {
      return typeof value === "number" && !isDateFormat(numberFormat) ? decimalOf(value) : null;
    },
    // Worked out only for the few cells that are edited or copied.
    get entry() {
      return entryText(value, formula, settingsAt(sheet, at));
    },
  };
}

function kindOf(value: Cell): DeskCell["kind"] {
  if (typeof value === "number") return "number";
  if (typeof value === "boolean") return "yes-no";
  return value === "" ? "blank" : "text";
}

/** The table Season as it stands, for how entries are typed; `null` where there is none. */
function seasonTable(workbook: EmbeddedWorkbook): RawTable | null {
  for (const { name, tables } of workbook.sheets()) {
    const season = tables.find((table) => plain(table.name) === "season");
    if (season === undefined) continue;
    const { top, bottom, left, right } = season.body;
    const row = (at: number) =>
      Array.from({ length: right - left + 1 }, (_, index) => workbook.cellAt(name, { row: at, column: left + index }).value);
    return {
      name: season.name,
      headers: row(top - 1).map(String),
      rows: Array.from({ length: bottom - top + 1 }, (_, index) => row(top + index)),
      body: { sheet: name, row: top, column: left },
    };
  }
  return null;
}
