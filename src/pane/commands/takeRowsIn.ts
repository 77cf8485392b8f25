import { areaName, parseArea, quotedSheet, splitSheet } from "../../host/address";
import type { CellChange, WorkbookHost } from "../../host/workbookHost";
import type { RawTable, WorkbookContent } from "../../workbook/cell";
import { matchColumns } from "../../workbook/columns/matches";
import { matchedRanges } from "../../workbook/matchedRanges";
import { rowsBelow } from "../../workbook/rowsBelow";
import { matchesTable } from "../../workbook/tableNames";
import { plainHeading } from "../../workbook/words";
import { outcome, type Failure, type Outcome } from "../failure";
import { sameName, tableNamed } from "./tableNamed";

/**
 * Takes the entries below a table of ours into it, or into the range that stands for it, as one step: the table is drawn over
 * them, or the range in Matches reaches down to them. Answers how many. The workbook is read anew, since rows may have moved.
 */
export async function takeRowsIn(host: WorkbookHost, name: string): Promise<Outcome<number>> {
  const read = await outcome(() => host.read());
  if (!read.ok) return read;
  const content = read.value;
  const table = tableNamed(content, name);
  if (table !== null) {
    const { entries } = rowsBelow(table);
    const last = entries.at(-1);
    return last === undefined
      ? { ok: false, failure: nothingThere(name) }
      : outcome(async () => {
          await host.growTable(table.name, last.by);
          return entries.length;
        });
  }
  const parts =
    matchedRanges(content)
      .ranges.find((each) => sameName(each.table, name))
      ?.parts.filter(({ missed }) => missed !== null) ?? [];
  if (parts.length === 0) return { ok: false, failure: nothingThere(name) };
  return outcome(async () => {
    const changes: CellChange[] = [];
    for (const { range, raw, missed } of parts) {
      const own = tableNamed(content, range);
      if (own !== null) await host.growTable(own.name, missed!.bottom - (own.body.row + own.rows.length - 1));
      else changes.push(...longerMatch(content, range, raw, missed!.bottom));
    }
    if (changes.length > 0) await host.changeCells(changes);
    return parts.reduce((entries, { missed }) => entries + missed!.entries, 0);
  });
}

const nothingThere = (name: string): Failure => ({
  what: `No entries stand below ${name} any more.`,
  remedy: "Read the workbook again.",
  again: true,
});

/** The cells of Matches that name a range, with the range down to a row of its sheet. */
function longerMatch(content: WorkbookContent, range: string, raw: RawTable, bottom: number): readonly CellChange[] {
  const matches = tableNamed(content, matchesTable)!;
  const column = matches.headers.findIndex((each) => plainHeading(each) === plainHeading(matchColumns.columns.range.heading));
  const value = longer(range, raw, bottom);
  return matches.rows.flatMap((cells, index): readonly CellChange[] =>
    String(cells[column] ?? "").trim() !== range
      ? []
      : [
          {
            table: matches.name,
            row: index + 1,
            column: matches.headers[column]!,
            value,
            says: new Map(matches.headers.map((each, at) => [each, cells[at] ?? ""])),
          },
        ],
  );
}

/** The address of a range that goes on to a row of its sheet; of a name of the workbook the address of its cells. */
function longer(range: string, { body, headers }: RawTable, bottom: number): string {
  const { sheet, area } = splitSheet(range);
  const known = sheet === null ? null : parseArea(area);
  const cells = known ?? { top: body.row - 1, left: body.column, right: body.column + headers.length - 1 };
  return `${quotedSheet(sheet ?? body.sheet)}!${areaName({ ...cells, bottom })}`;
}
