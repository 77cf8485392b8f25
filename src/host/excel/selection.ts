import type { SheetPlace } from "../../workbook/cell";
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

/** What the user has selected: its address as Excel writes it, and the first row of the part that is in use. */
export async function selectedRange(context: Excel.RequestContext): Promise<{ address: string; headings: string[] }> {
  const range = context.workbook.getSelectedRange().untrack().load("address");
  const used = range.getUsedRangeOrNullObject(true).untrack();
  const first = used.getRow(0).untrack().load("values");
  await context.sync();
  return { address: range.address, headings: first.isNullObject ? [] : (first.values[0] ?? []).map(String) };
}
