import { memo, useCallback, useEffect, useMemo, useRef, useState } from "react";
import { keptInPage } from "../pane/kept";
import { Pane } from "../pane/Pane";
import type { PaneTheme } from "../pane/theme";
import type { NextSeason } from "../workbook/next/nextSeason";
import type { SeasonReport } from "../workbook/seasonReport";
import { cellFaults, faultsOn } from "./cellFaults";
import type { AtHand, FileCommands, OpenBook } from "./openBook";
import { EntryLine } from "./EntryLine";
import { Printed } from "./Printed";
import { countShown, type Filter } from "./rowsShown";
import { selectedBlock, type Selection } from "./gridSelection";
import { selectionWords } from "./selectionWords";
import { SheetCharts } from "./SheetCharts";
import { SheetGrid } from "./SheetGrid";
import { Rail } from "./Rail";
import { tableAt } from "./tableAt";
import { Tools } from "./Tools";
import { TopBar } from "./TopBar";
import { useWorkspace } from "./useWorkspace";
import type { View } from "./views";

export type WorkbookViewProps = {
  readonly open: OpenBook;
  readonly files: FileCommands;
  readonly theme: PaneTheme;
  readonly atHand: AtHand;
  readonly isDraftKept: boolean;
};

/** As much of a key that is pressed as is looked at, by React or by the browser itself. */
type KeyPressed = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey" | "preventDefault"> & {
  readonly target: EventTarget | null;
};

/** The pane is drawn by its own readings of the workbook, not at every key pressed in the grid. */
const PaneBeside = memo(Pane);

