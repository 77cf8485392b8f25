/** A value from which something pays, rounded to the side on which it still pays. */
import { Decimal } from "../../core/numbers/decimal";
import type { SheetCell } from "../resultSheet";

const formats = { 1: "#,##0.0", 2: "#,##0.00" } as const;

/** Up where more pays, down where less does; what lies beyond the ninth decimal is the end of a division and moves nothing. */
export function neededCell({ value, pays }: { readonly value: Decimal; readonly pays: "above" | "below" }, places: 1 | 2): SheetCell {
  const shown = value
    .toDecimalPlaces(9, Decimal.ROUND_HALF_UP)
    .toDecimalPlaces(places, pays === "above" ? Decimal.ROUND_CEIL : Decimal.ROUND_FLOOR);
  return { value: Number(shown.toFixed()), style: { numberFormat: formats[places], align: "right" } };
}
