import { areaName, type Block } from "../address";
import { totalsInTheWay } from "../below";
import { sameName } from "../sheetNames";
import { HostError } from "../workbookHost";
import type { Command, Found } from "./command";
import type { Supports } from "./supports";

/** A table as it was drawn over more rows. */
type Grown = { readonly table: string; readonly before: Block; readonly after: Block };

/**
 * Draws a table over rows below it (ExcelApi 1.13), in one round trip after two that read. No cell changes.
 *
 * @throws HostError before anything is written: `unsupported` before ExcelApi 1.13, `missing` for a table that is not there,
 * `protected`, `failed` where a totals row or another table is in the way
 */
export const growTable =
  (name: string, rows: number, supports: Supports): Command<Grown> =>
  async (context) => {
    const tables = context.workbook.tables.load("items/name");
    await context.sync();
    const table = tables.items.find((each) => sameName(each.name, name));
    if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    if (!supports("1.13"))
      throw new HostError(
        "unsupported",
        `This version of Excel cannot make a table longer for us. Drag the corner of ${name} down over the rows.`,
      );
    const sheet = table.worksheet.load("name,protection/protected");
    table.load("showTotals");
    const asked = tables.items.map((each) => ({
      each,
      on: each.worksheet.load("name"),
      range: each.getRange().load("rowIndex,columnIndex,rowCount,columnCount"),
    }));
    await context.sync();
    if (sheet.protection.protected)
      throw new HostError(
        "protected",
        `The sheet ${sheet.name} is protected, so ${name} cannot be made longer. Unprotect it, then try again.`,
      );
    if (table.showTotals) throw new HostError("failed", totalsInTheWay(table.name));
    const before = areaOf(asked.find(({ each }) => each === table)!.range);
    const after = { ...before, bottom: before.bottom + rows };
    const other = asked.find(({ each, on, range }) => each !== table && on.name === sheet.name && overlap(areaOf(range), after));
    if (other !== undefined)
      throw new HostError("failed", `The table ${other.each.name} is in the way of ${table.name}. Move it, then try again.`);
    return {
      value: { table: table.name, before, after },
      write: () => table.resize(areaName(after)),
      look: (looking) => lookForArea(looking, table.name, before, after),
    };
  };

/**
 * Draws the table over what it was over before.
 *
 * @throws HostError `moved` where it has other rows by now
 */
export const takeBackGrowth =
  ({ table: name, before, after }: Grown): Command<void> =>
  async (context) => {
    const table = context.workbook.tables.getItemOrNullObject(name).load("name");
    const range = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    if (table.isNullObject) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    if (areaName(areaOf(range)) !== areaName(after))
      throw new HostError("moved", `The table ${name} has other rows by now, so nothing was taken back.`);
    return { value: undefined, write: () => table.resize(areaName(before)), look: (looking) => lookForArea(looking, name, after, before) };
  };

async function lookForArea(context: Excel.RequestContext, name: string, before: Block, after: Block): Promise<Found> {
  const range = context.workbook.tables.getItemOrNullObject(name).getRange().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (range.isNullObject) return "unclear";
  const now = areaName(areaOf(range));
  return now === areaName(after) ? "there" : now === areaName(before) ? "not there" : "unclear";
}

const areaOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Block => ({
  top: rowIndex,
  left: columnIndex,
  bottom: rowIndex + rowCount - 1,
  right: columnIndex + columnCount - 1,
});

const overlap = (one: Block, two: Block): boolean =>
  one.left <= two.right && one.right >= two.left && one.top <= two.bottom && one.bottom >= two.top;
