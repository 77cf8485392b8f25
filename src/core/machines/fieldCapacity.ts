import { Decimal } from "../numbers/decimal";
import { areaPerHour, hours, type Area, type AreaPerHour, type AreaUnit, type Hours, type Share } from "../numbers/units";

/** 43,560 square feet in an acre ÷ 5,280 feet in a mile; 10,000 square metres in a hectare ÷ 1,000 metres in a kilometre. */
const strip: Readonly<Record<AreaUnit, Decimal>> = { ac: new Decimal("8.25"), ha: new Decimal("10") };

/**
 * Land covered in an hour: speed × width × field efficiency ÷ 8.25 (miles an hour, feet, acres an hour) or ÷ 10
 * (kilometres an hour, metres, hectares an hour).
 *
 * @throws RangeError where any of the three is zero or less: such a machine gets nowhere, and the reader turns it away
 */
export function fieldCapacity(unit: AreaUnit, speed: Decimal, width: Decimal, efficiency: Share): AreaPerHour {
  if ([speed, width, efficiency].some((each) => each.lte("0")))
    throw new RangeError("speed, width and field efficiency must be above zero");
  return areaPerHour(speed.times(width).times(efficiency).div(strip[unit]));
}

/** Hours that an area takes, once over. */
export const hoursFor = (land: Area, capacity: AreaPerHour): Hours => hours(land.div(capacity));
