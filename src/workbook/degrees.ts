/** Degrees as maps, phones and people write them. */
import { Decimal } from "../core/numbers/decimal";
import type { Coordinates } from "../core/stand/standCount";
import { readNumber } from "./numbers";

/** No field lies nearer to a pole. */
const farthestNorth = "75";
const halfRound = "180";

/** Whether a field can lie there; or what is wrong, and with which of the two. A phone that had no fix says 0 and 0. */
export function coordinatesFault({ latitude, longitude }: Coordinates): "latitude" | "longitude" | "swapped" | null {
  if (longitude.abs().gt(halfRound)) return "longitude";
  if (latitude.abs().gt(farthestNorth)) return longitude.abs().gt(farthestNorth) ? "latitude" : "swapped";
  return latitude.isZero() && longitude.isZero() ? "latitude" : null;
}

const sixty = new Decimal("60");
/** Signs of degrees, minutes and seconds, and letters of the halves of the globe. */
const signs = /[°º'’′"”″]|[NSEW]\s*$|^\s*[NSEW]/i;

/** Whether something stands there besides a number. */
export const isSexagesimal = (typed: string): boolean => signs.test(typed);

/**
 * `41.5868`, `N 41.5868`, `41° 35.21' N`, `93° 37' 12" W`: degrees, in the south and the west below zero. `null` where it is none:
 * more than sixty minutes, a sign beside a letter, or a part of a degree that has minutes behind it.
 */
export function readDegrees(typed: string): Decimal | null {
  const letter = /^\s*([NSEW])|([NSEW])\s*$/i.exec(typed);
  const bare = typed.replace(/^\s*[NSEW]|[NSEW]\s*$/gi, "").trim();
  const found = /^([-−+]?\d+(?:[.,]\d+)?)\s*[°º]?\s*(?:(\d+(?:[.,]\d+)?)\s*['’′]\s*)?(?:(\d+(?:[.,]\d+)?)\s*(?:["”″]|['’′]{2})\s*)?$/.exec(
    bare,
  );
  if (found === null) return null;
  const [whole, minutes, seconds] = [found[1], found[2], found[3]].map((digits) => (digits === undefined ? null : decimal(digits)));
  if (whole === null || whole === undefined) return null;
  const isPart = (value: Decimal | null | undefined) => value !== null && value !== undefined && !value.isInteger();
  if ((minutes !== null && isPart(whole)) || (seconds !== null && (isPart(minutes) || minutes === null))) return null;
  if (minutes?.gte(sixty) === true || seconds?.gte(sixty) === true) return null;
  const size = whole
    .abs()
    .plus((minutes ?? new Decimal("0")).div(sixty))
    .plus((seconds ?? new Decimal("0")).div("3600"));
  const isBelow = whole.isNegative();
  const half = (letter?.[1] ?? letter?.[2] ?? "").toUpperCase();
  if (half !== "" && isBelow) return null;
  return isBelow || half === "S" || half === "W" ? size.neg() : size;
}

function decimal(digits: string): Decimal | null {
  const reading = readNumber(digits.replace("−", "-").replace(",", "."), { decimalComma: false });
  return typeof reading === "string" || reading.percent ? null : reading.value;
}
