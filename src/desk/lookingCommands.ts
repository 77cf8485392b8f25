/** Which entries of the grid are in sight, and where a text is. */
import { found } from "./find";
import { selectCell } from "./gridSelection";
import { rowsShown, type Filter } from "./rowsShown";
import type { Bench, WorkspaceCommands } from "./workspaceCommands";

export const without =
  (id: string) =>
  (filters: ReadonlyMap<string, Filter>): ReadonlyMap<string, Filter> =>
    new Map([...filters].filter(([each]) => each !== id));

export function lookingCommands({ book, now, say, select, setFilters, dispatch }: Bench): Pick<WorkspaceCommands, "filter" | "find"> {
  const filter: WorkspaceCommands["filter"] = (text, inAnyColumn) => {
    const {
      view: shown,
      selection: { active },
    } = now();
    if (text === null || text.trim() === "" || shown.table === null) {
      setFilters(without(shown.id));
      say(text === null ? "All entries are shown." : "Type what the entries to be shown must hold.");
      return false;
    }
    const next = { text: text.trim(), column: inAnyColumn ? null : active.column, lastRow: shown.table.block.bottom };
    const first = rowsShown(book, shown, next, { row: -1, column: active.column })?.[0] ?? shown.first.row;
    if (first > shown.table.block.bottom) {
      say(`No entry holds “${next.text}”, so all are still shown.`);
      return false;
    }
    setFilters((before) => new Map(before).set(shown.id, next));
    select(selectCell({ row: first, column: active.column }));
    return true;
  };
  const find: WorkspaceCommands["find"] = (text, by) => {
    const {
      views: all,
      view: shown,
      selection: { active },
    } = now();
    const place = found(book, all, text, { view: shown.id, at: active }, by);
    if (place === null) return say(text.trim() === "" ? "Type what to find." : `“${text.trim()}” is nowhere in this workbook.`);
    if (now().filters.has(place.view.id)) setFilters(without(place.view.id));
    dispatch({ do: "show", view: place.view.id, selection: selectCell(place.at), focus: false });
    say(`${place.index} of ${place.count}: ${place.view.title}, row ${place.at.row + 1}.`);
  };
  return { filter, find };
}
