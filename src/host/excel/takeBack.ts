/** Takes an entry of the pane back, where Excel's own Undo may not know it. */
import type { Cell } from "../../workbook/cell";
import { HostError } from "../workbookHost";
import { sameCell } from "../rowSays";
import { enteredIn, placeOfRows, type AddedRows } from "./addRows";
import type { ChangedCells } from "./changeCells";
import type { Command } from "./command";
import { asTyped } from "./typedCells";

/**
 * Takes rows out again that were added; those that are left where an earlier try took out a part of them.
 *
 * @throws HostError `moved` where no rows of the table say what was entered
 */
export const takeBackRows =
  (added: AddedRows): Command<void> =>
  async (context) => {
    const { table: name } = added;
    const table = context.workbook.tables.getItemOrNullObject(name).load("name");
    const body = table.getDataBodyRange().load("values,formulas");
    const sheet = table.worksheet.load("name,protection/protected");
    await context.sync();
    if (table.isNullObject) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    const found = rowsLeft(enteredIn(body), added);
    if (found === null) throw new HostError("moved", `No rows of ${name} say any more what was entered, so nothing was taken back.`);
    if (sheet.protection.protected)
      throw new HostError("protected", `The sheet ${sheet.name} is protected, so nothing can be taken back. Unprotect it, then try again.`);
    const { first, count } = found;
    return {
      value: undefined,
      // From below, so that those above keep their places.
      write: () => {
        for (let row = first + count - 1; row >= first; row -= 1) table.rows.getItemAt(row).delete();
      },
      look: async (looking) => {
        const now = looking.workbook.tables.getItem(name).getDataBodyRange().load("values,formulas");
        await looking.sync();
        const gone = body.values.length - now.values.length;
        // Of the only row of a table Excel keeps a blank one.
        if (gone === 0) return rowsLeft(enteredIn(now), added) === null ? "there" : "not there";
        return gone === count || (gone === count - 1 && now.values.length === 1) ? "there" : "partly";
      },
    };
  };

/** Where the rows stand: all of them as far down as may be, or the first of them at their own place. */
function rowsLeft(
  values: ReturnType<typeof enteredIn>,
  { cells, first }: AddedRows,
): { readonly first: number; readonly count: number } | null {
  const fromBelow = placeOfRows([...values].reverse(), [...cells].reverse());
  if (fromBelow !== null) return { first: values.length - fromBelow - cells.length, count: cells.length };
  for (let count = cells.length - 1; count > 0; count -= 1) {
    if (values.length === first + count && placeOfRows(values.slice(first), cells.slice(0, count)) === 0) return { first, count };
  }
  return null;
}

/**
 * Gives cells that were changed what they held before.
 *
 * @throws HostError `moved` where one of them says something else by now
 */
export const takeBackCells =
  (changed: ChangedCells): Command<void> =>
  async (context) => {
    const cells = changed.map((each) => ({
      each,
      cell: context.workbook.tables
        .getItem(each.table)
        .columns.getItem(each.column)
        .getDataBodyRange()
        .getCell(each.row - 1, 0)
        .load("values"),
    }));
    await context.sync();
    // One that has its old value already is what an earlier try gave back.
    const other = cells.find(
      ({ each, cell }) => ![each.value, each.before].some((value) => sameCell((cell.values[0]?.[0] ?? "") as Cell, value)),
    );
    if (other !== undefined)
      throw new HostError(
        "moved",
        `${other.each.table}, entry ${other.each.row}, ${other.each.column} says something else by now, so nothing was taken back.`,
      );
    return {
      value: undefined,
      write: () => {
        for (const { each, cell } of cells) cell.values = [[asTyped(each.before)]];
      },
      look: async (looking) => {
        const now = changed.map((each) => ({
          each,
          cell: looking.workbook.tables
            .getItem(each.table)
            .columns.getItem(each.column)
            .getDataBodyRange()
            .getCell(each.row - 1, 0)
            .load("values"),
        }));
        await looking.sync();
        const back = now.filter(({ each, cell }) => sameCell((cell.values[0]?.[0] ?? "") as Cell, each.before)).length;
        return back === now.length ? "there" : back === 0 ? "not there" : "partly";
      },
    };
  };
