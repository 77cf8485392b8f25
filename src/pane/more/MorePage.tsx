import type { PageProps } from "../page";
import { TablesPart } from "../setup/TablesPart";
import { ResultSheetsPart } from "./ResultSheetsPart";
import { WeatherPart } from "./WeatherPart";
import { WeedsPart } from "./WeedsPart";

/** What is wanted now and then: the tables of the workbook, and sheets to print. */
export function MorePage({ report }: PageProps) {
  return (
    <>
      <TablesPart report={report} />
      <WeedsPart report={report} />
      <WeatherPart report={report} />
      {report.figures.crops.length > 0 && <ResultSheetsPart report={report} />}
    </>
  );
}
