import type { GridBook } from "./gridBook";

/** A workbook that is open, under the name of its file. */
export type OpenBook = { readonly name: string; readonly book: GridBook };

/** The open workbook, for whoever must save it when the desk itself cannot go on. */
export type AtHand = {
  current: OpenBook | null;
  /** Whether text is typed into a cell that has not been entered yet. */
  isTyping: () => boolean;
};

/** What the buttons of the desk do with files. */
export type FileCommands = {
  readonly openFile: (file: File) => void;
  readonly openDemo: () => void;
  readonly openProblems: () => void;
  readonly openNew: () => void;
  readonly save: () => void;
};
