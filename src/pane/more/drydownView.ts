/** When to harvest: the boxes of the question, and the answer as a picture, a table and words. */
import { one, zero, type Decimal } from "../../core/numbers/decimal";
import { area, moneyPerUnit, points, share, yearlyRate } from "../../core/numbers/units";
import type { FieldFigures } from "../../core/figures";
import { laterHarvest } from "../../core/partialBudget/layouts/laterHarvest";
import type { Layout } from "../../core/partialBudget/layouts/layout";
import type { IsoDate } from "../../core/row";
import { drydownTables, waitingLoss } from "../../core/tables/drydownTables";
import {
  drydown,
  lastKnownLoss,
  type Drydown,
  type DrydownQuestion,
  type DrydownRefusal,
  type DryingRate,
  type HarvestDay,
} from "../../core/weather/drydown";
import type { FieldWeather } from "../../core/weather/fieldWeather";
import { askedOf, standingCorn, usualQuestion } from "../../core/weather/harvestDay";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";
import { Typed, typedAs, type Faults } from "../parts/typed";
import type { FigureRow } from "../season/cropView";

/** In the list of rates: points a day of the grower's own. */
export const ownRate = "own";

export type DrydownDraft = {
  readonly from: string;
  readonly moisture: string;
  /** The name of a table, or `ownRate`. */
  readonly rate: string;
  readonly perDay: string;
  readonly lastSafe: string;
  readonly charge: string;
  readonly countsLoss: boolean;
};
export type DrydownBox = "from" | "moisture" | "perDay" | "lastSafe" | "charge";

/** Corn that still stands and has a standard moisture. */
export const drydownFields = ({ season, figures }: SeasonReport): readonly FieldFigures[] =>
  standingCorn(
    season,
    figures.crops.flatMap(({ fields }) => fields),
  );

/** Begins at projected maturity, with the moisture of black layer; the last safe day is the one on which published losses rise. */
export function emptyDrydown(
  { season }: SeasonReport,
  field: FieldFigures,
  weather: FieldWeather | undefined,
  decimalComma: boolean,
): DrydownDraft {
  const { from, moisture, rate, lastSafe, charge } = usualQuestion(season, field, weather);
  const written = (value: Decimal | null) => (value === null ? "" : typedAs(value, decimalComma));
  return {
    from: from ?? "",
    moisture: written(moisture),
    rate: rate.name,
    perDay: "",
    lastSafe: lastSafe ?? "",
    charge: written(charge),
    countsLoss: true,
  };
}

export type DrydownView = {
  readonly faults: Faults<DrydownBox>;
  /** Why there is no answer, where the boxes are sound. */
  readonly why: string | null;
  readonly answer: DrydownAnswer | null;
};
export type DrydownAnswer = {
  readonly says: string;
  readonly rows: readonly FigureRow[];
  readonly plot: DrydownPlot;
  /** What the rates and losses rest on. */
  readonly sources: readonly string[];
  /** Waiting to the cheapest day instead of harvesting at the start; `null` where the start is the cheapest. */
  readonly wait: { readonly layout: Layout; readonly name: string; readonly words: string } | null;
};

export function drydownView(
  draft: DrydownDraft,
  report: SeasonReport,
  figures: FieldFigures,
  decimalComma: boolean,
  format: Format,
): DrydownView {
  const typed = new Typed<DrydownBox>(draft, decimalComma, format.currency);
  const [from, lastSafe] = [typed.day("from"), typed.day("lastSafe")];
  const moisture = typed.number("moisture", { needed: true, aboveZero: true, isPercent: true });
  if (moisture?.gte("60") === true) typed.faults.moisture = "Enter a percentage below 60.";
  const charge = typed.number("charge", { needed: true });
  const table = drydownTables.find(({ name }) => name === draft.rate);
  const perDay = table === undefined ? typed.number("perDay", { needed: true, aboveZero: true }) : null;
  const rate: DryingRate | null = table ?? (perDay === null ? null : { perDay });
  if (!typed.isSound || from === null || lastSafe === null || moisture === null || charge === null || rate === null)
    return { faults: typed.faults, why: null, answer: null };
  const question = askedOf(report.season, figures, {
    from,
    lastSafe,
    rate,
    moisture: points(moisture),
    chargePerPoint: moneyPerUnit(charge),
    countsLoss: draft.countsLoss,
  });
  const result = drydown(question);
  if (typeof result === "string") return { faults: {}, why: refusalWords(result, format), answer: null };
  return {
    faults: {},
    why: null,
    answer: {
      says: saysOf(result, question, format),
      rows: rowsOf(result, format),
      plot: plotOf(result),
      sources: sourcesOf(question),
      wait: waitOf(result, question, { figures, report, format }),
    },
  };
}

function refusalWords(why: DrydownRefusal, { day }: Format): string {
  switch (why) {
    case "before the table":
      return "The table begins later than that day. Enter a later day with its moisture, or points a day of your own.";
    case "after the table":
      return "The table ends before the last safe day. Choose another table, or an earlier last safe day.";
    case "after the losses":
      return `What waiting loses is published up to ${day(lastKnownLoss)}. Enter an earlier last safe day, or leave the losses out.`;
    case "no safe day":
      return "The last safe day is before the first: no day is left to choose.";
  }
}

