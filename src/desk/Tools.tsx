import { useEffect, useRef, useState, type KeyboardEvent } from "react";
import type { WorkspaceCommands } from "./workspaceCommands";

export type ToolsProps = {
  readonly commands: WorkspaceCommands;
  /** Whether the active cell is in a table, whose entries can be added, taken away and sorted. */
  readonly isInTable: boolean;
  /** Whether the table is shown alone, so that entries can be hidden from sight. */
  readonly canFilter: boolean;
  readonly canPrint: boolean;
  readonly print: () => void;
  /** What is hidden, in words; `null` while nothing is. */
  readonly filterWords: string | null;
  /** Grows with each wish for the field to find or to filter by. */
  readonly asked: { readonly field: "find" | "filter" | null; readonly times: number };
  readonly ask: (field: "find" | "filter" | null) => void;
};

type Tool = { readonly name: string; readonly keys: string; readonly does: string; readonly isOff?: boolean; readonly use: () => void };

/** What can be done with the table that is shown. Arrow keys go from one to the next; each has keys of its own, which its tooltip names. */
export function Tools({ commands, isInTable, canFilter, canPrint, print, filterWords, asked, ask }: ToolsProps) {
  const [isOpen, setOpen] = useState(false);
  const bar = useRef<HTMLDivElement>(null);
  const tools: readonly Tool[] = [
    { name: "Insert", keys: "Insert", does: "a blank entry above each one selected", isOff: !isInTable, use: commands.insertEntries },
    { name: "Delete", keys: "Control+Delete", does: "the selected entries", isOff: !isInTable, use: commands.deleteEntries },
    {
      name: "Fill down",
      keys: "Control+D",
      does: "the first selected cell into those below; with one cell, the one above into it",
      use: commands.fillDown,
    },
    {
      name: "Sort up",
      keys: "Alt+Shift+ArrowUp",
      does: "by this column, smallest or A first",
      isOff: !isInTable,
      use: () => commands.sort(false),
    },
    {
      name: "Sort down",
      keys: "Alt+Shift+ArrowDown",
      does: "by this column, largest or Z first",
      isOff: !isInTable,
      use: () => commands.sort(true),
    },
    {
      name: "Filter",
      keys: "Control+Shift+F",
      does: "show some entries only; figures still count all",
      isOff: !canFilter,
      use: () => ask("filter"),
    },
    { name: "Find", keys: "Control+F", does: "in all tables and sheets", use: () => ask("find") },
    { name: "Narrower", keys: "Alt+Shift+ArrowLeft", does: "this column", use: () => commands.widen(-1) },
    { name: "Wider", keys: "Alt+Shift+ArrowRight", does: "this column", use: () => commands.widen(1) },
    { name: "Print", keys: "Control+P", does: "what is shown here", isOff: !canPrint, use: print },
  ];
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    if (by === 0 || event.altKey || event.shiftKey) return;
    const buttons = [...(bar.current?.querySelectorAll("button") ?? [])];
    const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
    if (at < 0) return;
    event.preventDefault();
    buttons[(at + by + buttons.length) % buttons.length]?.focus();
  };
  return (
    <div className="tools" data-open={isOpen ? "" : undefined}>
      <button type="button" className="tools-open" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {isOpen ? "Hide tools" : "Tools"}
      </button>
      <div ref={bar} className="tool-bar" role="toolbar" aria-label="What to do with the table" onKeyDown={onKeyDown}>
        {tools.map(({ name, keys, does, isOff = false, use }, index) => (
          <button
            key={name}
            type="button"
            aria-disabled={isOff}
            aria-keyshortcuts={keys}
            title={`${name} ${does} (${keys.replace("Control", "Ctrl").replace("Arrow", "")})`}
            tabIndex={index === 0 ? 0 : -1}
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => {
              if (!isOff) use();
            }}
          >
            {name}
          </button>
        ))}
      </div>
      {asked.field !== null && (
        <Asked key={asked.field} field={asked.field} times={asked.times} commands={commands} close={() => ask(null)} />
      )}
      {filterWords !== null && (
        <p className="filtered">
          {filterWords}{" "}
          <button
            type="button"
            onClick={() => {
              commands.filter(null, false);
              commands.focusGrid();
            }}
          >
            Show all
          </button>
        </p>
      )}
    </div>
  );
}

/** The field for what is looked for: Enter goes on, Escape closes it. */
function Asked({
  field,
  times,
  commands,
  close,
}: {
  readonly field: "find" | "filter";
  readonly times: number;
  readonly commands: WorkspaceCommands;
  readonly close: () => void;
}) {
  const [text, setText] = useState("");
  const [isAnywhere, setAnywhere] = useState(true);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, [times]);
  const apply = (by: 1 | -1) => {
    if (field === "find") commands.find(text, by);
    else if (commands.filter(text, isAnywhere)) close();
  };
  return (
    <form
      className="asked"
      role="search"
      aria-label={field === "find" ? "Find" : "Filter"}
      onSubmit={(event) => {
        event.preventDefault();
        apply(1);
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") {
          close();
          commands.focusGrid();
        } else if (event.key === "Enter" && event.shiftKey) apply(-1);
        else if (event.key === "F3") apply(event.shiftKey ? -1 : 1);
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    >
      <label>
        {field === "find" ? "Find in all tables" : "Show entries with"}
        <input ref={input} value={text} onChange={(event) => setText(event.target.value)} autoComplete="off" spellCheck={false} />
      </label>
      {field === "filter" && (
        <label className="tick">
          <input type="checkbox" checked={!isAnywhere} onChange={(event) => setAnywhere(!event.target.checked)} /> in this column only
        </label>
      )}
      {field === "find" ? (
        <>
          <button type="button" onClick={() => apply(-1)}>
            Previous
          </button>
          <button type="submit">Next</button>
        </>
      ) : (
        <button type="submit">Show</button>
      )}
      <button
        type="button"
        onClick={() => {
          close();
          commands.focusGrid();
        }}
      >
        Close
      </button>
    </form>
  );
}
