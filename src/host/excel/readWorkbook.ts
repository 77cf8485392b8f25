import type { Cell, DateSystem, RawTable, WorkbookContent } from "../../workbook/cell";
import type { Named } from "../../workbook/columns/column";
import { matchColumns } from "../../workbook/columns/matches";
import { cellsBeside } from "../../workbook/matchConstants";
import { matchesTable, tablesToRead } from "../../workbook/tableNames";
import type { HostError } from "../workbookHost";
import { readPercents } from "./readPercents";
import { askNeighbour, readBelow } from "./readBelow";
import { readInPieces, type Sized } from "./readInPieces";
import { isOfOneRange, isTooBig, refusalOf } from "./refusal";
import { ask, rangeSource, tableSource, type Asked, type TableSource } from "./sources";

/**
 * A reader of one workbook, which reads all tables that may matter and matched ranges in two round trips: one to learn what there is, one
 * for all cells; where something stands below them, one more for that. Only where Excel refuses so much at once (5 MB on the web,
 * 5 million cells in a range) are the bodies
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
  const matchColumn = ({ heading }: Named) =>
    tables.getItemOrNullObject(matchesTable).columns.getItemOrNullObject(heading).getDataBodyRange().untrack().load("values");
  const [addresses, theirs] = [matchColumn(matchColumns.columns.range), matchColumn(matchColumns.columns.heading)];
  const season = tables.getItemOrNullObject("Season").getDataBodyRange();
  season.untrack().load("values");
  await context.sync();

  const matched = addresses.isNullObject
    ? []
    : addresses.values.map((row, index) => ({
        range: String(row[0] ?? ""),
        heading: theirs.isNullObject ? "" : String(theirs.values[index]?.[0] ?? ""),
      }));
  const ranges = [...new Set([...matched.map(({ range }) => range), ...cellsBeside(matched)])];
  // Where a range stands for the table Season, nobody knows yet which tables it names.
  const settings = season.isNullObject ? (ranges.length === 0 ? [] : null) : (season.values as Cell[][]);
  const wanted = new Set(
    tablesToRead(
      listed.items.map(({ name }) => name),
      settings,
      ranges,
    ),
  );
  const unread = listed.items.filter(({ name }) => !wanted.has(name));
  const { read, unreadable } = await readSources(
    context,
    [
      ...listed.items.filter(({ name }) => wanted.has(name)).map(tableSource),
      ...ranges.flatMap((address) => rangeSource(context, address) ?? []),
    ],
    unread,
  );
  const others = unread.map(({ name }) => name);
  return {
    tables: read.flatMap(({ source, raw }) => (source.isMatch ? [] : [raw])),
    ranges: new Map(read.flatMap(({ source, raw }) => (source.isMatch ? [[source.name, raw]] : []))),
    ...(unreadable.length > 0 && { unreadable }),
    ...(others.length > 0 && { others }),
  };
}

type ReadSource = { readonly source: TableSource; readonly raw: RawTable };

/** Reads what is there of the sources; one that has gone is left out, one that cannot be read keeps none of the others back. */
async function readSources(context: Excel.RequestContext, sources: readonly TableSource[], unread: readonly Excel.Table[]) {
  try {
    return { read: await readTogether(context, sources, unread), unreadable: [] };
  } catch (error) {
    if (!isOfOneRange(error)) throw error;
  }
  const read: ReadSource[] = [];
  const unreadable: { readonly name: string; readonly why: string }[] = [];
  for (const source of sources) {
    try {
      read.push(...(await readTogether(context, [source], null)));
    } catch (error) {
      if (!isOfOneRange(error)) throw error;
      if (!source.isMatch) unreadable.push({ name: source.name, why: (refusalOf(error) as HostError).message });
    }
  }
  return { read, unreadable };
}

/** @param unread tables of which only the place is asked; `null`: what stands below is not asked for, because others may be unreadable */
async function readTogether(
  context: Excel.RequestContext,
  sources: readonly TableSource[],
  unread: readonly Excel.Table[] | null,
): Promise<readonly ReadSource[]> {
  const { asked, cells, neighbours } =
    (await readAtOnce(context, sources, unread ?? [])) ?? (await readInParts(context, sources, unread ?? []));
  const raws = sources.map((source, index) => rawTable(source.name, asked[index] as Asked, cells[index] as Cell[][]));
  const below =
    unread === null
      ? []
      : await readBelow(
          context,
          asked,
          raws.map((raw) => (raw === null ? 0 : raw.body.row + raw.rows.length - 1)),
          neighbours,
        );
  const percents = await readPercents(context, sources, asked, raws);
  return sources.flatMap((source, index) => {
    const [raw, rows] = [raws[index] ?? null, below[index] ?? []];
    return raw === null ? [] : [{ source, raw: { ...raw, ...percents[index], ...(rows.length > 0 && { below: rows }) } }];
  });
}

/** Everything in one round trip; null where Excel finds that too much. */
async function readAtOnce(context: Excel.RequestContext, sources: readonly TableSource[], unread: readonly Excel.Table[]) {
  const asked = sources.map(ask);
  const neighbours = unread.map(askNeighbour);
  for (const { body } of asked) body.load("values,rowIndex,columnIndex");
  try {
    await context.sync();
  } catch (error) {
    if (isTooBig(error)) return null;
    throw error;
  }
  const cells = asked.map(({ body }) => (body.isNullObject ? [] : (body.values as Cell[][] | null)));
  // Beyond 5 million cells Excel may give null for the values instead of an error.
  return cells.includes(null) ? null : { asked, neighbours, cells: cells as Cell[][][] };
}

/** Everything but the cells first, then the cells in pieces. */
async function readInParts(context: Excel.RequestContext, sources: readonly TableSource[], unread: readonly Excel.Table[]) {
  const asked = sources.map(ask);
  const neighbours = unread.map(askNeighbour);
  for (const { body } of asked) body.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const sized = sources.map(({ body: range }, index): Sized => {
    const { body } = asked[index] as Asked;
    return body.isNullObject ? { rows: 0, columns: 0, range } : { rows: body.rowCount, columns: body.columnCount, range };
  });
  return { asked, neighbours, cells: await readInPieces(context, sized) };
}

function rawTable(name: string, { headers, body, sheet }: Asked, cells: readonly Cell[][]): RawTable | null {
  if (body.isNullObject) return null;
  const place = { sheet: sheet.name, row: body.rowIndex, column: body.columnIndex };
  if (headers !== null) return { name, headers: headers(), rows: cells, body: place };
  const [first = [], ...rows] = cells;
  return { name, headers: first.map(String), rows, body: { ...place, row: place.row + 1 } };
}