function saysOf({ cheapest, days, dry }: Drydown, { from }: DrydownQuestion, { day, money, perArea }: Format): string {
  const first = days[0]!;
  const isFirst = cheapest.date === from;
  return (
    `Cheapest safe day: ${day(cheapest.date)}, at ${moistureWords(cheapest.moisture)}: ${money(cheapest.drying)} ${perArea} for the dryer` +
    `${cheapest.lost.isZero() ? "" : ` and ${money(cheapest.lost)} lost by waiting`}` +
    (isFirst
      ? ". Waiting does not pay by these figures."
      : `, against ${money(first.cost)} on ${day(first.date)} at ${moistureWords(first.moisture)}.`) +
    (dry === null ? "" : ` At standard moisture from ${day(dry)}.`)
  );
}

const moistureWords = (moisture: Decimal): string => `${moisture.toFixed(1)} %`;

/** Every seventh day, and the cheapest. */
function rowsOf({ days, cheapest }: Drydown, { day, money }: Format): readonly FigureRow[] {
  return days
    .filter((each, index) => index % 7 === 0 || each === cheapest)
    .map((each) => ({
      name: `${day(each.date.slice(5))}${each === cheapest ? ", cheapest" : each.isSafe ? "" : ", not safe"}`,
      cells: [spreadWords(each), money(each.drying), money(each.lost), money(each.cost)],
    }));
}

const spreadWords = ({ moisture, wettest, driest }: HarvestDay): string =>
  wettest.eq(driest) ? moisture.toFixed(1) : `${driest.toFixed(1)}–${wettest.toFixed(1)}`;

export type DrydownPlot = {
  /** Lines as `x,y` pairs: dryer and losses together, and the dryer alone. */
  readonly cost: string;
  readonly drying: string;
  readonly cheapest: { readonly x: number; readonly y: number };
  /** Where the days that are not safe begin; `null` where all are. */
  readonly unsafe: number | null;
  readonly ticks: readonly { readonly x: number; readonly date: IsoDate; readonly moisture: Decimal }[];
  readonly most: { readonly y: number; readonly cost: Decimal };
};
export const drydownWidth = 300;
export const drydownGround = 130;
const [left, top] = [6, 22];

function plotOf({ days, cheapest }: Drydown): DrydownPlot {
  const most = days.reduce<Decimal>((high, { cost }) => (cost.gt(high) ? cost : high), zero);
  const last = Math.max(days.length - 1, 1);
  const x = (index: number) => Math.round((left + (index / last) * (drydownWidth - 2 * left)) * 10) / 10;
  const y = (cost: Decimal) => Math.round((drydownGround - (most.isZero() ? 0 : Number(cost.div(most))) * (drydownGround - top)) * 10) / 10;
  const line = (of: (day: HarvestDay) => Decimal) => days.map((each, index) => `${x(index)},${y(of(each))}`).join(" ");
  const at = days.indexOf(cheapest);
  const unsafe = days.findIndex(({ isSafe }) => !isSafe);
  const step = Math.max(1, Math.ceil(last / 3));
  return {
    cost: line((each) => each.cost),
    drying: line((each) => each.drying),
    cheapest: { x: x(at), y: y(cheapest.cost) },
    unsafe: unsafe < 0 ? null : x(unsafe),
    ticks: days.flatMap(({ date, moisture }, index) => (index % step === 0 ? [{ x: x(index), date, moisture }] : [])),
    most: { y: y(most), cost: most },
  };
}

function sourcesOf({ rate, countsLoss }: DrydownQuestion): readonly string[] {
  return [
    ...("perDay" in rate
      ? ["Points a day as you entered them."]
      : [`Drydown: ${rate.source.publisher}, ${rate.source.year}, for ${rate.region}. ${rate.limits.join(" ")}`]),
    countsLoss
      ? `Lost by waiting: ${waitingLoss.source.publisher}, ${waitingLoss.source.year}, ${waitingLoss.source.where}. Your field's stalks and storms are not in it.`
      : "Nothing is counted as lost by waiting.",
  ];
}

type About = { readonly figures: FieldFigures; readonly report: SeasonReport; readonly format: Format };

function waitOf({ cheapest, days }: Drydown, question: DrydownQuestion, { figures, report, format }: About): DrydownAnswer["wait"] {
  const first = days[0]!;
  if (cheapest === first || cheapest.moisture.gt(first.moisture)) return null;
  const crop = report.figures.crops.find(({ crop: name }) => name === figures.crop)!;
  return {
    name: `Later harvest, ${figures.field}`,
    words: `${format.day(first.date)} at ${moistureWords(first.moisture)} against ${format.day(cheapest.date)} at ${moistureWords(cheapest.moisture)}`,
    layout: laterHarvest({
      area: area(figures.area),
      areaUnit: report.season.settings.areaUnit,
      yieldUnit: crop.yieldUnit,
      rate: yearlyRate("0"),
      grain: { price: question.price, moving: question.moving, share: question.share },
      yieldNow: question.yield,
      now: first.moisture,
      later: cheapest.moisture,
      standard: question.standard,
      chargePerPoint: question.chargePerPoint,
      countedOn: question.countedOn,
      lost: question.countsLoss ? share(one.minus(cheapest.kept)) : null,
    }),
  };
}
