/** Where new input tables go: on new sheets, or on one that an earlier try left unfinished. */
import type { Cell } from "../../workbook/cell";
import { rowsMade, type InputTable } from "../../workbook/inputTable";
import { sheetNameChoices } from "../sheetNames";

/** Name scoped to a sheet (hidden, worth 1) that marks a sheet whose table is not complete yet. */
export const unfinishedMark = "Pennyacre_unfinished_sheet";

/** A sheet that is there for the table already, with what an earlier try left on it. */
type BegunSheet = { readonly sheet: Excel.Worksheet; readonly isMarked: boolean; readonly table: Excel.Table | null };
/** A table to be made or finished, and the name of its sheet; `old` is null where the sheet is to be made. */
export type TablePlace = { readonly model: InputTable; readonly name: string; readonly old: BegunSheet | null };

type LookedAt = {
  readonly sheet: Excel.Worksheet;
  readonly isMarked: boolean;
  readonly isEmpty: boolean;
  readonly tables: readonly Excel.Table[];
  readonly cells: readonly (readonly Cell[])[];
};

/** The tables that are missing or unfinished, each with its place. */
export async function placesForTables(
  context: Excel.RequestContext,
  models: readonly InputTable[],
  isThere: (model: InputTable) => boolean,
): Promise<readonly TablePlace[]> {
  const sheets = await lookAtSheets(context);
  const taken = new Set<string>();
  return models.flatMap((model): TablePlace[] => {
    if (isThere(model)) {
      const begun = sheets.find(({ isMarked, tables }) => isMarked && tables[0]?.name.toLowerCase() === model.name.toLowerCase());
      return begun === undefined ? [] : [{ model, name: begun.sheet.name, old: begunOn(begun) }];
    }
    for (const name of sheetNameChoices(model.sheet)) {
      if (taken.has(name.toLowerCase())) continue;
      const found = sheets.find(({ sheet }) => sheet.name.toLowerCase() === name.toLowerCase());
      if (found !== undefined && !found.isEmpty && !(found.isMarked && isBegun(found, model))) continue;
      taken.add(name.toLowerCase());
      return [{ model, name: found?.sheet.name ?? name, old: found === undefined ? null : begunOn(found) }];
    }
    throw new RangeError("The choices of names have no end");
  });
}

const begunOn = ({ sheet, isMarked, tables }: LookedAt): BegunSheet => ({ sheet, isMarked, table: tables[0] ?? null });

/** The block from the sheet's first cell to the last of those in use. */
const fromCorner = (sheet: Excel.Worksheet, { rowIndex, rowCount, columnIndex, columnCount }: Excel.Range): Excel.Range =>
  sheet.getRangeByIndexes(0, 0, rowIndex + rowCount, columnIndex + columnCount).untrack();

/** What is on each sheet, in two round trips: cells are asked for only of sheets that bear the mark. */
async function lookAtSheets(context: Excel.RequestContext): Promise<readonly LookedAt[]> {
  const sheets = context.workbook.worksheets.load("items/name,items/visibility");
  await context.sync();
  const asked = sheets.items.map((sheet) => ({
    sheet,
    used: sheet.getUsedRangeOrNullObject().untrack().load("rowIndex,columnIndex,rowCount,columnCount"),
    names: sheet.names.load("items/name"),
    tables: sheet.tables.load("items/name"),
    charts: sheet.charts.load("items/name"),
  }));
  await context.sync();
  const looked = asked.map(({ sheet, used, names, tables, charts }) => {
    const isMarked = names.items.some(({ name }) => name === unfinishedMark);
    const holdsNothing = used.isNullObject && tables.items.length === 0 && charts.items.length === 0;
    const cells = isMarked && !used.isNullObject ? fromCorner(sheet, used).load("formulas") : null;
    return {
      sheet,
      isMarked,
      isEmpty: holdsNothing && sheet.visibility === "Visible" && (isMarked || names.items.length === 0),
      tables: tables.items,
      cells,
    };
  });
  if (looked.some(({ cells }) => cells !== null)) await context.sync();
  return looked.map((each) => ({ ...each, cells: each.cells === null ? [] : (each.cells.formulas as Cell[][]) }));
}

/** The headings and rows of a table as it is made. */
export const cellsMade = (model: InputTable): readonly (readonly Cell[])[] => [
  model.columns.map(({ heading }) => heading),
  ...rowsMade(model),
];

/** Whether a marked sheet holds nothing in the table's cells but what we put there: else somebody has typed there since. */
function isBegun({ cells, tables }: LookedAt, model: InputTable): boolean {
  const wanted = cellsMade(model);
  const inTable = cells.map((row) => row.slice(0, model.columns.length));
  return tables.length <= 1 && inTable.every((row, down) => row.every((cell, across) => cell === "" || cell === wanted[down]?.[across]));
}
