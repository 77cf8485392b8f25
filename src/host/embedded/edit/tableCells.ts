/** Values put into single cells of tables. */
import { refuseOtherRow } from "../../rowSays";
import { sameName } from "../../sheetNames";
import { HostError, type CellChange } from "../../workbookHost";
import { bodyOf } from "../book";
import { withEntries, type CellEntry } from "./cellEntries";
import { dataOf, formulaIn, sheetNamed, type State } from "../state";
import { tableNamed } from "./tableRows";

/**
 * The state with values in cells of tables' body rows; their number formats stay.
 *
 * @throws HostError before anything is changed: `missing` for a place that is not there, `moved`, `formula`, `protected`
 */
export function withTableCells(state: State, changes: readonly CellChange[]): State {
  const bySheet = new Map<string, CellEntry[]>();
  for (const change of changes) {
    const { sheet, entry } = entryOf(state, change);
    bySheet.set(sheet, [...(bySheet.get(sheet) ?? []), entry]);
  }
  return [...bySheet].reduce((changed, [sheet, entries]) => withEntries(changed, sheet, entries), state);
}

function entryOf(state: State, change: CellChange): { readonly sheet: string; readonly entry: CellEntry } {
  const { table: name, row, column, value } = change;
  const table = tableNamed(state, name);
  const index = table.columns.findIndex((each) => sameName(each.name, column));
  if (index < 0) throw new HostError("missing", `The table "${table.name}" has no column "${column}".`);
  const body = bodyOf(table);
  if (row < 1 || row > body.bottom - body.top + 1) throw new HostError("missing", `The table "${table.name}" has no entry ${row}.`);
  const at = { row: body.top + row - 1, column: body.left + index };
  const data = dataOf(state, sheetNamed(state, table.sheet).part);
  if (change.says !== undefined)
    refuseOtherRow(
      change,
      table.columns.map((each) => each.name),
      data.rows.valuesOf({ ...body, top: at.row, bottom: at.row })[0] ?? [],
    );
  if (formulaIn(data, at) !== null) {
    throw new HostError("formula", `${table.name}, entry ${row}, ${column} holds a formula, which is not written over.`);
  }
  return { sheet: table.sheet, entry: { ...at, value } };
}
