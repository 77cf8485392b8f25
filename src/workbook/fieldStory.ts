/** What a field was planned to be and what happened to it, in sentences for the pane and for paper alike. */
import { fieldHistory } from "../core/history/provenYield";
import { daysBetween } from "../core/numbers/day";
import { hundred, type Decimal } from "../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../core/figures";
import type { Field } from "../core/season";
import type { FieldOutlook } from "../core/stand/fieldOutlook";
import type { FieldStand } from "../core/stand/fieldStand";
import { accounts } from "../core/accounts";
import { countingOf, type FieldWeather } from "../core/weather/fieldWeather";
import type { Pass, Programme } from "../core/weeds/programme";
import { leftOutNotes, soFar, tableWords } from "./harvestNotes";
import { historyWords } from "./historyWords";
import { rentNotes } from "./rentNotes";
import type { SeasonReport } from "./seasonReport";
import { shownMoney, shownQuantity, shownStand, shownYield } from "./shown";
import { grouped } from "./sheets/amounts";
import { freezeWords, heatWords, marginWords } from "./sheets/weatherSheet";
import { programmesOf } from "./sheets/weedsSheet";
import { weedLine } from "./weedLine";

/** A subject with what is known of it; a subject of which nothing is entered says so, or is left out. */
export type StoryPart = { readonly name: string; readonly lines: readonly string[] };
type FieldParts = (field: FieldFigures, crop: CropFigures) => readonly StoryPart[];

/** @param day how a day is written; left out: as the year, month and day of its entry */
export function fieldStories(report: SeasonReport, day: (date: string) => string = (date) => date): FieldParts {
  const { season, figures } = report;
  const weather = new Map(accounts(season).weather.map((each) => [each.field, each]));
  const sprayed = new Map(programmesOf(report).map((each) => [each.field, each]));
  const outlooks = new Map(figures.outlooks.map((each) => [each.field.name, each]));
  const entries = new Map(season.fields.map((each) => [each.name, each]));
  return (field, crop) => {
    const entry = entries.get(field.field)!;
    const teller: Teller = { report, field, crop, entry, day };
    const parts: readonly StoryPart[] = [
      { name: "Planned", lines: plannedLines(teller) },
      { name: "Planted and counted", lines: plantedLines(teller, outlooks.get(field.field)) },
      { name: "Heat and rain", lines: weatherLines(teller, weather.get(field.field)) },
      { name: "Passes against weeds", lines: weedLines(teller, sprayed.get(field.field)) },
      { name: "Harvest", lines: harvestLines(teller) },
      { name: "Past seasons", lines: pastLines(teller) },
    ];
    return parts.filter(({ lines }) => lines.length > 0);
  };
}

type Teller = {
  readonly report: SeasonReport;
  readonly field: FieldFigures;
  readonly crop: CropFigures;
  readonly entry: Field;
  readonly day: (date: string) => string;
};

const yieldWords = (value: Decimal): string => grouped(shownYield(value)).replace(/^(-?[\d,]+)$/, "$1.0");
const plants = (value: Decimal): string => grouped(shownStand(value));
const quantity = (value: Decimal): string => grouped(shownQuantity(value));
const money = (value: Decimal): string => shownMoney(value).toFixed(2);
const percent = (value: Decimal): string => `${grouped(shownYield(value.times(hundred)))} %`;
const areaWord = ({
  report: {
    season: { settings },
  },
}: Teller): string => (settings.areaUnit === "ac" ? "acre" : "hectare");

function plannedLines(of: Teller): readonly string[] {
  const { entry, crop, day, report } = of;
  const { yieldGoal, provenYield, plannedPlanting, targetStand, rowWidth, variety } = entry;
  const rowUnit = report.season.settings.areaUnit === "ac" ? "in" : "cm";
  const planting = [
    ...(plannedPlanting === null ? [] : [`planting on ${day(plannedPlanting)}`]),
    ...(targetStand === null ? [] : [`${plants(targetStand)} plants per ${areaWord(of)} standing`]),
    ...(rowWidth === null ? [] : [`rows of ${quantity(rowWidth)} ${rowUnit}`]),
  ].join(", ");
  return [
    `${variety === null ? "" : `${variety}. `}Goal ${yieldWords(yieldGoal)} ${crop.yieldUnit} per ${areaWord(of)}` +
      `${provenYield === null ? "" : `, proven ${yieldWords(provenYield)}`}${planting === "" ? "" : `; ${planting}`}.`,
    ...landLines(of),
  ];
}

