/** Entries in cells, as one change of a workbook. */
import type { Cell } from "../../../workbook/cell";
import { contains, type At } from "../../address";
import { tablesOf, type SheetEntry } from "../book";
import { asFiled } from "../formula/formulaEntry";
import { PackageEdit } from "../package/packageParts";
import { refuseCovered, refuseImpossible, refuseLocked } from "./refusals";
import { cellIn, dataOf, sheetNamed, withCells, type CellEdit, type State } from "../state";
import { StyleMaker } from "../package/styles";
import { withTableEdges } from "./tableEdges";
import { withGrownTables } from "./tableRows";
import type { Parts } from "../package/zip";

/**
 * What goes into a cell: a value, or a formula as it is typed, without its `=`; the number format stays unless another is
 * given. A text in `value` is never taken for a formula.
 */
export type CellEntry = At & ({ readonly value: Cell } | { readonly formula: string }) & { readonly numberFormat?: string };

/**
 * The state with entries in cells of a sheet. Entries right under a table's last row make the table longer; those in its
 * headings and totals change the table too.
 *
 * @throws HostError where Excel would refuse them, before anything is changed
 */
export function withEntries(state: State, sheet: string, entries: readonly CellEntry[]): State {
  const entry = sheetNamed(state, sheet);
  refuseImpossible(entries);
  refuseLocked(state, entry, entries);
  refuseCovered(dataOf(state, entry.part), entries);
  const styled = editsOf(state, entry, entries);
  const edges = withTableEdges({ ...state, parts: styled.parts }, entry.name, styled.edits);
  const grown = withGrownTables(edges.state, entry.name, edges.edits);
  const data = withCells(dataOf(grown.state, entry.part), grown.edits);
  return { ...grown.state, edited: new Map(grown.state.edited).set(entry.part, data), touched: true };
}

/** The entries with the styles that their number formats ask for, and the parts with those styles. */
function editsOf(
  state: State,
  { name, part }: SheetEntry,
  entries: readonly CellEntry[],
): { readonly edits: readonly CellEdit[]; readonly parts: Parts } {
  const edit = new PackageEdit(state.parts);
  const styles = entries.some(({ numberFormat }) => numberFormat !== undefined) ? new StyleMaker(edit) : null;
  const data = dataOf(state, part);
  const tables = tablesOf(state.parts).filter(({ sheet }) => sheet === name);
  const edits = entries.map((entry): CellEdit => {
    const { row, column, numberFormat } = entry;
    const before = cellIn(data, entry)?.style ?? 0;
    const style = numberFormat === undefined ? before : styles!.withFormat(before, numberFormat);
    if (!("formula" in entry)) return { row, column, value: entry.value, style };
    const own = tables.find(({ area }) => contains(area, entry))?.name ?? null;
    return { row, column, value: "", isUnknown: true, formula: asFiled(entry.formula, own), style };
  });
  return { edits, parts: styles === null ? state.parts : edit.parts };
}
