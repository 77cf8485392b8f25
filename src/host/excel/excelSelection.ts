import type { Cell, SheetPlace } from "../../workbook/cell";
import { areaName, lastColumn, lastRow, quotedSheet, rangeOnSheet, splitSheet, type Block, type At } from "../address";
import { blockOf } from "../blockOf";
import { HostError } from "../workbookHost";

/** Brings a sheet to the front and selects a cell on it. */
export async function selectPlace(context: Excel.RequestContext, { sheet: name, row, column }: SheetPlace): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name).load("visibility");
  await context.sync();
  if (sheet.isNullObject) throw new HostError("missing", `There is no sheet named ${name} in this workbook any more.`);
  if (sheet.visibility !== "Visible") throw new HostError("missing", `The sheet ${name} is hidden. Unhide it to see the cell.`);
  sheet.activate();
  sheet.getRangeByIndexes(row, column, 1, 1).untrack().select();
  await context.sync();
}

/** So many rows of a block are looked at for its headings. */
const rowsOfTitles = 40;

/**
 * What the user has selected: its address as Excel writes it, and the row of headings in the part that is in use; of one cell,
 * the block around it.
 */
export async function selectedRange(context: Excel.RequestContext): Promise<{ address: string; headings: string[] }> {
  const range = context.workbook.getSelectedRange().untrack().load("address,rowIndex,columnIndex,rowCount,columnCount");
  const used = range.getUsedRangeOrNullObject(true).untrack().load("rowIndex,columnIndex,rowCount,columnCount");
  const region = range.getSurroundingRegion().untrack().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const isOneCell = range.rowCount === 1 && range.columnCount === 1;
  const name = splitSheet(range.address).sheet ?? "";
  const sheet = context.workbook.worksheets.getItem(name);
  if (!isOneCell && used.isNullObject) return { address: range.address, headings: [] };
  const around = areaOfRange(isOneCell ? region : used);
  const looked = isOneCell ? await besideToo(context, sheet, around) : around;
  const sample = sheet
    .getRangeByIndexes(looked.top, looked.left, Math.min(looked.bottom - looked.top + 1, rowsOfTitles), looked.right - looked.left + 1)
    .untrack()
    .load("values");
  await context.sync();
  const valueAt = ({ row, column }: At): Cell => (sample.values as Cell[][])[row - looked.top]?.[column - looked.left] ?? "";
  const picked = areaOfRange(range);
  // Whole columns and rows stay as they are: they grow with what is typed into them.
  const block =
    picked.bottom === lastRow || picked.right === lastColumn ? picked : blockOf(picked, looked, valueAt, isOneCell ? around : null);
  const [top, left, right] = [Math.max(block.top, looked.top), Math.max(block.left, looked.left), Math.min(block.right, looked.right)];
  const headings = Array.from({ length: Math.max(0, right - left + 1) }, (_, index) => String(valueAt({ row: top, column: left + index })));
  const isAsPicked = !isOneCell && block.top === picked.top;
  return { address: isAsPicked ? range.address : `${quotedSheet(name)}!${areaName(block)}`, headings };
}

/** The headings of one cell's block may go on after a blank column, so that the columns beside it are looked at too. */
async function besideToo(context: Excel.RequestContext, sheet: Excel.Worksheet, area: Block): Promise<Block> {
  const whole = sheet.getUsedRangeOrNullObject(true).untrack().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (whole.isNullObject) return area;
  const { left, right } = areaOfRange(whole);
  return { ...area, left: Math.min(area.left, left), right: Math.max(area.right, right) };
}

type Placed = Pick<Excel.Range, "rowIndex" | "columnIndex" | "rowCount" | "columnCount">;
const areaOfRange = ({ rowIndex, columnIndex, rowCount, columnCount }: Placed): Block => ({
  top: rowIndex,
  left: columnIndex,
  bottom: rowIndex + rowCount - 1,
  right: columnIndex + columnCount - 1,
});

/** The same cells of other sheets, where their first row says the same. */
export async function alikeRanges(context: Excel.RequestContext, address: string): Promise<readonly string[]> {
  const found = rangeOnSheet(address);
  const sheets = context.workbook.worksheets.load("items/name,items/visibility");
  await context.sync();
  if (found === null) return [];
  const asked = sheets.items.map((sheet) => ({
    sheet,
    first: sheet
      .getRange(found.range)
      .untrack()
      .getUsedRangeOrNullObject(true)
      .untrack()
      .getRow(0)
      .untrack()
      .load("values,rowIndex,columnIndex"),
  }));
  await context.sync();
  const says = ({ first }: (typeof asked)[number]): string | null =>
    first.isNullObject
      ? null
      : JSON.stringify([first.rowIndex, first.columnIndex, ...(first.values[0] ?? []).map((cell) => String(cell).trim())]);
  const own = asked.find(({ sheet }) => sheet.name.toLowerCase() === found.sheet.toLowerCase());
  const wanted = own === undefined ? null : says(own);
  return asked
    .filter((each) => each !== own && wanted !== null && each.sheet.visibility === "Visible" && says(each) === wanted)
    .map(({ sheet }) => `${quotedSheet(sheet.name)}!${found.range}`);
}
