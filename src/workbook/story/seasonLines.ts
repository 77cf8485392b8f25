/** What a season brings a field, in sentences: heat and rain, and passes against weeds. */
import type { Decimal } from "../../core/numbers/decimal";
import { countingOf, type FieldWeather } from "../../core/weather/fieldWeather";
import type { Pass, Programme } from "../../core/weeds/programme";
import { grouped } from "../sheets/amounts";
import { freezeWords, heatWords, marginWords } from "../sheets/weatherSheet";
import { weedLine } from "../weedLine";
import { type Teller, quantity, money, areaWord, daysWords } from "./teller";

export function weatherLines({ report: { season }, day }: Teller, weather: FieldWeather | undefined): readonly string[] {
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

export function weedLines(of: Teller, programme: Programme | undefined): readonly string[] {
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
