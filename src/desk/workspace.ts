/** Which view is shown, what is selected in each, and what is being typed. */
import type { At } from "../host/address";
import { selectCell, type Selection } from "./gridSelection";
import type { View } from "./views";

/**
 * A cell being edited. `type`: begun by typing, arrows end it and move on. `edit`: begun by F2 or a double click, arrows
 * move within the text. `where` says whether the focus is in the cell or in the entry line below the grid.
 */
export type Editing = { readonly text: string; readonly mode: "type" | "edit"; readonly where: "cell" | "line" };

export type Workspace = {
  /** The id of the view that is shown. */
  readonly view: string;
  readonly selections: ReadonlyMap<string, Selection>;
  readonly editing: Editing | null;
  /** Grows when the grid should take the focus. */
  readonly focusRequest: number;
  /** After Escape the Tab key leaves the grid, so that nobody is caught in it; any other key ends that. */
  readonly tabLeaves: boolean;
};

export type WorkspaceAction =
  | { readonly do: "show"; readonly view: string; readonly selection?: Selection; readonly focus: boolean }
  | { readonly do: "select"; readonly selection: Selection }
  | { readonly do: "edit"; readonly editing: Editing }
  | { readonly do: "stop-editing"; readonly focus: boolean }
  | { readonly do: "let-tab-leave"; readonly leaves: boolean };

/** A workspace that shows a view with its first cell selected. */
export const newWorkspace = (view: string): Workspace => ({
  view,
  selections: new Map(),
  editing: null,
  focusRequest: 0,
  tabLeaves: false,
});

/** What is selected in a view, which may have moved on its sheet since: nothing before its first cell is. */
export function selectionIn({ id, first }: View, { selections }: Workspace): Selection {
  const known = selections.get(id);
  const isInside = ({ row, column }: At) => row >= first.row && column >= first.column;
  return known !== undefined && [known.active, known.anchor, known.corner].every(isInside) ? known : selectCell(first);
}

/** The workspace after an action. */
export function afterAction(before: Workspace, action: WorkspaceAction): Workspace {
  switch (action.do) {
    case "show": {
      const shown = { ...before, view: action.view, editing: null, tabLeaves: false, focusRequest: focus(before, action.focus) };
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

const withSelection = (workspace: Workspace, selection: Selection): Workspace => ({
  ...workspace,
  selections: new Map(workspace.selections).set(workspace.view, selection),
});
