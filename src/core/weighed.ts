/** What the loads of a field come to together, and the drying that they are charged. */
import { Decimal, sum, zero } from "./numbers/decimal";
import type { EntryRef, IsoDate } from "./row";
import type { Crop, HarvestLoad, Wetness } from "./season";
import { weightedMean } from "./numbers/tally";
import { cropQuantity, money, points, type CropQuantity, type Money, type Points } from "./numbers/units";

export type Weighed = {
  /** Yield units at the crop's standard moisture. */
  readonly quantity: CropQuantity;
  /**
   * Points of moisture above standard times the units that the drying charge is counted on, load by load: a dry load pays for no
   * wet one.
   */
  readonly unitPoints: Decimal;
  /** What buyers take off for the test weight of the loads, landlord's part included. */
  readonly dock: Money;
  readonly loads: Decimal;
  /** The day of the last load. */
  readonly last: IsoDate;
  /** Means, weighted by quantity, of the loads that tell them; for the eye alone, nothing is counted from them. */
  readonly moisture: Points | null;
  readonly testWeight: Decimal | null;
  readonly entries: readonly EntryRef[];
};

/** @returns `null` where nothing was weighed */
export function weighedOf(
  loads: readonly HarvestLoad[],
  { standardMoisture }: Pick<Crop, "standardMoisture">,
  countedOn: Wetness,
): Weighed | null {
  if (loads.length === 0) return null;
  const mean = (of: (load: HarvestLoad) => Decimal | null): Decimal | null => {
    const told = loads.flatMap((load) => {
      const value = of(load);
      return value === null || load.quantity.isZero() ? [] : [{ value, quantity: load.quantity }];
    });
    return told.length === 0
      ? null
      : weightedMean(
          told.map(({ value }) => value),
          told.map(({ quantity }) => quantity),
        );
  };
  const moisture = mean((load) => load.moisture);
  return {
    quantity: cropQuantity(sum(loads.map(({ quantity }) => quantity))),
    unitPoints: sum(
      loads.map((load) => pointsAbove(load.moisture, standardMoisture).times(countedOn === "wet" ? load.wet : load.quantity)),
    ),
    dock: money(sum(loads.map(({ quantity, dock }) => (dock === null ? zero : quantity.times(dock))))),
    loads: new Decimal(String(loads.length)),
    last: loads.reduce((last, { date }) => (date > last ? date : last), ""),
    moisture: moisture === null ? null : points(moisture),
    testWeight: mean((load) => load.testWeight),
    entries: loads.map(({ source }) => source),
  };
}

/** Points by which grain is wetter than the standard; none where it is drier, or one of the two is not known. */
export const pointsAbove = (moisture: Points | null, standard: Points | null): Decimal =>
  moisture === null || standard === null || moisture.lte(standard) ? zero : moisture.minus(standard);
