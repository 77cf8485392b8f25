import { useState } from "react";
import type { SeasonReport } from "../../workbook/seasonReport";
import { usePane } from "../paneContext";
import { changedRow } from "./changedRow";
import { entryEffect } from "./entryEffect";

/** One line after an entry, wherever it was made: what it did. Silent at first, and where more than one row changed. */
export function EffectLine({ report }: { readonly report: SeasonReport }) {
  const { watch, format, layer } = usePane();
  const reading = watch.state().reading;
  const [seen, see] = useState({ reading, words: "" });
  if (reading !== null && reading.report === report && seen.reading !== reading) {
    const change = seen.reading === null ? "none" : changedRow(seen.reading.content, reading.content);
    see({
      reading,
      words:
        change === "none"
          ? seen.words
          : change === "several" || seen.reading === null
            ? ""
            : entryEffect(change, seen.reading.report, report, layer, format),
    });
  }
  return (
    <p className="pn-entry-effect" role="status">
      {seen.words}
    </p>
  );
}
