import type { ResultSheet } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { breakEvenSheet } from "./breakEven";
import { costPerAcreSheet } from "./costPerAcre";

/** Every result sheet of a season but the lender pages, which are made for a day and a reader. */
export const resultSheets = (report: SeasonReport): readonly ResultSheet[] => [costPerAcreSheet(report), breakEvenSheet(report)];
