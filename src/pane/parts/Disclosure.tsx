import { useId, useState, type ReactNode } from "react";

export type DisclosureProps = {
  readonly label: ReactNode;
  /** At the right edge of the line, e.g. a figure. */
  readonly aside?: ReactNode;
  readonly look: "section" | "line";
  /** Whether what was opened once stays, unseen, when it is closed: for parts in which something is typed. */
  readonly keeps?: boolean;
  /** Whether it is open as it comes on screen. */
  readonly startsOpen?: boolean;
  readonly children: ReactNode;
};

/** A line that opens what is under it. What is closed is not drawn at all: a season can have thousands of entries. */
export function Disclosure({ label, aside, look, keeps = false, startsOpen = false, children }: DisclosureProps) {
  const [isOpen, setOpen] = useState(startsOpen);
  const [wasOpen, setWasOpen] = useState(startsOpen);
  const toggle = () => {
    setOpen(!isOpen);
    setWasOpen(true);
  };
  const id = useId();
  return (
    <div className={`pn-disclosure pn-disclosure-${look}`}>
      <button type="button" className="pn-disclosure-head" aria-expanded={isOpen} {...(isOpen && { "aria-controls": id })} onClick={toggle}>
        <svg className="pn-chevron" viewBox="0 0 12 12" aria-hidden="true">
          <path d="M4 2.5 8 6l-4 3.5" />
        </svg>
        <span className="pn-disclosure-label">{label}</span>
        {aside !== undefined && <span className="pn-number">{aside}</span>}
      </button>
      {(isOpen || (keeps && wasOpen)) && (
        <div id={id} className="pn-disclosure-inside" hidden={!isOpen}>
          {children}
        </div>
      )}
    </div>
  );
}
