/** Heat and water of the planted fields as JSON. */
import type { Decimal } from "../core/numbers/decimal";
import type { HarvestDay } from "../core/weather/drydown";
import { accounts } from "../core/accounts";
import { harvestDays, type HarvestDays } from "../core/weather/harvestDay";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/** Planted fields with a record; `frostMarginDays` is to the frost in the middle of the past ones. */
export function weatherJson({ season, figures }: SeasonReport, digits: Digits) {
  const all = accounts(season).weather;
  const fields = figures.crops.flatMap((crop) => crop.fields);
  const days = new Map(harvestDays(season, fields, all).map((each) => [each.field, each]));
  return all.map((each) => ({
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
    drydown: drydownJson(days.get(each.field), digits),
  }));
}

/** Waiting or the dryer, by the usual question: `null` where none is asked, as of a crop that is not corn or without a drying charge. */
function drydownJson(asked: HarvestDays | undefined, digits: Digits) {
  if (asked === undefined) return null;
  const { question, answer } = asked;
  const day = ({ date, moisture, drying, lost }: HarvestDay) => ({
    date,
    moisture: digits(moisture),
    dryingPerAcre: digits(drying),
    lostPerAcre: digits(lost),
  });
  const isRefused = typeof answer === "string";
  return {
    rates: "name" in question.rate ? question.rate.name : null,
    lastSafe: question.lastSafe,
    refused: isRefused ? answer : null,
    first: isRefused ? null : day(answer.days[0]!),
    cheapest: isRefused ? null : day(answer.cheapest),
    atStandardFrom: isRefused ? null : answer.dry,
  };
}
