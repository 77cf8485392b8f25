/** When to harvest corn that still stands, as it is asked before anybody types: from projected maturity, at published rates. */
import { daysAfter } from "../numbers/day";
import type { FieldFigures } from "../figures";
import { grainBeforeDrying } from "../partialBudget/grain";
import type { IsoDate } from "../row";
import type { Season } from "../season";
import { drydownTables, moistureAtMaturity, type DrydownTable } from "../tables/drydownTables";
import { drydown, lastKnownLoss, lossesRise, type Drydown, type DrydownQuestion, type DrydownRefusal, type DryingRate } from "./drydown";
import type { FieldWeather } from "./fieldWeather";
import { moneyPerUnit, points, type MoneyPerUnit, type Points } from "../numbers/units";

/** What a question of a harvest day begins with; `null`: not known, so it must be told. */
export type UsualQuestion = {
  /** Projected maturity, or the first day of the table where that is later: what dries before it the table does not say. */
  readonly from: IsoDate | null;
  /** That of black layer. */
  readonly moisture: Points | null;
  readonly rate: DrydownTable;
  /** The day on which published losses rise. */
  readonly lastSafe: IsoDate | null;
  readonly charge: MoneyPerUnit | null;
};

/** Fields of corn with a standard moisture whose harvest is not done. */
export function standingCorn({ crops }: Pick<Season, "crops">, fields: readonly FieldFigures[]): readonly FieldFigures[] {
  const dried = new Set(
    crops.filter(({ name, standardMoisture }) => /corn|maize/i.test(name) && standardMoisture !== null).map(({ name }) => name),
  );
  return fields.filter(({ crop, final }) => final === null && dried.has(crop));
}

export function usualQuestion(
  { settings, fields }: Pick<Season, "settings" | "fields">,
  field: Pick<FieldFigures, "field">,
  weather: Pick<FieldWeather, "maturity"> | undefined,
): UsualQuestion {
  const planted = fields.find(({ name }) => name === field.field)?.planted?.slice(0, 4);
  const year = settings.seasonYear ?? planted ?? null;
  const maturity = weather?.maturity?.date ?? null;
  const rate = drydownTables[0]!;
  // The crop is as wet at the table's first day as at maturity, which is the careful side.
  const begins = year === null ? "" : `${year}-${rate.periods[0]!.from}`;
  return {
    rate,
    from: maturity === null ? null : maturity < begins ? begins : maturity,
    moisture: maturity === null ? null : points(moistureAtMaturity),
    lastSafe: year === null ? null : `${year}-${lossesRise}`,
    charge: settings.dryingChargePerPoint === null ? null : moneyPerUnit(settings.dryingChargePerPoint),
  };
}

const daysBeyond = 14;

/** Two weeks beyond the last safe day, as far as the table and the losses go. */
export function lastLookedAt(from: IsoDate, lastSafe: IsoDate, rate: DryingRate, countsLoss: boolean): IsoDate {
  const ends = [
    ...("perDay" in rate ? [] : [daysAfter(`${from.slice(0, 4)}-${rate.periods.at(-1)!.to}`, 1)]),
    ...(countsLoss ? [`${from.slice(0, 4)}-${lastKnownLoss}`] : []),
  ];
  const wanted = daysAfter(lastSafe, daysBeyond);
  const end = ends.reduce((least, each) => (each < least ? each : least), wanted);
  return end < lastSafe ? lastSafe : end;
}

/** What the field, its crop and the settings say to a question; the rest is told with it. */
export function askedOf(
  { crops, settings }: Pick<Season, "crops" | "settings">,
  { crop: name, outlook: { budget } }: FieldFigures,
  told: Pick<DrydownQuestion, "from" | "moisture" | "rate" | "lastSafe" | "chargePerPoint" | "countsLoss">,
): DrydownQuestion {
  const { price, moving, share } = grainBeforeDrying(budget);
  return {
    ...told,
    until: lastLookedAt(told.from, told.lastSafe, told.rate, told.countsLoss),
    standard: crops.find((crop) => crop.name === name)!.standardMoisture!,
    yield: budget.yields.used,
    price,
    moving,
    share,
    countedOn: settings.dryingCountedOn,
  };
}

export type HarvestDays = { readonly field: string; readonly question: DrydownQuestion; readonly answer: Drydown | DrydownRefusal };

/** The usual question of every field of standing corn that has a projected maturity, and its answer; none without a drying charge. */
export function harvestDays(
  season: Pick<Season, "crops" | "settings" | "fields">,
  fields: readonly FieldFigures[],
  weather: readonly FieldWeather[],
): readonly HarvestDays[] {
  const byField = new Map(weather.map((each) => [each.field, each]));
  return standingCorn(season, fields).flatMap((figures): readonly HarvestDays[] => {
    const { from, moisture, rate, lastSafe, charge } = usualQuestion(season, figures, byField.get(figures.field));
    if (from === null || moisture === null || lastSafe === null || charge === null) return [];
    const question = askedOf(season, figures, { from, moisture, rate, lastSafe, chargePerPoint: charge, countsLoss: true });
    return [{ field: figures.field, question, answer: drydown(question) }];
  });
}
