/** The result sheet *Heat and rain*: heat and rain of every planted field since planting, and when it is projected to mature. */
import { planningCaution } from "../../core/cautions";
import { zero, type Decimal } from "../../core/numbers/decimal";
import type { Season } from "../../core/season";
import { countingOf, fieldWeather, type FieldWeather } from "../../core/weather/fieldWeather";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { headings, note, quantityCell, section, text, title, wholeQuantityCell } from "./cells";
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
  const all = fieldWeather(season);
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
      [],
      section("What it rests on"),
      ...[...[...places.values()].flatMap((each) => placeNotes(each, freezeWords(season))), ...gapNotes(all), ...basis, planningCaution]
        .flatMap((words) => inLines(words, lineLength))
        .map(note),
    ],
    page: { orientation: "landscape", paper: areaUnit === "ac" ? "letter" : "a4", pagesTall: 0, footer: `Weather, ${seasonName(report)}` },
  };
}

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
