/** The result sheet *Heat and rain*: heat and rain of every planted field since planting, and when it is projected to mature. */
import { cautionsOf, planningCaution } from "../../core/cautions";
import { zero, type Decimal } from "../../core/numbers/decimal";
import type { Season } from "../../core/season";
import { waitingLoss } from "../../core/tables/drydownTables";
import { accounts } from "../../core/accounts";
import { countingOf, type FieldWeather } from "../../core/weather/fieldWeather";
import { harvestDays, standingCorn, type HarvestDays } from "../../core/weather/harvestDay";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { headings, moneyCell, note, quantityCell, section, text, title, wholeQuantityCell, yieldCell } from "./cells";
import { incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 140;
const right = { align: "right" } as const;

/** What heat is counted in, by the setting: "GDD (50 °F base)". */
export function heatWords({ way }: ReturnType<typeof countingOf>): string {
  return {
    "growing degree 86/50": "GDD (50 °F base)",
    "corn heat units": "CHU",
    "base 10 C": "GDD (10 °C base)",
    "base 5 C": "GDD (5 °C base)",
  }[way];
}

/** The same at the head of a column: "GDD", "CHU". */
export const heatUnit = ({ way }: ReturnType<typeof countingOf>): string => (way === "corn heat units" ? "CHU" : "GDD");

/**
 * The freeze that ends the season, with its threshold where it is found in the weather, not in dates of the grower's own: "28 °F
 * freeze".
 */
export const freezeWords = (season: Season): string =>
  season.settings.firstFrosts !== null ? "killing freeze" : countingOf(season).unit === "F" ? "28 °F freeze" : "−2.2 °C freeze";

/** Days to a freeze in words: "12 days before", "5 days after". */
export const marginWords = (days: Decimal): string =>
  days.isZero() ? "on the day" : `${days.abs().toFixed()} ${days.abs().eq("1") ? "day" : "days"} ${days.isNegative() ? "after" : "before"}`;

export function weatherSheet(report: SeasonReport): ResultSheet {
  const { season } = report;
  const all = accounts(season).weather;
  const { areaUnit } = season.settings;
  const heat = heatWords(countingOf(season));
  const places = new Map(all.map((each) => [`${each.place ?? ""}`, each]));
  return {
    name: "Heat and rain",
    columns: [26, 11, 11, 9, 9, 9, 10, 12, 12, 12, 14, 14],
    headingRows: 2,
    charts: [],
    rows: [
      title("Heat, rain and maturity"),
      note(
        `${seasonName(report)}. ${heat} from the day after planting; rain in ${areaUnit === "ac" ? "inches" : "millimetres"}. All ` +
          "of it an estimate.",
      ),
      ...incompleteRows(report, { of: "weather" }),
      [],
      headings(
        "Field",
        "Counted to",
        `${heatUnit(countingOf(season))} so far`,
        "Normal",
        "Ahead",
        "Rain",
        "Stage",
        "Matures",
        "Earliest",
        "Latest",
        "Median freeze",
        "First freeze",
      ),
      ...all.map(fieldRow),
      ...drydownRows(report, all),
      [],
      section("What it rests on"),
      ...[...[...places.values()].flatMap((each) => placeNotes(each, freezeWords(season))), ...gapNotes(all), ...basis, planningCaution]
        .flatMap((words) => inLines(words, lineLength))
        .map(note),
    ],
    page: { orientation: "landscape", paper: areaUnit === "ac" ? "letter" : "a4", pagesTall: 0, footer: `Weather, ${seasonName(report)}` },
  };
}

/** The cheapest safe day of corn that stands, by what is usual; a sentence where it stands and there is no answer. */
function drydownRows({ season, figures }: SeasonReport, all: readonly FieldWeather[]): readonly Row[] {
  const fields = figures.crops.flatMap((crop) => crop.fields);
  const days = harvestDays(season, fields, all);
  if (days.length === 0) {
    return season.settings.dryingChargePerPoint !== null || standingCorn(season, fields).length === 0
      ? []
      : [[], note("Waiting or the dryer: not compared, because the table Season has no Drying charge per point.")];
  }
  const { currency, areaUnit } = season.settings;
  const { rate } = days[0]!.question;
  return [
    [],
    section("In the field or in the dryer: the cheapest safe day"),
    ...inLines(
      `${currency} per ${areaUnit === "ac" ? "acre" : "hectare"}, from projected maturity to the last safe day; “at once” is drying on the first day. Points a day: ` +
        `${"name" in rate ? `${rate.source.publisher}, ${rate.source.year}, for ${rate.region}. ${rate.limits.join(" ")} ` : ""}` +
        `Lost by waiting: ${waitingLoss.source.publisher}, ${waitingLoss.source.year}; your field's stalks and storms are not in it. Take a sample before ` +
        "you go by it.",
      lineLength,
    ).map(note),
    headings("Field", "From", "Cheapest", "% from", "% then", "Dryer", "Lost", "Both", "At once", "Last safe", "At standard"),
    ...days.map(drydownRow),
    ...cautionsOf.dryer.map(note),
  ];
}

function drydownRow({ field, question, answer }: HarvestDays): Row {
  if (typeof answer === "string")
    return [text(field), text(question.from, right), text("–", right), yieldCell(question.moisture), text(refusals[answer])];
  const { days, cheapest, dry } = answer;
  const first = days[0]!;
  return [
    text(field),
    text(first.date, right),
    text(cheapest.date, right),
    yieldCell(first.moisture),
    yieldCell(cheapest.moisture),
    moneyCell(cheapest.drying),
    moneyCell(cheapest.lost),
    moneyCell(cheapest.cost),
    moneyCell(first.cost),
    text(question.lastSafe, right),
    text(dry ?? "–", right),
  ];
}

const refusals = {
  "before the table": "the rates begin later",
  "after the table": "the rates end before the last safe day",
  "after the losses": "matures after the last day of which losses are known",
  "no safe day": "matures after the last safe day",
} as const;

const basis = [
  "Normal: the same days in the mean of the earlier years; a day without temperatures is in neither. Matures: from the sum so far " +
    "by that mean, earliest and latest as each earlier year went on; the rating from the table Hybrids, less 6.8 a day of planting " +
    "after May 1 where it is in GDD of 50 °F base (published for Indiana and Ohio).",
  "GDD (50 °F base): no day counts hotter than 86 °F or cooler than 50. Stage: of corn in them, by published means (120 to come up, " +
    "82 a leaf to ten leaves, 50 after; from silking on by what the rating leaves). The freeze: the dates of the setting First " +
    "killing frost, else the first low of 28 °F (−2.2 °C) or less after July 1.",
];

function fieldRow({ field, to, heatUnits, normal, rain, stage, maturity, frostMargin }: FieldWeather): Row {
  const words = (value: string | null | undefined) => text(value ?? "–", right);
  return [
    text(field),
    text(to, right),
    wholeQuantityCell(heatUnits),
    wholeQuantityCell(normal),
    wholeQuantityCell(normal === null ? null : heatUnits.minus(normal)),
    quantityCell(rain),
    words(stage),
    words(maturity?.date),
    words(maturity?.early),
    words(maturity === null ? null : (maturity.late ?? "not each year")),
    words(frostMargin === null ? null : marginWords(frostMargin.median)),
    words(frostMargin === null ? null : marginWords(frostMargin.earliest)),
  ];
}

const placeNotes = ({ place, earlierYears, frost }: FieldWeather, freeze: string): readonly string[] => [
  `${place ?? "The record"}: ${earlierYears.toFixed()} earlier ` +
    `${earlierYears.eq("1") ? "year" : "years"}${frost === null ? `; no ${freeze} is known` : `; first ${freeze}: median ${frost.median}, earliest ${frost.earliest}, of ${frost.years.toFixed()} falls`}.`,
];

/** Days that are missing, and fields that no rating is known for: a sentence each, which names the fields. */
export function gapNotes(all: readonly FieldWeather[]): readonly string[] {
  const days = (of: (each: FieldWeather) => Decimal) =>
    all.filter((each) => !of(each).isZero()).map((each) => `${each.field} ${of(each).toFixed()}`);
  const said = (fields: readonly string[], words: string) => (fields.length === 0 ? [] : [`${words}: ${fields.join(", ")}.`]);
  return [
    ...said(
      days(({ missing }) => missing),
      "Days since planting without temperatures, which take their normal towards maturity",
    ),
    ...said(
      days(({ rain, rainMissing }) => (rain === null ? zero : rainMissing)),
      "Days since planting without rain recorded",
    ),
    ...said(
      all.filter(({ rating }) => rating === null).map(({ field }) => field),
      "No day of maturity, because the table Hybrids has no GDD or CHU to maturity of what is planted",
    ),
  ];
}
