import { toCheck, toFix } from "../../workbook/problem";
import type { SeasonReport } from "../../workbook/seasonReport";
import { WarningMark } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { entriesLine } from "./entriesWords";

/** One line above every page that leads to the entries to fix; nothing where there are none. */
export function EntriesLine({ report }: { readonly report: SeasonReport }) {
  const { showProblems, format } = usePane();
  const words = entriesLine(toFix(report.problems).length, toCheck(report.problems).length, format);
  if (words === "") return null;
  return (
    <button type="button" className="pn-entries-line" onClick={() => showProblems(null)}>
      <WarningMark />
      <span>{words}</span>
      <span className="pn-entries-show">Show</span>
    </button>
  );
}
