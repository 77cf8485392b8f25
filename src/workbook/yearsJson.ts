/** Past years as JSON. */
import { cropYears } from "../core/history/cropYears";
import type { Decimal } from "../core/numbers/decimal";
import type { Field } from "../core/season";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/** Every crop of every past year, the newest first; costs and net per area, the net after full cost. */
export const yearsJson = ({ season }: SeasonReport, digits: Digits) =>
  cropYears(season.pastSeasons).map((year) => ({
    season: year.season,
    crop: year.crop,
    acres: digits(year.area),
    goal: digits(year.goal),
    yield: digits(year.yield),
    cash: digits(year.costs.cash),
    price: digits(year.price),
    priceNeeded: { cash: digits(year.priceNeeded.cash), full: digits(year.priceNeeded.full) },
    net: digits(year.net),
  }));

/** Whether a field's proven yield is entered or the mean of past seasons, and of which; `null` where there is none. */
export const provenFromJson = ({ provenYield, provenYears }: Field) =>
  provenYield === null ? null : provenYears.length === 0 ? { entered: true, seasons: [] } : { entered: false, seasons: provenYears };
