import { Button } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { helpAddress } from "../pane/helpAddress";
import { Coin } from "../pane/parts/Coin";
import type { FileCommands } from "./openBook";
import { acceptedFiles } from "./files";
import type { GridBook } from "./gridBook";
import type { WorkspaceCommands } from "./workspaceCommands";

export type TopBarProps = {
  readonly name: string;
  readonly hasChanges: boolean;
  readonly isDraftKept: boolean;
  readonly book: GridBook;
  readonly files: FileCommands;
  readonly commands: WorkspaceCommands;
  /** The table that a row would be added to. */
  readonly table: string | null;
  readonly view: "sheet" | "pane";
  readonly setView: (view: "sheet" | "pane") => void;
};

/** The file that is open and what can be done with it. */
export function TopBar({ name, hasChanges, isDraftKept, book, files, commands, table, view, setView }: TopBarProps) {
  const picker = useRef<HTMLInputElement>(null);
  // On a narrow page what is seldom done with files waits behind a button; elsewhere that button is not there.
  const [isFileOpen, setFileOpen] = useState(false);
  return (
    <header className="top" data-file={isFileOpen ? "" : undefined}>
      <h1>
        <Coin size={22} />
        Pennyacre
      </h1>
      <span className="file" role="status">
        {name}
        {hasChanges && <span className="unsaved"> – changes not saved</span>}
        {hasChanges && isDraftKept && <span className="kept">, draft kept</span>}
      </span>
      <div className="views">
        <Button
          size="small"
          aria-pressed={view === "sheet"}
          appearance={view === "sheet" ? "primary" : "secondary"}
          onClick={() => setView("sheet")}
        >
          Sheets
        </Button>
        <Button
          size="small"
          aria-pressed={view === "pane"}
          appearance={view === "pane" ? "primary" : "secondary"}
          onClick={() => setView("pane")}
        >
          Figures
        </Button>
      </div>
      <div className="group" role="group" aria-label="Entries">
        <Button
          size="small"
          disabledFocusable={book.toUndo() === null}
          title={titleOf("Undo", book.toUndo()?.words, "Ctrl+Z")}
          onClick={commands.undo}
        >
          Undo
        </Button>
        <Button
          size="small"
          disabledFocusable={book.toRedo() === null}
          title={titleOf("Redo", book.toRedo()?.words, "Ctrl+Y")}
          onClick={commands.redo}
        >
          Redo
        </Button>
        <Button
          size="small"
          disabledFocusable={table === null}
          onClick={() => {
            if (table !== null) commands.addRow(table);
          }}
        >
          Add an entry{table !== null && <span className="to-table">{` to ${table.replaceAll("_", " ")}`}</span>}
        </Button>
      </div>
      <div className="group" role="group" aria-label="File">
        <input
          ref={picker}
          type="file"
          accept={acceptedFiles}
          hidden
          aria-label="Workbook file"
          onChange={(event) => {
            const file = event.target.files?.[0];
            // Emptied, so that the same file can be picked again.
            event.target.value = "";
            if (file !== undefined) files.openFile(file);
          }}
        />
        <Button size="small" className="file-open" aria-expanded={isFileOpen} onClick={() => setFileOpen(!isFileOpen)}>
          File
        </Button>
        <Button size="small" className="seldom" onClick={() => (files.pickFile ?? (() => picker.current?.click()))()}>
          Open…
        </Button>
        <Button size="small" appearance={hasChanges ? "primary" : "secondary"} onClick={files.save}>
          Save
        </Button>
        <Button size="small" className="seldom" onClick={files.openNew}>
          New
        </Button>
        <Button size="small" className="seldom" onClick={files.openDemo}>
          Demo season
        </Button>
        <Button size="small" className="seldom" onClick={files.openProblems}>
          Demo with entries to fix
        </Button>
        <a className="help seldom" href={helpAddress()} target="_blank" rel="noreferrer">
          Help
        </a>
      </div>
    </header>
  );
}

const titleOf = (does: string, words: string | undefined, keys: string): string =>
  words === undefined ? `Nothing to ${does.toLowerCase()}` : `${does}: ${words} (${keys})`;
