import { Field, Input } from "@fluentui/react-components";
import { useId, useState, type KeyboardEvent } from "react";
import { matching } from "./matching";

export type ItemBoxProps = {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly string[];
  readonly fault: string | undefined;
  readonly change: (value: string) => void;
};

const most = 8;

/** A text box with a list of the names that contain what is typed: arrows choose, Enter takes, Escape closes. */
export function ItemBox({ label, value, choices, fault, change }: ItemBoxProps) {
  const listId = useId();
  const [isOpen, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const typed = value.trim().toLowerCase();
  const exact = choices.some((choice) => choice.toLowerCase() === typed);
  const found = (exact ? choices : matching(choices, typed)).slice(0, most);
  const shows = isOpen && found.length > 0;
  // While the list offers what may be meant, a name half typed is not a fault yet.
  const said = shows && typed !== "" ? undefined : fault;
  const take = (choice: string) => {
    change(choice);
    setOpen(false);
    setActive(-1);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      const step = event.key === "ArrowDown" ? 1 : -1;
      setOpen(true);
      setActive(shows ? (active + step + found.length) % found.length : step === 1 ? 0 : found.length - 1);
    } else if (event.key === "Enter" && shows && active >= 0) take(found[active]!);
    else if (event.key === "Escape" && shows) setOpen(false);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className="pn-itembox">
      <Field label={label} required {...(said !== undefined && { validationMessage: said })}>
        <Input
          role="combobox" aria-autocomplete="list" aria-expanded={shows} autoComplete="off" value={value}
          {...(shows && { "aria-controls": listId })} {...(shows && active >= 0 && { "aria-activedescendant": `${listId}-${active}` })}
          onChange={(_, data) => {
            change(data.value);
            setOpen(true);
            setActive(-1);
          }}
          onKeyDown={onKeyDown} onBlur={() => setOpen(false)} onClick={() => setOpen(true)}
        />
      </Field>
      {shows && (
        <ul id={listId} role="listbox" aria-label={label} className="pn-choices">
          {found.map((choice, index) => (
            <li
              key={choice} id={`${listId}-${index}`} role="option" aria-selected={index === active}
              // Pressed, not clicked: a click would come after the box has lost the focus and closed its list.
              onMouseDown={(event) => {
                event.preventDefault();
                take(choice);
              }}
            >{choice}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