/** An open workbook: the rail of its tables, the one that is shown with the entry line below, and the pane beside. */
export function WorkbookView({ open: { book, name }, files, theme, atHand, isDraftKept }: WorkbookViewProps) {
  const [status, setStatus] = useState("");
  // The same words twice would not be announced again; an invisible mark tells them apart.
  const say = useCallback((words: string) => setStatus((before) => (before === words && words !== "" ? `${words}\u200b` : words)), []);
  const [report, setReport] = useState<SeasonReport | null>(null);
  const faults = useMemo(() => (report === null ? new Map() : cellFaults(report)), [report]);
  const [asked, setAsked] = useState<{ readonly field: "find" | "filter" | null; readonly times: number }>({ field: null, times: 0 });
  const [printing, setPrinting] = useState(false);
  const ask = useCallback((tool: "find" | "filter" | "print" | null) => {
    if (tool === "print") setPrinting(true);
    else setAsked(({ times }) => ({ field: tool, times: times + 1 }));
  }, []);
  const { version, views, view, selection, workspace, commands, filter, isBlockSelected } = useWorkspace(book, say, ask);
  // On a narrow page one of the two is in view: where there is no table yet, that is the pane, where a season begins.
  const [side, setSide] = useState<"sheet" | "pane">(() => (views.some(({ table }) => table !== null) ? "sheet" : "pane"));
  const faultsHere = faultsOn(faults, view.name);
  // A table shows its entries; charts stand on sheets of results and of the grower's own.
  const charts = view.table === null ? book.charts(view.name) : [];
  const { openDemo: askForDemo, openNext: askForNext } = files;
  const openNext = useCallback(
    (next: NextSeason) => {
      askForNext(next);
      return Promise.resolve(null);
    },
    [askForNext],
  );
  const openDemo = useCallback(() => {
    askForDemo();
    return Promise.resolve(null);
  }, [askForDemo]);
  const isTyping = workspace.editing !== null && workspace.editing.text !== book.cell(view.name, selection.active).entry;
  atHand.isTyping = commands.isTyping;
  const [kept] = useState(keptInPage);
  atHand.isFormTyped = kept.holdsTyped;
  const engineFault = book.engineFault();

  // The pane asked for a cell, or the user did: on a narrow page the sheet must be in view for that.
  useEffect(() => book.onShow(() => setSide("sheet")), [book]);

  // What is printed is drawn first; it goes when the browser has taken it over.
  useEffect(() => {
    if (!printing) return undefined;
    const end = () => setPrinting(false);
    window.addEventListener("afterprint", end);
    window.print();
    return () => window.removeEventListener("afterprint", end);
  }, [printing]);

  const onKeyDown = (event: KeyPressed) => {
    const target = event.target as HTMLElement;
    const isTyping = target.closest("input, textarea, select, [contenteditable=true]") !== null;
    // In the pane finding and printing are the browser's own.
    const isAtTable = target.closest(".work") !== null;
    const ctrl = (event.ctrlKey || event.metaKey) && !event.altKey;
    const key = event.key.toLowerCase();
    if (event.key === "F6") goToNextPart(event.shiftKey ? -1 : 1);
    else if (ctrl && key === "s") {
      commands.commit(null);
      files.save();
    } else if (ctrl && key === "f" && isAtTable) ask(event.shiftKey && view.table !== null ? "filter" : "find");
    else if (ctrl && key === "p" && isAtTable) ask("print");
    else if (ctrl && !isTyping && key === "z") (event.shiftKey ? commands.redo : commands.undo)();
    else if (ctrl && !isTyping && key === "y") commands.redo();
    else return;
    event.preventDefault();
  };

  // Where the focus is nowhere, or in a message above, the keys mean the same: Control and S would else save the page, not the workbook.
  const atOnce = useRef(onKeyDown);
  atOnce.current = onKeyDown;
  useEffect(() => {
    const elsewhere = (event: globalThis.KeyboardEvent) => {
      const isInside = event.target instanceof Element && event.target.closest(".desk, dialog") !== null;
      if (!isInside && document.querySelector("dialog[open]") === null) atOnce.current(event);
    };
    window.addEventListener("keydown", elsewhere);
    return () => window.removeEventListener("keydown", elsewhere);
  }, []);

  return (
    <div className="desk" data-theme={theme} data-view={side} onKeyDown={onKeyDown}>
      <nav className="skips" aria-label="Skip">
        <a
          href="#sheet-panel"
          onClick={(event) => {
            event.preventDefault();
            setSide("sheet");
            commands.select(selection);
          }}
        >
          Skip to the sheet
        </a>
        <a
          href="#pane"
          onClick={(event) => {
            event.preventDefault();
            setSide("pane");
            focusLater("pane");
          }}
        >
          Skip to the pane
        </a>
      </nav>
      <TopBar
        name={name}
        hasChanges={isTyping || book.hasChanges()}
        isDraftKept={isDraftKept}
        book={book}
        files={files}
        commands={commands}
        table={tableToGrow(view, selection)}
        view={side}
        setView={setSide}
      />
      <main className="both">
        <section className="work" aria-label="Workbook">
          <div className="bench">
            <Rail views={views} shown={view} show={commands.show} />
            <div id="sheet-panel" className="sheet-panel">
              <Tools
                commands={commands}
                isInTable={(view.table ?? tableAt(view, selection.active) ?? null) !== null}
                canFilter={view.table !== null}
                canPrint
                print={() => setPrinting(true)}
                filterWords={
                  filter === undefined || view.rowsShown === undefined || view.rowsShown === null ? null : filterWords(view, filter)
                }
                asked={asked}
                ask={ask}
              />
              <SheetGrid
                key={view.id}
                book={book}
                sheet={view}
                faults={faultsHere}
                version={version}
                selection={selection}
                editing={workspace.editing}
                focusRequest={workspace.focusRequest}
                commands={commands}
              />
              {charts.length > 0 && <SheetCharts charts={charts} />}
            </div>
          </div>
          <EntryLine
            book={book}
            currency={report?.season.settings.currency ?? ""}
            sheet={view}
            faults={faultsHere}
            active={selection.active}
            editing={workspace.editing}
            commands={commands}
          />
          <div className="status" role="status">
            {engineFault !== null && `Formulas cannot be worked out here (${engineFault}). Values that may be old are marked. `}
            {status !== "" ? status : isBlockSelected ? selectionWords(book, view, selectedBlock(selection)) : ""}
          </div>
          <p id="grid-help" className="unseen">
            Type to enter, F2 to edit, Insert for a blank entry above, Control Delete to delete entries, Control D to fill down, Control F
            to find, Control Shift F to filter, Alt Shift and arrows to sort by the column or change its width, Control P to print, Escape
            then Tab to leave the grid, F6 for the next part of the page.
          </p>
        </section>
        {printing && <Printed book={book} view={view} farm={name} charts={charts} />}
        <section id="pane" className="pane" aria-label="Figures" tabIndex={-1}>
          <PaneBeside host={book.host} kept={kept} openDemo={openDemo} openNext={openNext} onReport={setReport} />
        </section>
      </main>
    </div>
  );
}

/** What a filter shows and hides, in words. */
function filterWords(view: View, { text, column }: Filter): string {
  const { shown, hidden } = countShown(view, view.rowsShown ?? []);
  return (
    `${shown} of ${shown + hidden} entries are shown, those with “${text}”${column === null ? "" : " in one column"}; ${hidden} are ` +
    "hidden. Figures count all of them."
  );
}

/** The table that an entry is added to: the one that is shown or selected, else the only one of the sheet. */
function tableToGrow(view: View, { active }: Selection): string | null {
  const only = view.tables.length === 1 ? view.tables[0] : undefined;
  return (view.table ?? tableAt(view, active) ?? only)?.name ?? null;
}

const partsOfThePage = [".top .group button", ".rail [aria-current=true]", ".sheet [data-active]", "#pane"];

/** F6: from the buttons to the rail, the grid, the pane, and round again. */
function goToNextPart(by: 1 | -1): void {
  const active = document.activeElement;
  const at = [".top", ".rail", ".work .sheet, .entry-line", "#pane"].findIndex((part) => (active?.closest(part) ?? null) !== null);
  for (let step = 1; step <= partsOfThePage.length; step += 1) {
    const next = partsOfThePage[(at + by * step + partsOfThePage.length * 2) % partsOfThePage.length];
    const element = next === undefined ? null : document.querySelector<HTMLElement>(next);
    if (element !== null && element.offsetParent !== null) return element.focus();
  }
}

const focusLater = (id: string): void => void requestAnimationFrame(() => document.getElementById(id)?.focus());