/** How the land is held; a flexible rent tells itself by the words that stand beside its figures everywhere. */
function landLines(of: Teller): readonly string[] {
  const { entry, field, crop, report } = of;
  const { tenure, rentPerArea, landChargePerArea, operatorShare } = entry;
  if (entry.flexibleRent) return rentNotes(report, { ...crop, fields: [field] });
  const share = operatorShare.eq("1") ? "" : `; ${percent(operatorShare)} of the crop is the operator's`;
  const rent = rentPerArea === null ? "" : `, ${money(rentPerArea)} per ${areaWord(of)}`;
  const charge = landChargePerArea === null ? "" : `, land charge ${money(landChargePerArea)} per ${areaWord(of)}`;
  return [`${tenure.charAt(0).toUpperCase()}${tenure.slice(1)}${rent}${charge}${share}.`];
}

function plantedLines(of: Teller, outlook: FieldOutlook | undefined): readonly string[] {
  const { entry, field, crop, day } = of;
  const { planted, plannedPlanting, seedsDropped, uniformityLoss } = entry;
  if (planted === null && outlook === undefined) return field.final === null ? ["Not planted yet."] : [];
  const late = planted === null || plannedPlanting === null ? null : daysBetween(plannedPlanting, planted);
  const dropped = seedsDropped === null ? "" : `, ${grouped(seedsDropped)} seeds dropped per ${areaWord(of)}`;
  const moved = late === null || late.isZero() ? "" : `, ${daysWords(late.abs())} ${late.isNegative() ? "before" : "after"} the plan`;
  const { outlook: projected } = field.outlook.budget.yields;
  return [
    ...(planted === null ? [] : [`Planted on ${day(planted)}${moved}${dropped}.`]),
    ...(outlook === undefined || outlook.stand === null ? [] : countLines(of, outlook.stand)),
    ...(outlook === undefined || outlook.table === null ? [] : [tableWords(outlook.table, outlook.chosen)]),
    ...(field.final !== null
      ? []
      : [
          `Projected yield ${yieldWords(projected)} ${crop.yieldUnit} per ${areaWord(of)}` +
            `${uniformityLoss === null ? "" : ` after ${quantity(uniformityLoss)} % for unevenness, as entered`}: ${againstGoal(projected, entry)}.`,
        ]),
  ];
}

function againstGoal(projected: Decimal, { yieldGoal }: Field): string {
  const apart = shownYield(projected).minus(shownYield(yieldGoal));
  return apart.isZero() ? "the goal" : `${yieldWords(apart.abs())} ${apart.isNegative() ? "below" : "above"} the goal`;
}

const daysWords = (days: Decimal): string => `${days.toFixed()} ${days.eq("1") ? "day" : "days"}`;

function countLines(of: Teller, { summary, parts, emergence }: FieldStand): readonly string[] {
  const { areaUnit } = of.report.season.settings;
  const { places, interval, mean, from, to } = summary;
  const spots = `${places.toFixed()} ${places.eq("1") ? "spot" : "spots"}`;
  const named = parts.filter(({ name }) => name !== null);
  return [
    `Counted ${from === to ? `on ${of.day(to)}` : `${of.day(from)} to ${of.day(to)}`}: ${plants(mean)} plants per ${areaWord(of)} in ${spots}` +
      `${interval === null ? "" : `, likely ${plants(interval.low)} to ${plants(interval.high)}`}` +
      `${emergence === null ? "" : `; ${percent(emergence)} of the seeds dropped`}.`,
    ...(named.length === 0
      ? []
      : [
          `By part: ${parts
            .map(
              ({ name, area, summary: counted, outlook }) =>
                `${name ?? "rest of the field"} ${quantity(area)} ${areaUnit}, ` +
                `${counted === null ? "not counted" : `${plants(counted.mean)} plants`}${outlook === null ? "" : `, yield ${yieldWords(outlook)}`}`,
            )
            .join("; ")}.`,
        ]),
  ];
}

