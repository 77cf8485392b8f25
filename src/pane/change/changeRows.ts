/** A change as rows of the table Changes, one a line; what is said of the change as a whole stands on the first. */
import { isCapital, isGrain, netOfGrain, type Change, type ChangeLine, type Grain } from "../../core/partialBudget/change";
import type { LayoutName } from "../../core/partialBudget/layouts/layout";
import { hundred, type Decimal } from "../../core/decimal";
import type { AreaUnit } from "../../core/units";
import { basisWords } from "../../workbook/tables/operations";
import { largestFraction } from "../../workbook/tableRow";
import type { EntryRow } from "../commands/entryRow";

export type ChangeToWrite = {
  readonly change: Change;
  readonly name: string;
  /** The ready layout that it was made by: its cautions are kept with it. */
  readonly layout: LayoutName;
  /** The field or crop that it is about. */
  readonly target: string;
  /** `null`: all of the target. */
  readonly acres: Decimal | null;
  readonly active: boolean;
  readonly areaUnit: AreaUnit;
  /** What the table itself prices a unit of the target's crop at; a line at this price leaves the price blank. */
  readonly grain: Grain;
};

/** The rows, in the order of the lines. */
export function changeRows({ change, name, layout, target, acres, active, areaUnit, grain }: ChangeToWrite): readonly EntryRow[] {
  return change.lines.map((line, index) => rowOf([
    ["Change", name], ["Quadrant", line.quadrant], ["Item", line.item], ["Quantity", line.quantity], ["Unit", line.unit], ["Price", priceOf(line, grain)],
    ["Basis", basisWords(line.basis, areaUnit)], ["Years kept", line.yearsKept], ["Salvage", line.salvage?.isZero() === false ? line.salvage : null],
    ...(index > 0 ? [] : [["Field or Crop", target], ["Acres", acres], ["Interest rate", rateOf(change)], ["Active", active ? "yes" : "no"], ["Layout", layout]] as const),
  ]));
}

/**
 * The rate as the table reads it: as a fraction, and from two fifths on, where a bare fraction may mean either, as text with its sign.
 * A change without interest says so where something serves for years: a blank cell would take the operating rate.
 */
function rateOf({ rate, lines }: Change): Decimal | string | null {
  if (rate.isZero()) return lines.some(isCapital) ? rate : null;
  return rate.lte(largestFraction) ? rate : `${rate.times(hundred).toFixed()}%`;
}

/** What a unit of grain brings home elsewhere than in the outlook (at another moisture, say) is written as money. */
function priceOf({ price }: ChangeLine, grain: Grain): Decimal | null {
  if (!isGrain(price)) return price;
  return price.price.eq(grain.price) && price.moving.eq(grain.moving) && price.share.eq(grain.share) ? null : netOfGrain(price);
}

const rowOf = (cells: readonly (readonly [string, string | Decimal | null])[]): EntryRow =>
  new Map(cells.filter((cell): cell is [string, string | Decimal] => cell[1] !== null && cell[1] !== ""));
