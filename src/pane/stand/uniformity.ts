/** A loss to an uneven stand: tried on the outlook, and what publications found. */
import { hundred, one } from "../../core/decimal";
import type { FieldStand } from "../../core/stand/fieldStand";
import type { UniformityFinding } from "../../core/tables/uniformity";
import { typedNumber } from "../purchase/purchaseDraft";
import type { Format } from "../format";

/** What the outlook would be with that loss instead of the one entered. */
export function tryLoss(typed: string, { outlook }: FieldStand, yieldUnit: string, decimalComma: boolean, format: Format): { readonly says: string; readonly fault?: string } {
  if (typed.trim() === "") return { says: "" };
  const loss = typedNumber(typed.replace(/\s*%\s*$/, ""), decimalComma);
  if (loss === null || loss.isNegative() || loss.gt(hundred)) return { says: "", fault: "Enter a percentage from 0 to 100." };
  if (outlook?.ok !== true) return { says: "There is no yield by date and stand to take it from." };
  const { byDateAndStand } = outlook.value;
  const left = byDateAndStand.times(one.minus(loss.div(hundred)));
  return { says: `${format.yield(byDateAndStand)} less ${format.quantity(loss)}% is ${format.yield(left)} ${yieldUnit} per ${format.areaName}.` };
}

/** A finding with its figure and source. */
export function findingWords({ finding, low, high, unit, source }: UniformityFinding): string {
  const figure = low.eq(high) ? low.toFixed() : `${low.toFixed()} to ${high.toFixed()}`;
  return `${finding}: ${figure}${unit.startsWith("%") ? "" : " "}${unit} (${source.publisher}, ${source.year}).`;
}
