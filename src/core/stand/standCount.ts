/** Plants counted at one place, and plants per area from them. */
import { Decimal } from "../numbers/decimal";
import type { EntryRef, IsoDate } from "../row";
import { area, plantsPerArea, type Area, type AreaUnit, type PlantsPerArea } from "../numbers/units";

/**
 * What was measured out. With acres: row width in inches, length in feet, hoop in inches. With hectares: row width in
 * centimetres, length in metres, hoop in centimetres. A length over several rows is the sum of their lengths.
 */
export type CountedPlace = { readonly rowWidth: Decimal; readonly length: Decimal } | { readonly hoopDiameter: Decimal };

/** The part of a field in which a spot lies, as its entry says it. */
export type CountedPart = {
  readonly name: string;
  /** Of the whole part; `null`: not said here. */
  readonly area: Area | null;
  /** When the part was planted, or planted again; `null`: as the field. */
  readonly planted: IsoDate | null;
};

/** Where a spot lies, in degrees on the ellipsoid WGS 84: north and east are above zero. */
export type Coordinates = { readonly latitude: Decimal; readonly longitude: Decimal };

export type StandCount = {
  readonly field: string;
  readonly date: IsoDate;
  readonly place: CountedPlace;
  /** Plants likely to live. */
  readonly plants: Decimal;
  /** Plants that may or may not live, not among `plants`; each counts as one half. */
  readonly weak: Decimal;
  /** `null`: the field as a whole, or what of it lies outside of its parts. */
  readonly part: CountedPart | null;
  readonly spot: Coordinates | null;
  readonly remark: string | null;
  readonly source: EntryRef;
};

export const pi = new Decimal("3.141592653589793238462643383279502884");
/** Square feet in an acre; square metres in a hectare. */
export const squares: Readonly<Record<AreaUnit, Decimal>> = { ac: new Decimal("43560"), ha: new Decimal("10000") };
/** Inches in a foot; centimetres in a metre. */
const small: Readonly<Record<AreaUnit, Decimal>> = { ac: new Decimal("12"), ha: new Decimal("100") };

/**
 * The land counted: row width × length, or π·d² ÷ 4 for a hoop.
 *
 * @throws RangeError where nothing was measured out: the reader turns zeros away
 */
export function landCounted(place: CountedPlace, unit: AreaUnit): Area {
  const square =
    "hoopDiameter" in place
      ? place.hoopDiameter.div(small[unit]).pow("2").times(pi).div("4")
      : place.rowWidth.div(small[unit]).times(place.length);
  if (square.lte("0")) throw new RangeError("a counted place needs a width and a length, or a hoop, above zero");
  return area(square.div(squares[unit]));
}

/** Plants per area at one place: (plants + weak ÷ 2) ÷ the land counted. */
export const standAt = ({ place, plants, weak }: Pick<StandCount, "place" | "plants" | "weak">, unit: AreaUnit): PlantsPerArea =>
  plantsPerArea(plants.plus(weak.div("2")).div(landCounted(place, unit)));

/** Length of row that is one thousandth of the area unit: 522.72 ÷ width in inches, in feet; 1,000 ÷ width in cm, in metres. */
export const rowLengthOfThousandth = (rowWidth: Decimal, unit: AreaUnit): Decimal =>
  squares[unit].div("1000").times(small[unit]).div(rowWidth);

/** What one plant in a hoop stands for, per area. */
export const plantsPerHoopPlant = (hoopDiameter: Decimal, unit: AreaUnit): PlantsPerArea =>
  plantsPerArea(new Decimal("1").div(landCounted({ hoopDiameter }, unit)));

/** Plants per square foot (square metre), as soybeans and small grains are counted. */
export const plantsPerSquare = (stand: PlantsPerArea, unit: AreaUnit): Decimal => stand.div(squares[unit]);

/** Plants per foot (metre) of row at a row width in inches (centimetres). */
export const plantsPerRowLength = (stand: PlantsPerArea, rowWidth: Decimal, unit: AreaUnit): Decimal =>
  plantsPerSquare(stand, unit).times(rowWidth.div(small[unit]));
