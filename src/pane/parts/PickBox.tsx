import { useId, useState, type KeyboardEvent } from "react";
import { matching } from "./matching";

export type PickBoxProps = {
  readonly label: string;
  /** Left out: the label stands above the box; else it is said to screen readers alone. */
  readonly isLabelHidden?: boolean;
  readonly value: string;
  readonly choices: readonly string[];
  readonly fault?: string | undefined;
  readonly required?: boolean;
  /** A number, for which the list only offers what was meant before: arrows choose it, and what is typed is never completed. */
  readonly isNumber?: boolean;
  readonly change: (value: string) => void;
};

const most = 8;

/**
 * A text box over which a list of the names that contain what is typed hangs, pushing nothing. The first that fits is chosen already:
 * Enter and Tab take it, arrows choose another, Escape leaves what is typed as it is.
 */
export function PickBox({ label, isLabelHidden = false, value, choices, fault, required = false, isNumber = false, change }: PickBoxProps) {
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  const [active, setActive] = useState(0);
  const typed = value.trim().toLowerCase();
  const exact = choices.some((choice) => choice.toLowerCase() === typed);
  const found = (isNumber || exact || typed === "" ? choices : matching(choices, typed)).slice(0, most);
  const shows = isOpen && found.length > 0;
  // While the list offers what may be meant, a name half typed is not a fault yet.
  const said = shows && typed !== "" ? undefined : fault;
  const take = (choice: string) => {
    change(choice);
    setOpen(false);
    setActive(0);
  };
  /** What Tab and Enter take: nothing while nothing is typed and nothing was chosen by an arrow. */
  const offered = shows && !exact && active >= 0 ? found[active] : undefined;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      const step = event.key === "ArrowDown" ? 1 : -1;
      setOpen(true);
      setActive(shows && active >= 0 ? (active + step + found.length) % found.length : step === 1 ? 0 : found.length - 1);
    } else if (event.key === "Enter" && shows && active >= 0) take(found[active]!);
    else if (event.key === "Tab" && !event.shiftKey && offered !== undefined) return take(offered);
    else if (event.key === "Escape" && shows) setOpen(false);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className="pn-pickbox">
      <label htmlFor={id} className={isLabelHidden ? "pn-for-readers" : "pn-box-label"}>
        {label}
        {required && !isLabelHidden && (
          <span aria-hidden="true" className="pn-needed">
            needed
          </span>
        )}
      </label>
      <input
        id={id}
        className="pn-input"
        role="combobox"
        inputMode={isNumber ? "decimal" : undefined}
        aria-autocomplete="list"
        aria-expanded={shows}
        autoComplete="off"
        value={value}
        required={required}
        {...(shows && { "aria-controls": `${id}-list` })}
        {...(shows && active >= 0 && { "aria-activedescendant": `${id}-${active}` })}
        {...(said !== undefined && { "aria-invalid": true, "aria-describedby": `${id}-fault` })}
        onChange={({ target }) => {
          change(target.value);
          setOpen(!isNumber);
          setActive(target.value.trim() === "" ? -1 : 0);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => setOpen(false)}
        onClick={() => {
          setOpen(true);
          setActive(-1);
        }}
      />
      {said !== undefined && (
        <p id={`${id}-fault`} className="pn-box-fault">
          {said}
        </p>
      )}
      {shows && (
        <ul id={`${id}-list`} role="listbox" aria-label={label} className="pn-choices">
          {found.map((choice, index) => (
            <li
              key={choice}
              id={`${id}-${index}`}
              role="option"
              aria-selected={index === active}
              // Pressed, not clicked: a click would come after the box has lost the focus and closed its list.
              onMouseDown={(event) => {
                event.preventDefault();
                take(choice);
              }}
            >
              {choice}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
