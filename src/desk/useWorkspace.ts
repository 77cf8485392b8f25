/** What can be done in the grid, by keys, pointer and buttons, over one workbook. */
import { useCallback, useEffect, useMemo, useReducer, useRef, useState, useSyncExternalStore, type KeyboardEvent } from "react";
import { HostError } from "../host/workbookHost";
import { areaName, columnName, type Block, type At } from "../host/address";
import type { StepWords } from "../host/embedded";
import type { SheetPlace } from "../workbook/cell";
import { copied, type Copied } from "./copied";
import { found } from "./find";
import type { GridBook, GridEntry, GridTable } from "./gridBook";
import { keyMeaning } from "./keys";
import { areaOfEntries, pasted } from "./paste";
import { rowsShown, type Filter } from "./rowsShown";
import { isBlock, moved, selectBlock, selectCell, selectedBlock, type Extent, type KeyStroke, type Selection } from "./gridSelection";
import { tableAt } from "./tableAt";
import { parseTsv } from "./tsv";
import { extentOf, firstView, isShown, viewAt, viewsOf, type View } from "./views";
import { afterAction, newWorkspace, selectionIn, type Editing } from "./workspace";

export type WorkspaceCommands = {
  readonly select: (selection: Selection) => void;
  /** What a key does in the grid while no cell is edited. */
  readonly key: (event: KeyboardEvent, pageRows: number) => void;
  /** Begins to edit the active cell: with the text given, or with what it holds. */
  readonly edit: (text: string | null, mode: Editing["mode"], where: Editing["where"]) => void;
  readonly changeText: (text: string) => void;
  /** Enters the text that is being edited and, where a key is given, moves on as that key does. */
  readonly commit: (then: KeyStroke | null) => void;
  readonly cancel: () => void;
  /** Whether a cell is edited and says something else than what is entered in it. */
  readonly isTyping: () => boolean;
  readonly clear: () => void;
  readonly copy: () => string;
  readonly paste: (text: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly addRow: (table: string) => void;
  readonly insertEntries: () => void;
  readonly deleteEntries: () => void;
  readonly sort: (downwards: boolean) => void;
  readonly fillDown: () => void;
  /** Makes the active column wider or narrower by so many steps, or sets a column's width in pixels. */
  readonly widen: (by: number) => void;
  readonly setWidth: (column: number, pixels: number) => void;
  /** Hides the entries that do not hold the text; `null` shows all. Answers whether a filter was set. */
  readonly filter: (text: string | null, inAnyColumn: boolean) => boolean;
  readonly find: (text: string, by: 1 | -1) => void;
  readonly focusGrid: () => void;
  readonly show: (view: string, focus: boolean) => void;
  /** Goes to a cell, wherever it is shown. */
  readonly showPlace: (place: SheetPlace) => void;
};

/**
 * The state of the grid over a workbook, and its commands, which stay the same objects for as long as the workbook does.
 * `say` puts a sentence where everybody sees or hears it.
 */
export function useWorkspace(book: GridBook, say: (words: string) => void, ask: (tool: "find" | "filter" | "print") => void) {
  const version = useSyncExternalStore(
    useCallback((changed) => book.subscribe(changed), [book]),
    () => book.version(),
  );
  const [workspace, dispatch] = useReducer(afterAction, book, (opened) => newWorkspace(firstView(viewsOf(opened.sheets()))));
  // eslint-disable-next-line react-hooks/exhaustive-deps -- the version stands for what the book holds, which has changed when it has
  const views = useMemo(() => viewsOf(book.sheets()), [book, version]);
  const [filters, setFilters] = useState<ReadonlyMap<string, Filter>>(new Map());
  const whole = views.find(({ id }) => id === workspace.view) ?? views[0];
  if (whole === undefined) throw new Error("A workbook has at least one sheet that is not hidden.");
  const selection = selectionIn(whole, workspace);
  const filter = filters.get(whole.id);
  const view = useMemo(
    (): View => ({ ...whole, rowsShown: rowsShown(book, whole, filter, selection.active) }),
    [book, whole, filter, selection.active],
  );

  const now = useRef({ workspace, views, view, selection, filters, pageRows: 20 });
  now.current = { ...now.current, workspace, views, view, selection, filters };
  const clipboard = useRef<Copied | null>(null);

  const commands = useMemo((): WorkspaceCommands => {
    const select = (next: Selection) => {
      say("");
      settle();
      now.current.selection = next;
      dispatch({ do: "select", selection: next });
    };
    /** Does what may be refused; answers whether it was done, and says why not. */
    const tried = (work: () => void): boolean => {
      try {
        work();
        return true;
      } catch (fault) {
        if (!(fault instanceof HostError)) throw fault;
        say(fault.message);
        return false;
      }
    };
    const enter = (entries: readonly GridEntry[]): boolean =>
      entries.length === 0 || tried(() => book.enter(now.current.view.name, entries));
    /** Ends typing and enters what was typed, in its cell; answers what to say of it, or `null` where it was refused. */
    const ended = (): (() => void) | null => {
      const {
        workspace: { editing },
        view: shown,
        selection: { active },
      } = now.current;
      if (editing === null) return () => {};
      now.current.workspace = { ...now.current.workspace, editing: null };
      dispatch({ do: "stop-editing", focus: false });
      if (editing.text === book.cell(shown.name, active).entry) return () => {};
      return enter([{ at: active, text: editing.text }]) ? () => warnOfChoice(book, shown.name, active, editing.text, say) : null;
    };
    /**
     * Enters what is being typed before anything takes its cell away; answers whether it was not refused. Nothing ends typing but
     * this and Escape, whether it is a press on another cell, a table that is sorted or a cell that the pane shows.
     */
    const settle = (): boolean => {
      const tell = ended();
      tell?.();
      return tell !== null;
    };
    /** The command, once what was being typed is entered; not where that was refused, which has been said. */
    const settled =
      <Given extends readonly unknown[]>(command: (...given: Given) => void) =>
      (...given: Given): void => {
        if (settle()) command(...given);
      };
    const extent = () => {
      const { view: drawn, pageRows } = now.current;
      // An entry may just have made the table longer, before the page is drawn again.
      const shown = viewsOf(book.sheets()).find(({ id }) => id === drawn.id) ?? drawn;
      const { active, corner } = now.current.selection;
      return {
        ...extentOf(shown, [active, corner]),
        used: shown.used,
        pageRows,
        isFilled: (at: { row: number; column: number }) => book.cell(shown.name, at).kind !== "blank",
      };
    };
    const move = (stroke: KeyStroke): boolean => {
      const next = movedInSight(now.current.selection, stroke, extent(), now.current.view.rowsShown ?? null);
      if (next !== null) select(next);
      return next !== null;
    };
    const edit: WorkspaceCommands["edit"] = (text, mode, where) => {
      const entry = book.cell(now.current.view.name, now.current.selection.active).entry;
      dispatch({ do: "edit", editing: { text: text ?? entry, mode, where } });
    };
    const clear = () => {
      const {
        view: shown,
        selection: { ...selected },
      } = now.current;
      const filled = cellsOf(selectedBlock(selected), shown).filter((at) => book.cell(shown.name, at).kind !== "blank");
      enter(filled.map((at) => ({ at, text: "" })));
    };
    const showPlace = (place: SheetPlace) => {
      const shown = viewAt(viewsOf(book.sheets()), place);
      if (shown === undefined) return;
      settle();
      if (now.current.filters.has(shown.id) && place.row <= (shown.table?.block.bottom ?? 0)) setFilters(without(shown.id));
      dispatch({ do: "show", view: shown.id, selection: selectCell({ row: place.row, column: place.column }), focus: true });
    };
    const step = (words: StepWords | null, go: () => boolean, done: string, none: string) => {
      if (!go()) return say(none);
      if (words?.place !== null && words?.place !== undefined) showPlace(words.place);
      say(`${done}: ${words?.words ?? ""}.`);
    };
    const undo = () => step(book.toUndo(), () => book.undo(), "Undone", "There is nothing to undo.");
    const redo = () => step(book.toRedo(), () => book.redo(), "Done again", "There is nothing to do again.");
    const tableHere = () => {
      const {
        view: shown,
        selection: { active },
      } = now.current;
      const table = shown.table ?? tableAt(shown, active);
      if (table === undefined) say("That is done to the entries of a table: select a cell of one.");
      return table ?? null;
    };
    /** The rows of a table's entries that are selected and in sight. */
    const entriesSelected = (table: GridTable): number[] => {
      const { view: shown, selection: selected } = now.current;
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
      select(selectCell({ row: above, column: now.current.selection.active.column }));
      say(`${entriesOf(rows.length)} inserted in ${plain(table)} above row ${above + rows.length + 1}.`);
    };
    const deleteEntries = () => {
      const table = tableHere();
      if (table === null) return;
      const rows = entriesSelected(table);
      const [at] = rows;
      if (at === undefined) return say("Select entries to delete.");
      if (!tried(() => book.deleteRows(table.name, rows))) return;
      select(selectCell({ row: at, column: now.current.selection.active.column }));
      say(`${entriesOf(rows.length)} deleted from ${plain(table)}. Undo brings ${rows.length === 1 ? "it" : "them"} back.`);
    };
    const sort = (downwards: boolean) => {
      const table = tableHere();
      if (table === null) return;
      const {
        view: shown,
        selection: { active },
      } = now.current;
      const column = Math.min(Math.max(active.column, table.block.left), table.block.right);
      if (!tried(() => book.sort(table.name, column, downwards))) return;
      const heading = table.headingRow === null ? "" : book.cell(shown.name, { row: table.headingRow, column }).text;
      say(`${plain(table)} sorted by ${heading}, ${downwards ? "largest or Z" : "smallest or A"} first. Blanks stand last.`);
    };
    const fillDown = () => {
      const { view: shown, selection: selected } = now.current;
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
    const setWidth = (column: number, wide: number) => void tried(() => book.widen(now.current.view.name, column, wide));
    const widen = (by: number) => {
      const {
        view: shown,
        selection: { active },
      } = now.current;
      setWidth(active.column, Math.min(Math.max(shown.widthOf(active.column) + by * 21, 40), 560));
    };
    const filterBy: WorkspaceCommands["filter"] = (text, inAnyColumn) => {
      const {
        view: shown,
        selection: { active },
      } = now.current;
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
      } = now.current;
      const place = found(book, all, text, { view: shown.id, at: active }, by);
      if (place === null) return say(text.trim() === "" ? "Type what to find." : `“${text.trim()}” is nowhere in this workbook.`);
      if (now.current.filters.has(place.view.id)) setFilters(without(place.view.id));
      dispatch({ do: "show", view: place.view.id, selection: selectCell(place.at), focus: false });
      say(`${place.index} of ${place.count}: ${place.view.title}, row ${place.at.row + 1}.`);
    };

    return {
      select,
      edit,
      clear,
      undo,
      redo,
      insertEntries: settled(insertEntries),
      deleteEntries: settled(deleteEntries),
      sort: settled(sort),
      fillDown: settled(fillDown),
      widen: settled(widen),
      setWidth: settled(setWidth),
      filter: (text, inAnyColumn) => settle() && filterBy(text, inAnyColumn),
      find: settled(find),
      focusGrid: () => select(now.current.selection),
      key: (event, pageRows) => {
        now.current.pageRows = pageRows;
        const meaning = keyMeaning(event);
        if (meaning === null) return;
        if (meaning.do === "leave") return dispatch({ do: "let-tab-leave", leaves: true });
        if (meaning.do === "move" && meaning.stroke.key === "Tab" && now.current.workspace.tabLeaves) {
          return dispatch({ do: "let-tab-leave", leaves: false });
        }
        switch (meaning.do) {
          case "move":
            move(meaning.stroke);
            break;
          case "clear":
            clear();
            break;
          case "edit":
            edit(meaning.text, meaning.text === null ? "edit" : "type", "cell");
            break;
          case "undo":
            undo();
            break;
          case "redo":
            redo();
            break;
          case "insert":
            insertEntries();
            break;
          case "delete":
            deleteEntries();
            break;
          case "fill":
            fillDown();
            break;
          case "sort up":
            sort(false);
            break;
          case "sort down":
            sort(true);
            break;
          case "wider":
            widen(1);
            break;
          case "narrower":
            widen(-1);
            break;
          case "filter":
          case "find":
          case "print":
            ask(meaning.do);
            break;
        }
        if (meaning.keepsDefault !== true) event.preventDefault();
        event.stopPropagation();
      },
      changeText: (text) => {
        const { editing } = now.current.workspace;
        if (editing === null) return;
        // Known at once, because an entry may follow before the page is drawn again.
        now.current.workspace = { ...now.current.workspace, editing: { ...editing, text } };
        dispatch({ do: "edit", editing: { ...editing, text } });
      },
      commit: (then) => {
        if (now.current.workspace.editing === null) return;
        const tell = ended();
        if (then !== null) dispatch({ do: "stop-editing", focus: true });
        if (then !== null && tell !== null) move(then);
        tell?.();
      },
      isTyping: () => {
        const {
          workspace: { editing },
          view: shown,
          selection: { active },
        } = now.current;
        return editing !== null && editing.text !== book.cell(shown.name, active).entry;
      },
      cancel: () => {
        now.current.workspace = { ...now.current.workspace, editing: null };
        dispatch({ do: "stop-editing", focus: true });
      },
      copy: () => {
        clipboard.current = copied(book, now.current.view.name, selectedBlock(now.current.selection), (row) =>
          isShown(now.current.view, row),
        );
        say(`Copied ${areaName(selectedBlock(now.current.selection))}.`);
        return clipboard.current.text;
      },
      paste: (text) => {
        const own = clipboard.current;
        const target = selectedBlock(now.current.selection);
        const rows = own !== null && own.text === text ? own.entriesAt({ row: target.top, column: target.left }) : parseTsv(text);
        const entries = pasted(rows, target);
        const block = areaOfEntries(entries);
        if (block === null) return;
        if (block.bottom > block.top && (now.current.view.rowsShown ?? null) !== null)
          return say("Nothing was pasted: a filter hides entries that it would write over. Show all first.");
        if (!enter(entries)) return;
        select(selectBlock(block));
        say(`Pasted into ${areaName(block)}.${besideTable(now.current.view, block)}`);
      },
      addRow: settled((table) => {
        tried(() => {
          showPlace(book.addRow(table));
          say(`An entry was added to ${table.replaceAll("_", " ")}.`);
        });
      }),
      show: (id, focus) => {
        settle();
        dispatch({ do: "show", view: id, focus });
      },
      showPlace,
    };
  }, [book, say, ask]);

  useEffect(() => book.onShow(commands.showPlace), [book, commands]);

  useEffect(() => book.selected(view.name, selectedBlock(selection)), [book, view.name, selection]);

  return { version, views, view, selection, workspace, commands, filter, isBlockSelected: isBlock(selection) };
}

const without =
  (id: string) =>
  (filters: ReadonlyMap<string, Filter>): ReadonlyMap<string, Filter> =>
    new Map([...filters].filter(([each]) => each !== id));

/** Where a key takes the selection when some rows are out of sight: keys go by what is in sight. */
function movedInSight(selection: Selection, stroke: KeyStroke, extent: Extent, rows: readonly number[] | null): Selection | null {
  if (rows === null) return moved(selection, stroke, extent);
  const { first } = extent;
  const place = (row: number) =>
    first.row +
    Math.max(
      rows.findLastIndex((each) => each <= row),
      0,
    );
  const [inSight, onSheet] = [
    (at: At): At => ({ ...at, row: place(at.row) }),
    (at: At): At => ({ ...at, row: rows[at.row - first.row] ?? at.row }),
  ];
  const { active, anchor, corner } = selection;
  const next = moved({ ...selection, active: inSight(active), anchor: inSight(anchor), corner: inSight(corner) }, stroke, {
    ...extent,
    rows: first.row + rows.length,
    used: { ...extent.used, rows: first.row + rows.length },
    isFilled: (at) => extent.isFilled(onSheet(at)),
  });
  return next === null ? null : { ...next, active: onSheet(next.active), anchor: onSheet(next.anchor), corner: onSheet(next.corner) };
}

/** The cells of a block that lie in the used part of the sheet: clearing whole columns need not visit a million rows. */
function cellsOf(block: Block, view: View) {
  const { used } = view;
  const bottom = Math.min(block.bottom, used.rows - 1);
  const right = Math.min(block.right, used.columns - 1);
  const cells = [];
  for (let row = block.top; row <= bottom; row += 1) {
    if (!isShown(view, row)) continue;
    for (let column = block.left; column <= right; column += 1) cells.push({ row, column });
  }
  return cells;
}

/** What of a pasted block lies beside the table that is shown, in words: no column of it holds an entry. */
function besideTable({ table }: View, { left, right }: Block): string {
  if (table === null || right <= table.block.right) return "";
  const from = Math.max(left, table.block.right + 1);
  const columns = from === right ? `Column ${columnName(from)} lies` : `Columns ${columnName(from)} to ${columnName(right)} lie`;
  return ` ${columns} beside the table ${table.name.replaceAll("_", " ")} and ${from === right ? "is" : "are"} no part of its entries.`;
}

/** An entry that the list does not offer is taken all the same, and said to be so. */
function warnOfChoice(
  book: GridBook,
  sheet: string,
  at: { row: number; column: number },
  text: string,
  say: (words: string) => void,
): void {
  const choices = book.choices(sheet, at);
  const typed = text.trim().toLowerCase();
  if (typed === "" || choices.length === 0 || choices.some((choice) => choice.toLowerCase() === typed)) return;
  say(`“${text.trim()}” is not in this cell's list. It was entered all the same.`);
}
