import { seasonFigures } from "../core/seasonFigures";
import type { WorkbookContent } from "./cell";
import { readSeason } from "./readSeason";
import type { SeasonReport } from "./seasonReport";

/** Reads a workbook and computes its season: all that can be, whatever problems there are. */
export function seasonReport(content: WorkbookContent): SeasonReport {
  const reading = readSeason(content);
  return { ...reading, figures: seasonFigures(reading.season) };
}
