import type { PageProps } from "../page";
import { usePane } from "../paneContext";
import { PlanterPart } from "../planter/PlanterPart";
import { TablesPart } from "../setup/TablesPart";
import { PastSeasonsPart } from "../years/PastSeasonsPart";
import { HybridsPart } from "./HybridsPart";
import { OpensWithPart } from "./OpensWithPart";
import { ResultSheetsPart } from "./ResultSheetsPart";
import { WeatherPart } from "./WeatherPart";
import { WeedsPart } from "./WeedsPart";

/** What is wanted now and then: planter, hybrids, weeds, weather, sheets to print, the tables of the workbook, and the help. */
export function MorePage({ report }: PageProps) {
  const { open } = usePane();
  return (
    <>
      <PlanterPart report={report} />
      <HybridsPart report={report} />
      <WeedsPart report={report} />
      <WeatherPart report={report} />
      <PastSeasonsPart report={report} />
      {report.figures.crops.length > 0 && <ResultSheetsPart report={report} />}
      <TablesPart report={report} />
      <OpensWithPart />
      <section className="pn-card" aria-label="Help">
        <p>
          <button type="button" className="pn-link" onClick={() => open("help")}>
            Help
          </button>
          : layers, tables, units, undo, printing, privacy, cautions, words.
        </p>
      </section>
    </>
  );
}
