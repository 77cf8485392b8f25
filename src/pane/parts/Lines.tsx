import type { ReactNode } from "react";

export type LinesProps = { readonly lines: readonly { readonly name: string; readonly says: ReactNode }[] };

/** Facts by name, one a line. */
export const Lines = ({ lines }: LinesProps) => (
  <dl className="pn-lines">
    {lines.map(({ name, says }) => (
      <div key={name}>
        <dt>{name}</dt>
        <dd>{says}</dd>
      </div>
    ))}
  </dl>
);
