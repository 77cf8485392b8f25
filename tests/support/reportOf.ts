import type { Season } from "../../src/core/season";
import { seasonFigures } from "../../src/core/seasonFigures";
import type { SeasonReport } from "../../src/workbook/seasonReport";

/** The report of a season without a workbook behind it: complete, and with no cell to jump to. */
export const reportOf = (season: Season): SeasonReport => ({
  season,
  figures: seasonFigures(season),
  problems: [],
  problemsOf: () => [],
  placeOf: () => null,
  tablesFound: new Set(["Crops", "Fields"]),
});
