import { createContext, useContext } from "react";
import type { Layer } from "../core/kinds";
import type { EntryRef } from "../core/row";
import type { WorkbookHost } from "../host/workbookHost";
import type { NextSeason } from "../workbook/next/nextSeason";
import type { Place, Subject } from "../workbook/problem";
import { failureWords, type Failure } from "./failure";
import type { ChangeStart } from "./change/changeStart";
import type { Format } from "./format";
import type { KeptTyping } from "./kept";
import type { PageId } from "./page";
import type { SeasonWatch } from "./seasonWatch";

/** What the pane tells its user now; `failed` stays until it is dismissed or something else is told. */
export type Notice = { readonly tone: "done" | "failed"; readonly text: string; readonly again?: () => void };

/** @throws HostError where the demo workbook cannot be opened */
export type OpenDemo = () => Promise<string | null>;

/** @throws HostError where no workbook can be opened */
export type OpenNext = (next: NextSeason) => Promise<string | null>;

/** What every part of the pane may need and do. */
export type PaneTools = {
  readonly host: WorkbookHost;
  readonly watch: SeasonWatch;
  readonly format: Format;
  /** Opens the demo workbook and answers what to tell of it, if anything; left out where the host has none. */
  readonly openDemo?: OpenDemo;
  /** Opens a new workbook with the next season and answers what to tell of it, if anything; left out where the host can open none. */
  readonly openNext?: OpenNext;
  /** Shows an entry, or the place of a problem, in the workbook. */
  readonly jump: (place: Place | EntryRef) => void;
  readonly tell: (notice: Notice | null) => void;
  /** What is typed and not entered yet. */
  readonly kept: KeptTyping;
  /** The cost layer that the pages speak of, chosen once for all of them. */
  readonly layer: Layer;
  readonly chooseLayer: (layer: Layer) => void;
  /** Opens a page and takes the focus there; `field`: the page Fields at that field's own page. */
  readonly open: (page: PageId, field?: string) => void;
  /** Opens the page Changes with a new change begun. */
  readonly compare: (start: ChangeStart) => void;
  /** The change that was begun so last, and how many were; `null` before the first. */
  readonly changeStart: (ChangeStart & { readonly time: number }) | null;
  /** The field whose own page is open; `null`: the list of all. */
  readonly field: string | null;
  readonly showField: (field: string | null) => void;
  /** Opens the page of entries to fix, of one subject or of all. */
  readonly showProblems: (of: Subject | null) => void;
  /** Hands a fault of ours to the error boundary. */
  readonly fault: (error: unknown) => void;
};

export const PaneContext = createContext<PaneTools | null>(null);

/** The tools of the pane that the component stands in. */
export function usePane(): PaneTools {
  const tools = useContext(PaneContext);
  if (tools === null) throw new Error("usePane is called outside a pane");
  return tools;
}

/** A failure as a notice that offers to try again where that may help. */
export const failureNotice = (failure: Failure, retry: () => void): Notice => ({
  tone: "failed",
  text: failureWords(failure),
  ...(failure.again && { again: retry }),
});
