/** Takes back tables that were made, with the rows that were added to others beside them. */
import type { Cell } from "../../workbook/cell";
import type { InputTable } from "../../workbook/inputTable";
import { sameCell } from "../rowSays";
import { HostError } from "../workbookHost";
import type { AddedRows } from "./addRows";
import { isReady, type Command, type Found, type Ready } from "./command";
import { together, type EnteredRows } from "./enterRows";
import { cellsMade } from "./placesForTables";
import { takeBackRows } from "./takeBack";

/**
 * Deletes the sheets of tables that were made, and takes rows out of those that were there. What is gone is taken back already.
 *
 * @throws HostError `moved` where a table says something else by now, or something else stands on its sheet; nothing is taken back then
 */
export const takeBackEntered =
  ({ added, made }: EnteredRows): Command<void> =>
  async (context) => {
    const protection = context.workbook.protection.load("protected");
    const asked = made.map((model) => {
      const table = context.workbook.tables.getItemOrNullObject(model.name).load("name");
      const sheet = table.worksheet.load("name");
      return {
        model,
        table,
        sheet,
        tables: sheet.tables.load("items/name"),
        charts: sheet.charts.load("items/name"),
        used: sheet.getUsedRangeOrNullObject().load("formulas"),
      };
    });
    const bodies = added.map((rows) => ({
      rows,
      body: context.workbook.tables.getItemOrNullObject(rows.table).getDataBodyRange().load("rowCount"),
    }));
    await context.sync();
    const there = asked.filter(({ table }) => !table.isNullObject);
    const other = there.find(
      ({ model, used, tables, charts }) =>
        tables.items.length > 1 || charts.items.length > 0 || !isAsMade(used.formulas as Cell[][], model),
    );
    if (other !== undefined)
      throw new HostError("moved", `The sheet ${other.sheet.name} says something else by now, so nothing was taken back.`);
    if (protection.protected && there.length > 0)
      throw new HostError(
        "protected",
        "The structure of this workbook is protected, so no sheet can be taken out again. Unprotect it, then try again.",
      );
    const parts: (Ready<unknown> | { readonly done: unknown })[] = [];
    for (const { rows, body } of bodies) if (!isGone(rows, body)) parts.push(await takeBackRows(rows)(context));
    const ready = parts.filter(isReady);
    return {
      value: undefined,
      write: () => {
        for (const { sheet } of there) sheet.delete();
        for (const part of ready) part.write();
      },
      look: async (looking) => {
        const tables = there.map(({ model: { name } }) => looking.workbook.tables.getItemOrNullObject(name).load("name"));
        await looking.sync();
        const found: Found[] = tables.map((table) => (table.isNullObject ? "there" : "not there"));
        for (const part of ready) found.push(await part.look(looking));
        return together(found);
      },
    };
  };

const isGone = ({ first }: AddedRows, body: Excel.Range): boolean => !body.isNullObject && body.rowCount <= Math.max(first, 1) && first > 0;

/** Whether a sheet holds the table as it was made, and beside it nothing but its lists of choices. */
function isAsMade(used: readonly (readonly Cell[])[], model: InputTable): boolean {
  const made = cellsMade(model);
  const ours = new Set(model.columns.flatMap(({ heading, choices = [] }) => [`Choices for ${heading}`, ...choices]));
  return (
    made.every((row, down) => row.every((cell, across) => sameCell(used[down]?.[across] ?? "", cell))) &&
    used.every((row, down) =>
      row.every(
        (cell, across) => cell === "" || made[down]?.[across] !== undefined || (across >= model.columns.length && ours.has(String(cell))),
      ),
    )
  );
}
