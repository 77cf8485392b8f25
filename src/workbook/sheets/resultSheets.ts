import { accounts } from "../../core/accounts";
import type { ResultSheet } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { breakEvenSheet } from "./breakEvenSheet";
import { changeSheet } from "./changeSheet";
import { costPerAcreSheet } from "./costPerAcre";
import { fieldPagesSheet } from "./fieldPages";
import { harvestSheet } from "./harvestSheet";
import { pastSeasonsSheet } from "./pastSeasonsSheet";
import { hybridsSheet } from "./hybridsSheet";
import { planterCheckSheet } from "./planterCheckSheet";
import { standSheet } from "./standSheet";
import { weatherSheet } from "./weatherSheet";
import { mixingCard, weedsSheet } from "./weedsSheet";

/** Every result sheet that a season has something for, but the lender pages, which are made for a day and a reader. */
export const resultSheets = (report: SeasonReport): readonly ResultSheet[] => [
  costPerAcreSheet(report),
  breakEvenSheet(report),
  ...(report.season.fields.length === 0 ? [] : [fieldPagesSheet(report)]),
  ...(report.figures.stands.length === 0 ? [] : [standSheet(report)]),
  ...(report.season.harvest.length === 0 ? [] : [harvestSheet(report)]),
  ...(accounts(report.season).weather.length === 0 ? [] : [weatherSheet(report)]),
  ...(report.season.hybridTrials.length === 0 ? [] : [hybridsSheet(report)]),
  ...(report.season.weeds.length === 0 ? [] : [weedsSheet(report)]),
  ...mixingCards(report),
  ...(report.figures.planters.length === 0 ? [] : [planterCheckSheet(report)]),
  ...(report.season.pastSeasons.length === 0 ? [] : [pastSeasonsSheet(report)]),
  ...report.figures.changes.map((figures) => changeSheet(report, figures)),
];

/** What goes into a tank; none where no mix is entered. */
const mixingCards = (report: SeasonReport): readonly ResultSheet[] => {
  const card = mixingCard(report);
  return card === null ? [] : [card];
};
