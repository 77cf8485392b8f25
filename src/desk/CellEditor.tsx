import { useEffect, useId, useLayoutEffect, useRef, useState, type KeyboardEvent } from "react";
import type { At } from "../host/address";
import { meant, offered } from "./cellChoices";
import type { GridBook, DeskSheet } from "./gridBook";
import { offerAt } from "./offers";
import { scrolledTo } from "./scrolledTo";
import type { WorkspaceCommands } from "./workspaceCommands";
import type { Editing } from "./workspace";

export type CellEditorProps = {
  readonly book: GridBook;
  readonly sheet: DeskSheet;
  readonly at: At;
  readonly editing: Editing;
  readonly commands: WorkspaceCommands;
};

/** So many earlier words of the column are enough to choose from. */
const mostEarlier = 8;

/** The field in a cell that is being typed into, with a list of what the cell offers. */
export function CellEditor({ book, sheet, at, editing, commands }: CellEditorProps) {
  const [{ kind, words }] = useState(() => offerAt(book, sheet, at));
  // A list shows itself at once; other words wait for something that they may be.
  const [isOpen, setOpen] = useState(words.length > 0 && (kind === "list" || editing.mode === "type"));
  const [typed, setTyped] = useState(editing.mode === "type");
  // Who takes letters away means what is left.
  const [grew, setGrew] = useState(true);
  const [picked, setPicked] = useState<number | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const list = useId();

  const found = offered(words, typed ? editing.text : "");
  const shown = kind === "earlier" ? found.slice(0, mostEarlier) : found;
  const only = typed && grew && kind !== "earlier" ? meant(words, editing.text) : null;
  const marked = picked ?? (only === null ? -1 : shown.indexOf(only));
  const isListShown = isOpen && shown.length > 0;

  useLayoutEffect(() => {
    field.current?.focus({ preventScroll: true });
    field.current?.setSelectionRange(field.current.value.length, field.current.value.length);
  }, []);
  useEffect(() => {
    const [box, choice] = [document.getElementById(list), document.getElementById(`${list}-${marked}`)];
    if (!isListShown || box === null || choice === null) return;
    box.scrollTop = scrolledTo(box.scrollTop, choice.offsetTop, choice.offsetHeight, box.clientHeight);
  }, [isListShown, marked, list]);

  const choose = (choice: string) => {
    commands.changeText(choice);
    setOpen(false);
  };
  const enterAndGo = (key: string, shift: boolean) => {
    const choice = isListShown && marked >= 0 ? shown[marked] : undefined;
    if (choice !== undefined) commands.changeText(choice);
    commands.commit({ key, shift, ctrl: false });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    const { key, shiftKey, altKey } = event;
    const byOne = key === "ArrowDown" ? 1 : key === "ArrowUp" ? -1 : 0;
    const leavesByArrow = editing.mode === "type" && ["ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight"].includes(key);
    event.stopPropagation();
    if (key === "Enter" || key === "Tab") enterAndGo(key, shiftKey);
    else if (key === "Escape") {
      if (isListShown && marked >= 0) setOpen(false);
      else commands.cancel();
    } else if (key === "ArrowDown" && altKey) setOpen(true);
    else if (byOne !== 0 && isListShown) setPicked((marked + byOne + shown.length + (marked < 0 && byOne < 0 ? 1 : 0)) % shown.length);
    else if (leavesByArrow) enterAndGo(key, shiftKey);
    else if (key === "F2") return;
    else return;
    event.preventDefault();
  };

  return (
    <span className="editor" data-editor="">
      <input
        ref={field}
        value={editing.text}
        aria-label="Entry"
        autoComplete="off"
        spellCheck={false}
        {...(words.length > 0 && {
          role: "combobox",
          "aria-autocomplete": "list",
          "aria-expanded": isListShown,
          "aria-controls": list,
          "aria-activedescendant": isListShown && marked >= 0 ? `${list}-${marked}` : undefined,
        })}
        onChange={(event) => {
          setTyped(true);
          setGrew(event.target.value.length > editing.text.length);
          setPicked(null);
          setOpen(words.length > 0);
          commands.changeText(event.target.value);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => commands.commit(null)}
      />
      {isListShown && (
        <ul id={list} role="listbox" aria-label="Choices" className="choices">
          {shown.map((choice, index) => (
            <li
              key={choice}
              id={`${list}-${index}`}
              role="option"
              aria-selected={index === marked}
              onPointerDown={(event) => event.preventDefault()}
              onClick={() => {
                choose(choice);
                commands.commit({ key: "Enter", shift: false, ctrl: false });
              }}
            >
              {choice}
            </li>
          ))}
        </ul>
      )}
    </span>
  );
}
