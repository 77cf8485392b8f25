import type { Cell } from "../../workbook/cell";
import { cellName } from "../address";
import { sameName } from "../sheetNames";
import { HostError, type NewColumn } from "../workbookHost";
import { sameCell } from "../rowSays";
import type { Command } from "./command";
import type { Supports } from "./supports";
import { asTyped } from "./typedCells";

/**
 * Adds a column at the right end of a table, in one round trip after three that read. The heading is written first and the table
 * is then drawn over it (ExcelApi 1.13): what Excel inserts would push aside what stands further right. A column that was begun
 * and not finished, whose cells are blank or say the same, is finished.
 *
 * @throws HostError before anything is written: `unsupported` before ExcelApi 1.13, `missing` for a table or row that is not
 * there, `protected`, `failed` where something stands in the way
 */
export const addColumn =
  (column: NewColumn, supports: Supports): Command<void> =>
  async (context) => {
    const { table: name, heading, numberFormat = "General", cells } = column;
    const tables = context.workbook.tables.load("items/name,items/showHeaders");
    await context.sync();
    const table = tables.items.find((each) => sameName(each.name, name));
    if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    if (!supports("1.13"))
      throw new HostError(
        "unsupported",
        `This version of Excel cannot widen a table for us. Type ${heading} right beside the last heading of ${name}.`,
      );
    if (!table.showHeaders) throw new HostError("failed", `The table ${name} shows no headings. Turn its header row on first.`);
    const columns = table.columns.load("items/name");
    const area = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
    const body = table.getDataBodyRange().load("rowCount");
    const sheet = table.worksheet.load("name,protection/protected");
    await context.sync();
    for (const row of cells.keys())
      if (row < 1 || row > body.rowCount) throw new HostError("missing", `The table ${name} has no entry ${row}.`);
    if (sheet.protection.protected)
      throw new HostError(
        "protected",
        `The sheet ${sheet.name} is protected, so no column can be added to ${name}. Unprotect it, then try again.`,
      );
    const { rowIndex: top, columnIndex: left, rowCount, columnCount } = area;
    const begun = columns.items.findIndex((each) => sameName(each.name, heading));
    const at = left + (begun < 0 ? columnCount : begun);
    const there = sheet.getRangeByIndexes(top, at, rowCount, 1).load("formulas");
    await context.sync();
    const found = (there.formulas as Cell[][]).map(([cell]) => cell ?? "");
    const other = firstOther(found, column);
    if (begun >= 0 && other !== null) throw new HostError("failed", `The table ${name} has a column ${heading} already.`);
    if (other !== null)
      throw new HostError(
        "failed",
        `Something stands right of the table ${name} (${cellName({ row: top + other, column: at })}). Move it, so that the table ` +
          "can have another column.",
      );
    const values = Array.from({ length: body.rowCount }, (_, index) => [asTyped(cells.get(index + 1) ?? "")]);
    return {
      value: undefined,
      write: () => {
        const rows = sheet.getRangeByIndexes(top + 1, at, body.rowCount, 1);
        if (begun < 0) sheet.getRangeByIndexes(top, at, 1, 1).values = [[asTyped(heading)]];
        rows.numberFormat = values.map(() => [numberFormat]);
        if (begun < 0) table.resize(`${cellName({ row: top, column: left })}:${cellName({ row: top + rowCount - 1, column: at })}`);
        if (cells.size > 0) rows.values = values;
      },
      look: async (looking) => {
        const headed = looking.workbook.worksheets.getItem(sheet.name).getRangeByIndexes(top, at, 1, 1).load("values");
        const rows = looking.workbook.tables.getItem(table.name).columns.getItemOrNullObject(heading).getDataBodyRange().load("values");
        await looking.sync();
        if (rows.isNullObject) return headed.values[0]?.[0] === "" ? "not there" : "partly";
        return [...cells].every(([row, cell]) => sameCell((rows.values[row - 1]?.[0] ?? "") as Cell, cell)) ? "there" : "partly";
      },
    };
  };

/** The first of the cells from the heading down that is neither blank nor what it is to be; `null` where there is none. */
function firstOther(found: readonly Cell[], { heading, cells }: NewColumn): number | null {
  const wanted = (index: number) => (index === 0 ? heading : (cells.get(index) ?? ""));
  const other = found.findIndex(
    (cell, index) => cell !== "" && !(index === 0 ? sameName(String(cell), heading) : sameCell(cell, wanted(index))),
  );
  return other < 0 ? null : other;
}
