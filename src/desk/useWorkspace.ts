/** What can be done in the grid, by keys, pointer and buttons, over one workbook. */
import { useCallback, useEffect, useMemo, useReducer, useRef, useSyncExternalStore, type KeyboardEvent } from "react";
import { HostError } from "../host/workbookHost";
import { areaName, type Area } from "../host/address";
import type { SheetPlace } from "../workbook/cell";
import { copied, type Copied } from "./copied";
import type { GridBook, GridEntry } from "./gridBook";
import { keyMeaning } from "./keys";
import { areaOfEntries, pasted } from "./paste";
import { isBlock, moved, selectBlock, selectCell, selectedBlock, type KeyStroke, type Selection } from "./selection";
import { parseTsv } from "./tsv";
import { extentOf, firstView, viewAt, viewsOf, type View } from "./views";
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
  readonly show: (view: string, focus: boolean) => void;
  /** Goes to a cell, wherever it is shown. */
  readonly showPlace: (place: SheetPlace) => void;
};

/**
 * The state of the grid over a workbook, and its commands, which stay the same objects for as long as the workbook does.
 * `say` puts a sentence where everybody sees or hears it.
 */
export function useWorkspace(book: GridBook, say: (words: string) => void) {
  const version = useSyncExternalStore(useCallback((changed) => book.subscribe(changed), [book]), () => book.version());
  const [workspace, dispatch] = useReducer(afterAction, book, (opened) => newWorkspace(firstView(viewsOf(opened.sheets()))));
  // eslint-disable-next-line react-hooks/exhaustive-deps -- the version stands for what the book holds, which has changed when it has
  const views = useMemo(() => viewsOf(book.sheets()), [book, version]);
  const view = views.find(({ id }) => id === workspace.view) ?? views[0];
  if (view === undefined) throw new Error("A workbook has at least one sheet that is not hidden.");
  const selection = selectionIn(view, workspace);

  const now = useRef({ workspace, views, view, selection, pageRows: 20 });
  now.current = { ...now.current, workspace, views, view, selection };
  const clipboard = useRef<Copied | null>(null);

  const commands = useMemo((): WorkspaceCommands => {
    const select = (next: Selection) => {
      say("");
      now.current.selection = next;
      dispatch({ do: "select", selection: next });
    };
    const enter = (entries: readonly GridEntry[]): boolean => {
      if (entries.length === 0) return true;
      try {
        book.enter(now.current.view.name, entries);
        return true;
      } catch (fault) {
        if (!(fault instanceof HostError)) throw fault;
        say(fault.message);
        return false;
      }
    };
    const extent = () => {
      const { view: drawn, pageRows } = now.current;
      // An entry may just have made the table longer, before the page is drawn again.
      const shown = viewsOf(book.sheets()).find(({ id }) => id === drawn.id) ?? drawn;
      const { active, corner } = now.current.selection;
      return {
        ...extentOf(shown, [active, corner]), used: shown.used, pageRows,
        isFilled: (at: { row: number; column: number }) => book.cell(shown.name, at).kind !== "blank",
      };
    };
    const move = (stroke: KeyStroke): boolean => {
      const next = moved(now.current.selection, stroke, extent());
      if (next !== null) select(next);
      return next !== null;
    };
    const edit: WorkspaceCommands["edit"] = (text, mode, where) => {
      const entry = book.cell(now.current.view.name, now.current.selection.active).entry;
      dispatch({ do: "edit", editing: { text: text ?? entry, mode, where } });
    };
    const clear = () => {
      const { view: shown, selection: { ...selected } } = now.current;
      const filled = cellsOf(selectedBlock(selected), shown).filter((at) => book.cell(shown.name, at).kind !== "blank");
      enter(filled.map((at) => ({ at, text: "" })));
    };
    const step = (done: boolean, words: string, none: string) => say(done ? words : none);
    const showPlace = (place: SheetPlace) => {
      const shown = viewAt(viewsOf(book.sheets()), place);
      if (shown !== undefined) dispatch({ do: "show", view: shown.id, selection: selectCell({ row: place.row, column: place.column }), focus: true });
    };
    const undo = () => step(book.undo(), "Undone.", "There is nothing to undo.");
    const redo = () => step(book.redo(), "Done again.", "There is nothing to do again.");

    return {
      select, edit, clear, undo, redo,
      key: (event, pageRows) => {
        now.current.pageRows = pageRows;
        const meaning = keyMeaning(event);
        if (meaning === null) return;
        if (meaning.do === "leave") return dispatch({ do: "let-tab-leave", leaves: true });
        if (meaning.do === "move" && meaning.stroke.key === "Tab" && now.current.workspace.tabLeaves) {
          return dispatch({ do: "let-tab-leave", leaves: false });
        }
        switch (meaning.do) {
          case "move": move(meaning.stroke); break;
          case "clear": clear(); break;
          case "edit": edit(meaning.text, meaning.text === null ? "edit" : "type", "cell"); break;
          case "undo": undo(); break;
          case "redo": redo(); break;
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
        const { workspace: { editing }, view: shown, selection: { active } } = now.current;
        if (editing === null) return;
        now.current.workspace = { ...now.current.workspace, editing: null };
        dispatch({ do: "stop-editing", focus: then !== null });
        const isNew = editing.text !== book.cell(shown.name, active).entry;
        const isEntered = !isNew || enter([{ at: active, text: editing.text }]);
        if (isEntered && then !== null) move(then);
        if (isNew && isEntered) warnOfChoice(book, shown.name, active, editing.text, say);
      },
      isTyping: () => {
        const { workspace: { editing }, view: shown, selection: { active } } = now.current;
        return editing !== null && editing.text !== book.cell(shown.name, active).entry;
      },
      cancel: () => {
        now.current.workspace = { ...now.current.workspace, editing: null };
        dispatch({ do: "stop-editing", focus: true });
      },
      copy: () => {
        clipboard.current = copied(book, now.current.view.name, selectedBlock(now.current.selection));
        say(`Copied ${areaName(selectedBlock(now.current.selection))}.`);
        return clipboard.current.text;
      },
      paste: (text) => {
        const own = clipboard.current;
        const target = selectedBlock(now.current.selection);
        const rows = own !== null && own.text === text ? own.entriesAt({ row: target.top, column: target.left }) : parseTsv(text);
        const entries = pasted(rows, target);
        const block = areaOfEntries(entries);
        if (block === null || !enter(entries)) return;
        select(selectBlock(block));
        say(`Pasted into ${areaName(block)}.`);
      },
      addRow: (table) => {
        try {
          const place = book.addRow(table);
          showPlace(place);
          say(`An entry was added to ${table.replaceAll("_", " ")}.`);
        } catch (fault) {
          if (!(fault instanceof HostError)) throw fault;
          say(fault.message);
        }
      },
      show: (id, focus) => dispatch({ do: "show", view: id, focus }),
      showPlace,
    };
  }, [book, say]);

  useEffect(() => book.onShow(commands.showPlace), [book, commands]);

  useEffect(() => book.selected(view.name, selectedBlock(selection)), [book, view.name, selection]);

  return { version, views, view, selection, workspace, commands, isBlockSelected: isBlock(selection) };
}

/** The cells of a block that lie in the used part of the sheet: clearing whole columns need not visit a million rows. */
function cellsOf(block: Area, { used }: View) {
  const bottom = Math.min(block.bottom, used.rows - 1);
  const right = Math.min(block.right, used.columns - 1);
  const cells = [];
  for (let row = block.top; row <= bottom; row += 1) {
    for (let column = block.left; column <= right; column += 1) cells.push({ row, column });
  }
  return cells;
}

/** An entry that the list does not offer is taken all the same, and said to be so. */
function warnOfChoice(book: GridBook, sheet: string, at: { row: number; column: number }, text: string, say: (words: string) => void): void {
  const choices = book.choices(sheet, at);
  const typed = text.trim().toLowerCase();
  if (typed === "" || choices.length === 0 || choices.some((choice) => choice.toLowerCase() === typed)) return;
  say(`“${text.trim()}” is not in this cell's list. It was entered all the same.`);
}
