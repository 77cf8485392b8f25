/** What several workbooks say of past seasons, in one table. */
import type { Cell, WorkbookContent } from "../cell";
import { pastSeasonColumns } from "../columns/pastSeasons";
import { findTables } from "../findTables";
import type { InputTable } from "../inputTable";
import type { SeasonReport } from "../seasonReport";
import { inputTables } from "../templates";
import { plain } from "../words";
import { keptSeason } from "./keptSeason";
import { NextTable } from "./nextRows";

type Cells = ReadonlyMap<string, Cell>;
const { columns } = pastSeasonColumns;
const template = inputTables.find(({ sheet }) => sheet === pastSeasonColumns.table)!;

/** What one workbook has to give: its own finals, and the rows of its table Past seasons. */
export type YearsOf = {
  readonly name: string;
  readonly kept: readonly Cells[];
  readonly entered: readonly Cells[];
  readonly open: readonly string[];
};

/** @returns `null` where nothing tells its season's year and it has no past seasons either */
export function yearsOf(name: string, content: WorkbookContent, report: SeasonReport): YearsOf | null {
  const kept = keptSeason(report);
  const raw = findTables(content).tables.get("Past seasons");
  const entered = raw === undefined ? [] : new NextTable(raw, template, { dateSystem: content.dateSystem, dayFirst: false }).rows;
  return kept === null && entered.length === 0 ? null : { name, kept: kept?.rows ?? [], entered, open: kept?.open ?? [] };
}

const keyOf = (row: Cells): string =>
  [columns.season, columns.field, columns.crop, columns.hybrid].map(({ heading }) => plain(String(row.get(heading) ?? ""))).join("\n");

/**
 * One table of all years, the newest first. A season's own workbook comes before what another one remembers of it; where two
 * remember the same, the later workbook by name counts, and rows that differ are told.
 *
 * @param say takes a sentence for each entry that two workbooks have differently
 */
export function yearsTogether(all: readonly YearsOf[], say: (words: string) => void): InputTable {
  const rows = new Map<string, { readonly row: Cells; readonly from: string }>();
  const add = (row: Cells, from: string) => {
    const key = keyOf(row);
    const known = rows.get(key);
    if (known === undefined) rows.set(key, { row, from });
    else if (!isSame(known.row, row))
      say(
        `${String(row.get(columns.season.heading))} ${String(row.get(columns.field.heading))}: ${from} has other figures than ${known.from}, which counts.`,
      );
  };
  for (const { name, kept } of [...all].reverse()) for (const row of kept) add(row, name);
  for (const { name, entered } of [...all].reverse()) for (const row of entered) add(row, name);
  const sorted = [...rows.values()]
    .map(({ row }) => row)
    .sort((a, b) => String(b.get(columns.season.heading)).localeCompare(String(a.get(columns.season.heading))));
  return { ...template, rows: sorted.map((row) => template.columns.map(({ heading }) => row.get(heading) ?? "")) };
}

const isSame = (one: Cells, other: Cells): boolean =>
  template.columns.every(({ heading }) => String(one.get(heading) ?? "").trim() === String(other.get(heading) ?? "").trim());
