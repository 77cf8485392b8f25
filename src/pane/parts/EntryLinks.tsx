import { useState } from "react";
import type { EntryRef } from "../../core/row";
import { usePane } from "../paneContext";
import type { EntryTeller } from "./entryView";

export type EntryLinksProps = { readonly entries: readonly EntryRef[]; readonly teller: EntryTeller };

const atOnce = 20;

/** The entries that made a figure; a click shows the entry in the workbook. */
export function EntryLinks({ entries, teller }: EntryLinksProps) {
  const { jump } = usePane();
  const [showsAll, setShowsAll] = useState(false);
  if (entries.length === 0) return <p className="pn-note">Worked out from the lines above; it has no entry of its own.</p>;
  const shown = showsAll ? entries : entries.slice(0, atOnce);
  return (
    <>
      <ul className="pn-entries">
        {shown.map(teller).map(({ ref, place, cell, says }) => (
          <li key={place}>
            <button type="button" className="pn-link" onClick={() => jump(ref)}>
              {place}
            </button>
            {cell !== "" && <span className="pn-note"> ({cell})</span>}
            {says !== "" && <span> {says}</span>}
          </li>
        ))}
      </ul>
      {shown.length < entries.length && (
        <button type="button" className="pn-link" onClick={() => setShowsAll(true)}>
          Show all {entries.length} entries
        </button>
      )}
    </>
  );
}
