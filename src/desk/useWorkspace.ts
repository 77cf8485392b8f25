/** What can be done in the grid, by keys, pointer and buttons, over one workbook. */
import { useCallback, useEffect, useMemo, useReducer, useRef, useState, useSyncExternalStore } from "react";
import { HostError } from "../host/workbookHost";
import { areaName, type Block } from "../host/address";
import type { StepWords } from "../host/embedded";
import type { SheetPlace } from "../workbook/cell";
import { copied, type Copied } from "./copied";
import type { GridBook, GridEntry } from "./gridBook";
import { keyMeaning } from "./keys";
import { lookingCommands, without } from "./lookingCommands";
import { movedInSight } from "./movedInSight";
import { areaOfEntries, pasted } from "./paste";
import { rowsShown, type Filter } from "./rowsShown";
import { isBlock, selectBlock, selectCell, selectedBlock, type KeyStroke, type Selection } from "./gridSelection";
import { tableCommands } from "./tableCommands";
import { parseTsv } from "./tsv";
import { extentOf, firstView, isShown, viewAt, viewsOf, type View } from "./views";
import { afterAction, newWorkspace, selectionIn } from "./workspace";
import type { Bench, WorkspaceCommands } from "./workspaceCommands";
import { besideTable, warnOfChoice } from "./workspaceWords";

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
    const ended = (focus = false): (() => void) | null => {
      const {
        workspace: { editing },
        view: shown,
        selection: { active },
      } = now.current;
      if (editing === null) return () => {};
      now.current.workspace = { ...now.current.workspace, editing: null };
      dispatch({ do: "stop-editing", focus });
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
    const bench: Bench = { book, now: () => now.current, say, select, tried, enter, setFilters, dispatch };
    const { insertEntries, deleteEntries, sort, fillDown, widen, setWidth } = tableCommands(bench);
    const looking = lookingCommands(bench);

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
      filter: (text, inAnyColumn) => settle() && looking.filter(text, inAnyColumn),
      find: settled(looking.find),
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
        const tell = ended(then !== null);
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
