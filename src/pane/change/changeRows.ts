/** A change as rows of the table Changes, one a line; what is said of the change as a whole stands on the first. */
import { isCapital, isGrain, netOfGrain, type Change, type ChangeLine, type Grain } from "../../core/partialBudget/change";
import type { LayoutName } from "../../core/partialBudget/layouts/layout";
import { hundred, zero, type Decimal } from "../../core/numbers/decimal";
import type { AreaUnit } from "../../core/numbers/units";
import { basisWords } from "../../workbook/columns/basis";
import { changeColumns } from "../../workbook/columns/changes";
import { largestFraction } from "../../workbook/tableRow";
import { entryRow, type EntryRow } from "../commands/entryRow";

export type ChangeToWrite = {
  readonly change: Change;
  readonly name: string;
  /** The ready layout that it was made by: its cautions are kept with it. */
  readonly layout: LayoutName;
  /** The field or crop that it is about. */
  readonly target: string;
  /** `null`: all of the target. */
  readonly acres: Decimal | null;
  readonly countedIn: boolean;
  readonly areaUnit: AreaUnit;
  /** What the table itself prices a unit of the target's crop at; a line at this price leaves the price blank. */
  readonly grain: Grain;
};

const { columns } = changeColumns;

/** The rows, in the order of the lines. */
export function changeRows({ change, name, layout, target, acres, countedIn, areaUnit, grain }: ChangeToWrite): readonly EntryRow[] {
  return change.lines.map((line, index) =>
    entryRow([
      [columns.change, name],
      [columns.quadrant, line.quadrant],
      [columns.item, line.item],
      [columns.quantity, line.quantity],
      [columns.unit, line.unit],
      [columns.price, priceOf(line, grain)],
      [columns.basis, basisWords(line.basis, areaUnit)],
      [columns.yearsKept, line.yearsKept],
      [columns.salvage, line.salvage?.isZero() === false ? line.salvage : null],
      ...(index > 0
        ? []
        : ([
            [columns.place, target],
            [columns.acres, acres],
            [columns.rate, rateOf(change)],
            [columns.countedIn, countedIn ? "yes" : "no"],
            [columns.layout, layout],
          ] as const)),
    ]),
  );
}

/**
 * The rate as the table reads it: as a fraction, and from two fifths on, where a bare fraction may mean either, as text with its sign.
 * A change without interest says so where something serves for years: a blank cell would take the operating rate.
 */
function rateOf({ rate, lines }: Change): Decimal | string | null {
  if (rate.isZero()) return lines.some(isCapital) ? rate : null;
  return rate.lte(largestFraction) ? rate : `${rate.times(hundred).toFixed()}%`;
}

/** What a unit of grain nets elsewhere than in the outlook (at another moisture, say) is written as money. */
function priceOf({ price }: ChangeLine, grain: Grain): Decimal | null {
  if (!isGrain(price)) return price;
  const [ofPrice, ofGrain] = [price, grain].map(({ rentShare }) => rentShare ?? zero);
  const isAlike = price.price.eq(grain.price) && price.moving.eq(grain.moving) && price.share.eq(grain.share) && ofPrice!.eq(ofGrain!);
  return isAlike ? null : netOfGrain(price);
}
