/** What is done to the entries and columns of a table in the grid. */
import { copied } from "./copied";
import type { GridTable } from "./gridBook";
import { selectCell, selectedBlock } from "./gridSelection";
import { tableAt } from "./tableAt";
import { isShown } from "./views";
import type { Bench, WorkspaceCommands } from "./workspaceCommands";

type TableCommands = Pick<WorkspaceCommands, "insertEntries" | "deleteEntries" | "sort" | "fillDown" | "widen" | "setWidth">;

export function tableCommands({ book, now, say, select, tried, enter }: Bench): TableCommands {
  const tableHere = () => {
    const {
      view: shown,
      selection: { active },
    } = now();
    const table = shown.table ?? tableAt(shown, active);
    if (table === undefined) say("That is done to the entries of a table: select a cell of one.");
    return table ?? null;
  };
  /** The rows of a table's entries that are selected and in sight. */
  const entriesSelected = (table: GridTable): number[] => {
    const { view: shown, selection: selected } = now();
    const { top, bottom } = selectedBlock(selected);
    const [from, to] = [Math.max(top, table.block.top + (table.headingRow === null ? 0 : 1)), Math.min(bottom, table.block.bottom)];
    return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index).filter((row) => isShown(shown, row));
  };
  const plain = ({ name }: GridTable) => name.replaceAll("_", " ");
  const entriesOf = (count: number) => (count === 1 ? "One entry was" : `${count} entries were`);
  const insertEntries = () => {
    const table = tableHere();
    if (table === null) return;
    const rows = entriesSelected(table);
    const [above] = rows;
    if (above === undefined) return say("Below the last entry, type: the entry is added by itself.");
    if (!tried(() => book.insertRows(table.name, above, rows.length))) return;
    select(selectCell({ row: above, column: now().selection.active.column }));
    say(`${entriesOf(rows.length)} inserted in ${plain(table)} above row ${above + rows.length + 1}.`);
  };
  const deleteEntries = () => {
    const table = tableHere();
    if (table === null) return;
    const rows = entriesSelected(table);
    const [at] = rows;
    if (at === undefined) return say("Select entries to delete.");
    if (!tried(() => book.deleteRows(table.name, rows))) return;
    select(selectCell({ row: at, column: now().selection.active.column }));
    say(`${entriesOf(rows.length)} deleted from ${plain(table)}. Undo brings ${rows.length === 1 ? "it" : "them"} back.`);
  };
  const sort = (downwards: boolean) => {
    const table = tableHere();
    if (table === null) return;
    const {
      view: shown,
      selection: { active },
    } = now();
    const column = Math.min(Math.max(active.column, table.block.left), table.block.right);
    if (!tried(() => book.sort(table.name, column, downwards))) return;
    const heading = table.headingRow === null ? "" : book.cell(shown.name, { row: table.headingRow, column }).text;
    say(`${plain(table)} sorted by ${heading}, ${downwards ? "largest or Z" : "smallest or A"} first. Blanks stand last.`);
  };
  const fillDown = () => {
    const { view: shown, selection: selected } = now();
    const block = selectedBlock(selected);
    const rows = Array.from(
      { length: Math.min(block.bottom, Math.max(shown.used.rows, shown.table?.block.bottom ?? 0)) - block.top + 1 },
      (_, index) => block.top + index,
    ).filter((row) => isShown(shown, row));
    const above = rows.length > 1 ? rows.shift()! : (shown.rowsShown?.findLast((row) => row < block.top) ?? block.top - 1);
    if (above < shown.first.row) return say("There is no entry above to fill from.");
    const from = copied(book, shown.name, { ...block, top: above, bottom: above });
    const entries = rows.flatMap((row) =>
      from.entriesAt({ row, column: block.left })[0]!.map((text, index) => ({ at: { row, column: block.left + index }, text })),
    );
    const over = entries.filter(
      ({ at, text }) => book.cell(shown.name, at).kind !== "blank" && book.cell(shown.name, at).entry !== text,
    ).length;
    if (enter(entries))
      say(
        `${entries.length === 1 ? "One cell was" : `${entries.length} cells were`} filled from row ` +
          `${above + 1}${over === 0 ? "" : `; ${over} said something else before`}.`,
      );
  };
  const setWidth = (column: number, wide: number) => void tried(() => book.widen(now().view.name, column, wide));
  const widen = (by: number) => {
    const {
      view: shown,
      selection: { active },
    } = now();
    setWidth(active.column, Math.min(Math.max(shown.widthOf(active.column) + by * 21, 40), 560));
  };
  return { insertEntries, deleteEntries, sort, fillDown, widen, setWidth };
}
