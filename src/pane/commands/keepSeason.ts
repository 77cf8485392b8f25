import { Decimal } from "../../core/numbers/decimal";
import type { CellChange, WorkbookHost } from "../../host/workbookHost";
import type { Cell, RawTable } from "../../workbook/cell";
import { pastSeasonColumns } from "../../workbook/columns/pastSeasons";
import { daysBetweenSystems, momentOfSerial } from "../../workbook/daySerial";
import type { KeptSeason } from "../../workbook/next/keptSeason";
import { headingThere } from "../../workbook/oldHeadings";
import { plain } from "../../workbook/words";
import { outcome, type Outcome } from "../failure";
import type { Entry, EntryRow } from "./entryRow";
import { rowsForTable } from "./newRows";
import { tableNamed } from "./tableNamed";

const { table: ours, columns } = pastSeasonColumns;
type Kept = KeptSeason["rows"][number];
const keyHeadings = [columns.season, columns.field, columns.crop].map(({ heading }) => heading);

/** What was written, and the headings of what the table has no column for. */
export type SeasonKept = { readonly added: number; readonly replaced: number; readonly lost: readonly string[] };

/**
 * Adds a season's rows to Past seasons; the rows of the same season, field and crop that are there get the figures of today. The
 * table is read anew, because it may have been sorted since.
 */
export async function keepSeason(host: WorkbookHost, { rows }: Pick<KeptSeason, "rows">): Promise<Outcome<SeasonKept>> {
  const read = await outcome(() => host.read());
  if (!read.ok) return read;
  const table = tableNamed(read.value, ours);
  const known = table === null ? new Map<string, number>() : rowsByKey(table);
  const old = rows.filter((row) => known.has(keyOf(row)));
  const added = rows.filter((row) => !known.has(keyOf(row)));
  const ready = added.length === 0 ? null : rowsForTable(read.value, ours, added.map(entryOf));
  if (ready !== null && !ready.ok) return ready;
  return outcome(async () => {
    const changed =
      table === null ? [] : old.flatMap((row) => changes(table, known.get(keyOf(row))!, row, read.value.dateSystem === "1904"));
    if (changed.length > 0) await host.changeCells(changed);
    if (ready !== null) {
      const { isThere, lost: _lost, ...entry } = ready.value;
      await (isThere ? host.addRows(entry.table.name, entry.rows) : host.enterRows([entry]));
    }
    const missing =
      table === null
        ? []
        : [...new Set(old.flatMap((row) => [...row.keys()].filter((heading) => headingThere(ours, table.headers, heading) === undefined)))];
    return { added: added.length, replaced: old.length, lost: ready?.value.lost ?? missing };
  });
}

const keyOf = (row: Kept): string => keyHeadings.map((heading) => plain(String(row.get(heading) ?? ""))).join("\n");

/** The row of each season, field and crop, from 1. */
function rowsByKey({ headers, rows }: RawTable): ReadonlyMap<string, number> {
  const at = keyHeadings.map((heading) => headers.indexOf(headingThere(ours, headers, heading) ?? ""));
  return new Map(rows.map((cells, index) => [at.map((column) => plain(String(cells[column] ?? "").trim())).join("\n"), index + 1]));
}

function changes(table: RawTable, row: number, kept: Kept, is1904: boolean): readonly CellChange[] {
  const cells = table.rows[row - 1]!;
  const says = new Map(table.headers.map((heading, index) => [heading, cells[index] ?? ""]));
  return [...kept].flatMap(([heading, cell]): readonly CellChange[] => {
    const there = headingThere(ours, table.headers, heading);
    const value = is1904 && isDay(heading) && typeof cell === "number" ? cell - daysBetweenSystems : cell;
    return there === undefined || says.get(there) === value ? [] : [{ table: table.name, row, column: there, value, says }];
  });
}

const isDay = (heading: string): boolean => heading === columns.planted.heading;

/** A new row as the pane's forms hand theirs over, which knows how each workbook counts its days. */
const entryOf = (row: Kept): EntryRow =>
  new Map([...row].filter(([, cell]) => cell !== "").map(([heading, cell]) => [heading, entryIn(heading, cell)] as const));

const entryIn = (heading: string, cell: Cell): Entry =>
  typeof cell !== "number"
    ? String(cell)
    : isDay(heading)
      ? { day: momentOfSerial(cell, "1900").toISOString().slice(0, 10) }
      : new Decimal(String(cell));
