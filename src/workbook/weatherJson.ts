/** Heat and water of the planted fields as JSON. */
import type { Decimal } from "../core/numbers/decimal";
import { fieldWeather } from "../core/weather/fieldWeather";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/** Planted fields with a record; `frostMarginDays` is to the frost in the middle of the past ones. */
export const weatherJson = ({ season }: SeasonReport, digits: Digits) =>
  fieldWeather(season).map((each) => ({
    field: each.field,
    place: each.place,
    from: each.from,
    to: each.to,
    days: digits(each.days),
    missing: digits(each.missing),
    heatUnits: digits(each.heatUnits),
    normal: digits(each.normal),
    rain: digits(each.rain),
    rainMissing: digits(each.rainMissing),
    rating: digits(each.rating),
    stage: each.stage,
    maturity: each.maturity,
    frost: each.frost === null ? null : { earliest: each.frost.earliest, median: each.frost.median, years: digits(each.frost.years) },
    frostMarginDays: digits(each.frostMargin?.median ?? null),
  }));
