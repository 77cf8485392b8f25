/** What can be done in the grid, and what its commands are done with. */
import type { Dispatch, KeyboardEvent, SetStateAction } from "react";
import type { SheetPlace } from "../workbook/cell";
import type { GridBook, GridEntry } from "./gridBook";
import type { KeyStroke, Selection } from "./gridSelection";
import type { Filter } from "./rowsShown";
import type { View } from "./views";
import type { afterAction, Editing } from "./workspace";

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

/** As the grid stands when a command is given, not when it was made. */
type GridNow = {
  readonly views: readonly View[];
  readonly view: View;
  readonly selection: Selection;
  readonly filters: ReadonlyMap<string, Filter>;
};

/** What commands of a workspace share. */
export type Bench = {
  readonly book: GridBook;
  readonly now: () => GridNow;
  readonly say: (words: string) => void;
  readonly select: (selection: Selection) => void;
  /** Does what may be refused; answers whether it was done, and says why not. */
  readonly tried: (work: () => void) => boolean;
  /** Enters in the sheet that is shown; answers whether it was not refused. */
  readonly enter: (entries: readonly GridEntry[]) => boolean;
  readonly setFilters: Dispatch<SetStateAction<ReadonlyMap<string, Filter>>>;
  readonly dispatch: Dispatch<Parameters<typeof afterAction>[1]>;
};