function weatherLines({ report: { season }, day }: Teller, weather: FieldWeather | undefined): readonly string[] {
  if (weather === undefined) return [];
  const { heatUnits, normal, rain, stage, maturity, frostMargin, to } = weather;
  const against =
    normal === null
      ? ""
      : heatUnits.gte(normal)
        ? `, ${whole(heatUnits.minus(normal))} ahead of normal`
        : `, ${whole(normal.minus(heatUnits))} behind normal`;
  const rainUnit = season.settings.areaUnit === "ac" ? "in" : "mm";
  return [
    `${heatWords(countingOf(season))}: ${whole(heatUnits)} from planting to ${day(to)}${against}` +
      `${rain === null ? "" : `; rain ${quantity(rain)} ${rainUnit}`}${stage === null ? "" : `; stage ${stage}`}. An estimate.`,
    ...(maturity === null
      ? []
      : [
          `Matures about ${day(maturity.date)}, between ${day(maturity.early)} and ` +
            `${maturity.late === null ? "a day that not each past year came to" : day(maturity.late)}` +
            `${frostMargin === null ? "" : `; ${marginWords(frostMargin.median)} the median ${freezeWords(season)}, ${marginWords(frostMargin.earliest)} the earliest`}.`,
        ]),
    ...gapLines(weather),
  ];
}

/** Days without a record, and a rating that is not known. */
const gapLines = ({ missing, rain, rainMissing, rating }: FieldWeather): readonly string[] => [
  ...(missing.isZero() ? [] : [`${daysWords(missing)} without temperatures, counted as normal towards maturity.`]),
  ...(rain === null || rainMissing.isZero() ? [] : [`${daysWords(rainMissing)} without rain recorded.`]),
  ...(rating === null ? ["No day of maturity: the table Hybrids has no GDD or CHU to maturity of what is planted."] : []),
];

const whole = (value: Decimal): string => grouped(value.toDecimalPlaces(0));

function weedLines(of: Teller, programme: Programme | undefined): readonly string[] {
  if (programme === undefined) return [];
  const { passes, weeds, cost, inEveryPass, sinceLastYear } = programme;
  const { currency } = of.report.season.settings;
  const say = (status: Pass["status"], word: string) => {
    const own = passes.filter((pass) => pass.status === status);
    return own.length === 0
      ? []
      : [
          `${word}: ${own
            .map(
              ({ date, items, sites }) =>
                `${date === null ? "no date" : of.day(date)} ${items.join(" + ")}${sites.length === 0 ? "" : ` (sites ${sites.join(", ")})`}`,
            )
            .join("; ")}${cost[status] === null ? "" : `; ${money(cost[status])} ${currency} per ${areaWord(of)} for the products`}.`,
        ];
  };
  return [
    ...say("plan", "Planned"),
    ...say("done", "Done"),
    ...(weeds.length === 0 ? [] : [`${weedLine(programme).slice(programme.field.length + 2)}.`]),
    ...(inEveryPass.length === 0 ? [] : [`In every pass: ${inEveryPass.join(", ")}.`]),
    ...(sinceLastYear.length === 0 ? [] : [`Used here last year too: ${sinceLastYear.join(", ")}.`]),
  ];
}

function harvestLines(of: Teller): readonly string[] {
  const { field, crop, report } = of;
  const { weighed, final } = field;
  const done = (): string => {
    const { used, goal } = final!.budget.yields;
    const { quantity: units, loads, moisture } = weighed!;
    return (
      `Done: ${grouped(shownQuantity(units))} ${crop.yieldUnit} in ${loads.toFixed()} ${loads.eq("1") ? "load" : "loads"}, ` +
      `${yieldWords(used)} per ${areaWord(of)} for a goal of ${yieldWords(goal)}${moisture === null ? "" : `, ${moisture.toFixed(1)} % moisture`}.`
    );
  };
  return [
    ...(weighed === null ? [] : [final === null ? soFar(field, crop.yieldUnit).slice(field.field.length + 2) : done()]),
    ...leftOutNotes(report, { fields: [field] }),
  ].map((words) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`);
}

function pastLines({ entry, report: { season } }: Teller): readonly string[] {
  const history = fieldHistory(season.pastSeasons, entry.name, entry.crop, season.settings.seasonYear);
  const years = season.pastSeasons
    .filter(({ field, season: year }) => field === entry.name && (season.settings.seasonYear === null || year < season.settings.seasonYear))
    .sort((a, b) => b.season.localeCompare(a.season))
    .map(
      ({ season: year, crop, yield: harvested, net }) =>
        `${year} ${crop}${harvested === null ? "" : ` ${yieldWords(harvested)}`}${net === null ? "" : `, net ${money(net)}`}`,
    );
  return [
    ...(years.length === 0 ? [] : [`${years.join("; ")}.`]),
    ...(history.years.length === 0 && history.endsBefore === null ? [] : [`Proven yield: ${historyWords(history, entry)}`]),
  ];
}
