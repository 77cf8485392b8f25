import type { EntryRef } from "../../core/row";
import { cellOf } from "../../workbook/cellName";
import type { Place } from "../../workbook/problem";
import { usePane } from "../paneContext";

/** Words that show a cell of the workbook when they are clicked, and the cell's name in the sheet, to find it on paper. */
export function CellLink({ at, words }: { readonly at: Place | EntryRef; readonly words: string }) {
  const { jump, watch } = usePane();
  const report = watch.state().reading?.report;
  const cell = report === undefined ? "" : cellOf(report, at);
  return (
    <>
      <button type="button" className="pn-link" onClick={() => jump(at)}>
        {words}
      </button>
      {cell !== "" && <span className="pn-note"> ({cell})</span>}
    </>
  );
}
