import type { Cell, DateSystem, RawTable, WorkbookContent } from "../../workbook/cell";
import { splitAddress } from "./address";
import { readInPieces } from "./readInPieces";
import { isTooBig } from "./refusal";

/**
 * A reader of one workbook, which reads all tables and matched ranges in two round trips: one to learn what there is, one
 * for all cells. Only where Excel refuses so much at once (5 MB on the web, 5 million cells in a range) are the bodies
 * read again in pieces. The date system is asked once for all, because the only way to ask, a worksheet function, counts
 * as a change with Excel and might cost the user the undo steps.
 */
export function workbookReader(): (context: Excel.RequestContext) => Promise<WorkbookContent> {
  let dateSystem: DateSystem | null = null;
  return async (context) => {
    const known = dateSystem === null ? askDateSystem(context) : () => dateSystem as DateSystem;
    const content = await readAll(context);
    dateSystem = known();
    return { dateSystem, ...content };
  };
}

/** The first day of 1904 is day 0 in the 1904 date system and day 1462 in the other; no property tells which is in use. */
function askDateSystem(context: Excel.RequestContext): () => DateSystem {
  const firstOf1904 = context.workbook.functions.date(1904, 1, 1).load("value");
  return () => (firstOf1904.value === 0 ? "1904" : "1900");
}

async function readAll(context: Excel.RequestContext): Promise<Omit<WorkbookContent, "dateSystem">> {
  const { tables } = context.workbook;
  const listed = tables.load("items/name,items/showHeaders");
  const addresses = tables.getItemOrNullObject("Matches").columns.getItemOrNullObject("Range").getDataBodyRange();
  addresses.untrack().load("values");
  await context.sync();

  const wantedRanges = addresses.isNullObject ? [] : [...new Set(addresses.values.map((row) => String(row[0] ?? "")))];
  const asked = [
    ...listed.items.map(askTable),
    ...wantedRanges.flatMap((address) => askRange(context, address) ?? []),
  ];
  const cells = await readCells(context, asked.map(({ body }) => body));
  const read = asked.map((each, index) => ({ each, raw: rawTable(each, cells[index] ?? []) }));

  return {
    tables: read.flatMap(({ each, raw }) => (each.address === undefined && raw ? [raw] : [])),
    ranges: new Map(read.flatMap(({ each, raw }) => (each.address !== undefined && raw ? [[each.address, raw]] : []))),
  };
}

/** What was asked of Excel for one table or one matched range (which has an `address`). */
type Asked = {
  readonly name: string;
  readonly address?: string;
  /** The headings of a table; null where they are the first row of the body. */
  readonly headers: (() => string[]) | null;
  readonly body: Excel.Range;
  readonly sheet: Excel.Worksheet;
};

function askTable(table: Excel.Table): Asked {
  const body = table.getDataBodyRange();
  return { name: table.name, headers: askHeadings(table), body, sheet: table.worksheet.load("name") };
}

/** Headings from their row in one piece; a table whose heading row is switched off still has names for its columns. */
function askHeadings(table: Excel.Table): () => string[] {
  if (table.showHeaders) {
    const row = table.getHeaderRowRange().untrack().load("values");
    return () => (row.values[0] ?? []).map(String);
  }
  const columns = table.columns.load("items/name");
  return () => columns.items.map(({ name }) => name);
}

/** A range by its address, as far as it is used, so that whole columns can be matched; null for what is no address. */
function askRange(context: Excel.RequestContext, address: string): Asked | null {
  const found = splitAddress(address);
  if (found === null) return null;
  const sheet = context.workbook.worksheets.getItemOrNullObject(found.sheet).load("name");
  const body = sheet.getRange(found.range).untrack().getUsedRangeOrNullObject(true);
  return { name: address, address, headers: null, body, sheet };
}

/** The cells of each range, in the order asked; an empty list where there is no such range. */
async function readCells(context: Excel.RequestContext, ranges: readonly Excel.Range[]): Promise<Cell[][][]> {
  for (const range of ranges) range.untrack().load("values,rowIndex,columnIndex");
  try {
    await context.sync();
  } catch (error) {
    if (isTooBig(error)) return readInPieces(context, ranges);
    throw error;
  }
  // Beyond 5 million cells Excel may give null for the values instead of an error.
  const missing = ranges.some((range) => !range.isNullObject && (range.values as Cell[][] | null) === null);
  return missing ? readInPieces(context, ranges) : ranges.map((range) => (range.isNullObject ? [] : range.values));
}

function rawTable({ name, headers, body, sheet }: Asked, cells: readonly Cell[][]): RawTable | null {
  if (body.isNullObject) return null;
  const place = { sheet: sheet.name, row: body.rowIndex, column: body.columnIndex };
  if (headers !== null) return { name, headers: headers(), rows: cells, body: place };
  const [first = [], ...rows] = cells;
  return { name, headers: first.map(String), rows, body: { ...place, row: place.row + 1 } };
}
