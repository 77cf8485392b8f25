/** Entries in a table's headings and totals row, which the table's own part must say too, or Excel takes the file for damaged. */
import { HostError } from "../../workbookHost";
import { tablesOf, type TableEntry } from "../book";
import { changedEverywhere } from "../formula/referencesEverywhere";
import { PackageEdit } from "../package/packageParts";
import type { CellEdit, State } from "../state";
import { children, elements, sibling } from "../package/xml";

/** The state and the edits with headings and totals in step: a heading becomes a text that no other column has, and formulas follow it. */
export function withTableEdges(
  before: State,
  sheet: string,
  edits: readonly CellEdit[],
): { readonly state: State; readonly edits: readonly CellEdit[] } {
  let state = before;
  const replaced = new Map<CellEdit, CellEdit>();
  for (const table of tablesOf(before.parts).filter((each) => each.sheet === sheet)) {
    const { area, headerRows, totalsRows } = table;
    const names = table.columns.map(({ name }) => name);
    for (const edit of edits.filter(({ column }) => column >= area.left && column <= area.right)) {
      const index = edit.column - area.left;
      if (headerRows > 0 && edit.row === area.top) {
        const name = headingOf(table, names, index, edit);
        replaced.set(edit, { row: edit.row, column: edit.column, value: name, ...(edit.style === undefined ? {} : { style: edit.style }) });
        if (name !== names[index]) state = withHeading(state, table, names[index]!, name, index);
        names[index] = name;
      } else if (totalsRows > 0 && edit.row === area.bottom) state = withTotal(state, table, index, edit);
    }
  }
  return { state, edits: edits.map((edit) => replaced.get(edit) ?? edit) };
}

/** Excel makes a text of whatever is entered, names a blank heading itself, and numbers one that is there already. */
function headingOf(table: TableEntry, names: readonly string[], index: number, { value, formula }: CellEdit): string {
  if (formula !== undefined) throw new HostError("failed", `A heading of the table "${table.name}" is a text and cannot be a formula.`);
  const taken = new Set(names.filter((_, other) => other !== index).map((name) => name.toLowerCase()));
  const wanted = (typeof value === "boolean" ? String(value).toUpperCase() : String(value)).replace(/\r\n?/g, "\n").trim();
  const base = wanted === "" ? "Column" : wanted;
  if (wanted !== "" && !taken.has(base.toLowerCase())) return base;
  for (let number = wanted === "" ? 1 : 2; ; number += 1) if (!taken.has(`${base}${number}`.toLowerCase())) return `${base}${number}`;
}

function withHeading(state: State, table: TableEntry, from: string, to: string, index: number): State {
  // Structured references name the column by its plain name; a line break in it is a blank to them.
  const inFormulas = (name: string) => name.replaceAll("\n", " ");
  const words = inFormulas(from)
    .replace(/[[\]#'@]/g, "'$&")
    .toLowerCase();
  const referring = changedEverywhere(state, {
    mayConcern: (formula) => formula.toLowerCase().includes(words),
    column: { table: table.name, from: inFormulas(from), to: inFormulas(to) },
  });
  const edit = new PackageEdit(referring.parts);
  edit.edit(table.part, (root) => elements(root, "tableColumn")[index]!.setAttribute("name", to.replaceAll("\n", "_x000a_")));
  return { ...referring, parts: edit.parts };
}

function withTotal(state: State, table: TableEntry, index: number, { value, formula }: CellEdit): State {
  const edit = new PackageEdit(state.parts);
  edit.edit(table.part, (root) => {
    const column = elements(root, "tableColumn")[index]!;
    for (const name of ["totalsRowFunction", "totalsRowLabel"]) column.removeAttribute(name);
    for (const old of children(column, "totalsRowFormula")) column.removeChild(old);
    if (formula !== undefined) {
      column.setAttribute("totalsRowFunction", "custom");
      const own = sibling(column, "totalsRowFormula");
      own.textContent = formula;
      column.insertBefore(own, children(column, "calculatedColumnFormula")[0]?.nextSibling ?? column.firstChild);
    } else if (typeof value === "string" && value !== "") column.setAttribute("totalsRowLabel", value);
  });
  return { ...state, parts: edit.parts };
}
