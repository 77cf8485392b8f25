/** The harvest of each field as JSON, and what its yield outlook rests on. */
import { larger, one, zero, type Decimal } from "../core/numbers/decimal";
import type { FieldFigures } from "../core/figures";
import type { FieldOutlook } from "../core/stand/fieldOutlook";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/** The fields that were weighed. */
export const harvestJson = ({ season: { settings }, figures }: SeasonReport, digits: Digits) =>
  figures.crops
    .flatMap(({ fields }) => fields)
    .flatMap(
      ({
        field,
        weighed,
        final,
        outlook: {
          budget: { area, yields, operatorShare },
        },
      }) => {
        if (weighed === null) return [];
        const crop = yields.outlook.times(area);
        return [
          {
            field,
            loads: digits(weighed.loads),
            dryUnits: digits(weighed.quantity),
            moisture: digits(weighed.moisture),
            testWeight: digits(weighed.testWeight),
            shareHarvested: digits(final !== null ? one : crop.isZero() ? null : weighed.quantity.div(crop)),
            yieldPerAcre: digits(weighed.quantity.div(area)),
            done: final !== null,
            left: digits(final !== null ? zero : larger(crop.minus(weighed.quantity), zero)),
            dock: digits(weighed.dock.times(operatorShare)),
            dryingCost: digits(weighed.unitPoints.times(settings.dryingChargePerPoint ?? zero).times(operatorShare)),
          },
        ];
      },
    );

/** What was left out of a field's plan at harvest, and what was worked for the next crop. */
export const besidesJson = ({ neverDone, nextCrop }: FieldFigures, digits: Digits) => ({
  neverDone: neverDone.map(({ name, areaPasses }) => ({ name, acres: digits(areaPasses) })),
  nextCrop: nextCrop.map(({ kind, name, amount }) => ({ kind, name, amount: digits(amount) })),
});

/** The table that a field's yield outlook rests on; `null` where none is in use for it. */
export const yieldTableJson = (outlook: FieldOutlook | undefined, digits: Digits) => {
  if (outlook === undefined || outlook.table === null) return null;
  const {
    table: { name, region },
    chosen,
    byDate,
  } = outlook;
  return { name, region, chosen, byPlantedDate: digits(byDate?.ok === true ? byDate.value.byDateAndStand : null) };
};
