import type { NextSeason } from "../workbook/next/nextSeason";
import type { FileInPlace, PlacedFile } from "./fileInPlace";
import type { GridBook } from "./gridBook";

/** A workbook that is open, under the name of its file. */
export type OpenBook = {
  readonly name: string;
  readonly book: GridBook;
  readonly draftId: string;
  /** Where the browser handed the file itself over; the next saving finds it as the last one left it. */
  readonly placed: { current: PlacedFile | null };
};

/** The open workbook, for whoever must save it when the desk itself cannot go on. */
export type AtHand = {
  current: OpenBook | null;
  /** Whether text is typed into a cell that has not been entered yet. */
  isTyping: () => boolean;
  /** Whether a form of the pane is filled in, and its entry not added. */
  isFormTyped: () => boolean;
};

/** What the buttons of the desk do with files. */
export type FileCommands = {
  readonly openFile: (file: File | FileInPlace) => void;
  /** Asks the browser for a file that can be saved in its place; `null` where it can hand none over. */
  readonly pickFile: (() => void) | null;
  readonly openDemo: () => void;
  readonly openProblems: () => void;
  readonly openNew: () => void;
  /** Opens the next season, which lies in no file yet. */
  readonly openNext: (next: NextSeason) => void;
  readonly save: () => void;
  /** Hands a copy to the browser's downloads. */
  readonly saveCopy: () => void;
};
