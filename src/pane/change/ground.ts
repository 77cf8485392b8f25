/** Where a new change happens: a crop or a field, with what its grain nets and what is known of it. */
import { zero, type Decimal } from "../../core/numbers/decimal";
import type { Budget, CropFigures } from "../../core/figures";
import { grainBeforeDrying, grainOf } from "../../core/partialBudget/grain";
import type { PriceRange } from "../../core/partialBudget/changeAnswer";
import type { Circumstances } from "../../core/partialBudget/layouts/layout";
import type { Target } from "../../core/row";
import type { Field } from "../../core/season";
import { area, points, yearlyRate, type Points } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";

export type Ground = {
  readonly target: Target;
  /** The target's name as the table Changes has it. */
  readonly name: string;
  readonly crop: CropFigures;
  readonly budget: Budget;
  /** The field; of a crop its first one. */
  readonly field: Field;
  readonly prices: PriceRange;
  /** Points of moisture above standard, as expected for the crop. */
  readonly wetPoints: Points;
  readonly report: SeasonReport;
};

/** Crops, then fields: what a change can be about. The value is the target's kind and name. */
export const targetChoices = ({ figures }: SeasonReport): readonly { readonly value: string; readonly words: string }[] => [
  ...figures.crops.map(({ crop }) => ({ value: `crop ${crop}`, words: `${crop}, all fields` })),
  ...figures.crops.flatMap(({ crop, fields }) => fields.map(({ field }) => ({ value: `field ${field}`, words: `${field}, ${crop}` }))),
];

/** The ground of a choice; `null` where the season no longer has it. */
export function groundOf(report: SeasonReport, value: string): Ground | null {
  const isCrop = value.startsWith("crop ");
  const name = value.slice(value.indexOf(" ") + 1);
  const crop = report.figures.crops.find((each) => (isCrop ? each.crop === name : each.fields.some(({ field }) => field === name)));
  if (crop === undefined) return null;
  const entry = report.season.crops.find((each) => each.name === crop.crop)!;
  const figures = crop.fields.find(({ field }) => isCrop || field === name)!;
  const { expectedHarvestMoisture: wet, standardMoisture: standard } = entry;
  return {
    target: isCrop ? { crop: name } : { field: name },
    name,
    crop,
    report,
    budget: isCrop ? crop.outlook : figures.outlook.budget,
    field: report.season.fields.find((each) => each.name === figures.field)!,
    prices: {
      low: entry.lowPrice,
      expected: entry.price,
      high: entry.highPrice,
      cropYield: (isCrop ? crop.outlook : figures.outlook.budget).yields.used,
    },
    wetPoints: points(wet === null || standard === null || wet.lt(standard) ? zero : wet.minus(standard)),
  };
}

/** The circumstances of a layout. `beforeDrying`: for layouts in which the moisture itself changes. */
export const circumstances = ({ budget, crop, report }: Ground, land: Decimal, rate: Decimal, beforeDrying = false): Circumstances => ({
  area: area(land),
  areaUnit: report.season.settings.areaUnit,
  yieldUnit: crop.yieldUnit,
  rate: yearlyRate(rate),
  grain: beforeDrying ? grainBeforeDrying(budget) : grainOf(budget),
});

/** Seed as the season has it for this ground: rate per area, seeds in a unit, price of one; `null` where it is not known. */
export function seedOf({
  report,
  target,
  field,
  crop,
}: Ground): { readonly rate: Decimal; readonly perUnit: Decimal; readonly price: Decimal | null } | null {
  const { season, figures } = report;
  for (const application of season.applications) {
    const concerns = "field" in application.target ? application.target.field === field.name : application.target.crop === crop.crop;
    const item = season.items.find(({ name }) => name === application.item);
    if (!concerns || item?.kind !== "seed" || item.unit.dimension !== "count") continue;
    if ("crop" in target && "field" in application.target && application.target.field !== field.name) continue;
    return {
      rate: application.rate.times(item.unit.factor),
      perUnit: item.packSize.times(item.unit.factor),
      price: figures.items.find((each) => each.item === item.name)?.averagePrice ?? null,
    };
  }
  return null;
}
