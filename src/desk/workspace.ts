/** Which sheet is shown, what is selected on each, and what is being typed. */
import type { GridSheet } from "./gridBook";
import { selectCell, type Selection } from "./selection";

/**
 * A cell being edited. `type`: begun by typing, arrows end it and move on. `edit`: begun by F2 or a double click, arrows
 * move within the text. `where` says whether the focus is in the cell or in the entry line above the grid.
 */
export type Editing = { readonly text: string; readonly mode: "type" | "edit"; readonly where: "cell" | "line" };

export type Workspace = {
  readonly sheet: string;
  readonly selections: ReadonlyMap<string, Selection>;
  readonly editing: Editing | null;
  /** Grows when the grid should take the focus. */
  readonly focusRequest: number;
  /** After Escape the Tab key leaves the grid, so that nobody is caught in it; any other key ends that. */
  readonly tabLeaves: boolean;
};

export type WorkspaceAction =
  | { readonly do: "show"; readonly sheet: string; readonly selection?: Selection; readonly focus: boolean }
  | { readonly do: "select"; readonly selection: Selection }
  | { readonly do: "edit"; readonly editing: Editing }
  | { readonly do: "stop-editing"; readonly focus: boolean }
  | { readonly do: "let-tab-leave"; readonly leaves: boolean };

const lastRowOfExcel = 1_048_576;
const lastColumnOfExcel = 16_384;

/** How many rows and columns are offered: those in use, those around the active cell, and some to go on. */
export const shownSize = (sheet: GridSheet, { active, corner }: Selection) => ({
  rows: Math.min(lastRowOfExcel, Math.max(sheet.used.rows, active.row, corner.row) + 50),
  columns: Math.min(lastColumnOfExcel, Math.max(sheet.used.columns, active.column, corner.column, 10) + 4),
});

/** The sheet to begin with: the first that holds something. */
export const firstSheet = (sheets: readonly GridSheet[]): string => (sheets.find(({ used }) => used.rows > 0) ?? sheets[0])?.name ?? "";

/** A workspace that shows a sheet with its first cell selected. */
export const newWorkspace = (sheet: string): Workspace =>
  ({ sheet, selections: new Map(), editing: null, focusRequest: 0, tabLeaves: false });

/** What is selected on the sheet that is shown. */
export const selectionOf = ({ sheet, selections }: Workspace): Selection => selections.get(sheet) ?? selectCell({ row: 0, column: 0 });

/** The workspace after an action. */
export function afterAction(before: Workspace, action: WorkspaceAction): Workspace {
  switch (action.do) {
    case "show": {
      const shown = { ...before, sheet: action.sheet, editing: null, tabLeaves: false, focusRequest: focus(before, action.focus) };
      return action.selection === undefined ? shown : withSelection(shown, action.selection);
    }
    case "select":
      return { ...withSelection(before, action.selection), editing: null, tabLeaves: false, focusRequest: focus(before, true) };
    case "edit":
      return { ...before, editing: action.editing, tabLeaves: false };
    case "stop-editing":
      return { ...before, editing: null, focusRequest: focus(before, action.focus) };
    case "let-tab-leave":
      return before.tabLeaves === action.leaves ? before : { ...before, tabLeaves: action.leaves };
  }
}

const focus = ({ focusRequest }: Workspace, wanted: boolean): number => (wanted ? focusRequest + 1 : 0);

const withSelection = (workspace: Workspace, selection: Selection): Workspace =>
  ({ ...workspace, selections: new Map(workspace.selections).set(workspace.sheet, selection) });
