import { useId, useState, type ReactNode } from "react";

export type FoldsProps = { readonly folds: readonly { readonly name: string; readonly content: () => ReactNode }[] };

/** A few parts beside each other, of which one is open beneath; what is closed is not drawn at all. */
export function Folds({ folds }: FoldsProps) {
  const id = useId();
  const [opened, open] = useState<string | null>(null);
  const shown = folds.find(({ name }) => name === opened);
  return (
    <div className="pn-folds">
      <p className="pn-fold-heads">
        {folds.map(({ name }) => (
          <button
            key={name}
            type="button"
            className="pn-fold-head"
            aria-expanded={name === opened}
            {...(name === opened && { "aria-controls": id })}
            onClick={() => open(name === opened ? null : name)}
          >
            <svg className="pn-chevron" viewBox="0 0 12 12" aria-hidden="true">
              <path d="M4 2.5 8 6l-4 3.5" />
            </svg>
            {name}
          </button>
        ))}
      </p>
      {shown !== undefined && (
        <div id={id} className="pn-fold">
          {shown.content()}
        </div>
      )}
    </div>
  );
}
