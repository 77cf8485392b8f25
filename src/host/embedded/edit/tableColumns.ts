/** Tables that get another column at their right end. */
import { areaName, cellName } from "../../address";
import { sameName } from "../../sheetNames";
import { HostError, type NewColumn } from "../../workbookHost";
import { bodyOf, tablesOf, type TableEntry } from "../book";
import { lookOf } from "../sheet/looks";
import { PackageEdit } from "../package/packageParts";
import { refuseImpossible, refuseLocked } from "./refusals";
import { cellIn, dataOf, sheetNamed, withCells, type CellEdit, type State } from "../state";
import { StyleMaker } from "../package/styles";
import { tableNamed } from "./tableRows";
import { children, documentOf, sibling } from "../package/xml";

/**
 * The state with a column added to a table, which looks like the one beside it but for its number format.
 *
 * @throws HostError before anything is changed: `missing` for a table or row that is not there, `protected`, `failed` where
 * something stands in the way or the table cannot have another column
 */
export function withTableColumn(state: State, { table: name, heading, numberFormat = "General", cells }: NewColumn): State {
  const table = tableNamed(state, name);
  const sheet = sheetNamed(state, table.sheet);
  const data = dataOf(state, sheet.part);
  const body = bodyOf(table);
  const column = table.area.right + 1;
  refuseUnfit(state, table, heading);
  for (const row of cells.keys())
    if (row < 1 || row > body.bottom - body.top + 1) throw new HostError("missing", `The table "${table.name}" has no entry ${row}.`);
  const edit = new PackageEdit(state.parts);
  const styles = new StyleMaker(edit);
  const beside = (row: number) => cellIn(data, { row, column: table.area.right })?.style ?? 0;
  const edits: readonly CellEdit[] = [
    { row: table.area.top, column, value: heading, style: beside(table.area.top) },
    ...Array.from({ length: body.bottom - body.top + 1 }, (_, index) => ({
      row: body.top + index,
      column,
      value: cells.get(index + 1) ?? "",
      style: styles.withFormat(beside(body.top + index), numberFormat),
    })),
  ];
  refuseImpossible(edits);
  refuseLocked(state, sheet, edits);
  refuseTaken(state, table, column);
  widen(edit, table, heading);
  return { ...state, parts: edit.parts, edited: new Map(state.edited).set(sheet.part, withCells(data, edits)), touched: true };
}

function refuseUnfit({ parts }: State, table: TableEntry, heading: string): void {
  if (table.columns.some((each) => sameName(each.name, heading)))
    throw new HostError("failed", `The table "${table.name}" has a column "${heading}" already.`);
  if (table.headerRows === 0) throw new HostError("failed", `The table "${table.name}" shows no headings. Turn its header row on first.`);
  const filledBy = documentOf(parts.get(table.part)!).documentElement!.getAttribute("tableType") ?? "worksheet";
  if (filledBy !== "worksheet")
    throw new HostError("failed", `The table "${table.name}" is filled from elsewhere, which gives it its columns.`);
}

/** Whatever stands right of the table beside its rows is the grower's. */
function refuseTaken(state: State, { name, area, sheet }: TableEntry, column: number): void {
  const taken = (cell: string) =>
    new HostError("failed", `Something stands right of the table "${name}" (${cell}). Move it, so that the table can have another column.`);
  const data = dataOf(state, sheetNamed(state, sheet).part);
  const blocks = [
    ...tablesOf(state.parts)
      .filter((other) => other.sheet === sheet)
      .map((other) => other.area),
    ...lookOf(data).merges,
  ];
  const block = blocks.find((each) => each.left <= column && each.right >= column && each.top <= area.bottom && each.bottom >= area.top);
  if (block !== undefined) throw taken(areaName(block));
  for (let row = area.top; row <= area.bottom; row += 1) {
    const cell = cellIn(data, { row, column });
    if (cell !== undefined && (cell.value !== "" || cell.formula !== undefined)) throw taken(cellName({ row, column }));
  }
}

function widen(edit: PackageEdit, { part, area, totalsRows }: TableEntry, heading: string): void {
  edit.edit(part, (root) => {
    const wider = { ...area, right: area.right + 1 };
    root.setAttribute("ref", areaName(wider));
    for (const filter of children(root, "autoFilter"))
      filter.setAttribute("ref", areaName({ ...wider, bottom: wider.bottom - totalsRows }));
    const columns = children(root, "tableColumns")[0]!;
    const ids = children(columns, "tableColumn").map((each) => Number(each.getAttribute("id")));
    columns.appendChild(sibling(columns, "tableColumn", { id: String(Math.max(...ids) + 1), name: heading.replaceAll("\n", "_x000a_") }));
    columns.setAttribute("count", String(ids.length + 1));
  });
}
