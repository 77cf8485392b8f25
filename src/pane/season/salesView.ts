/** What the card of a crop says of its grain sales. */
import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import type { EntryRef } from "../../core/row";
import { priceNeededOnUnsold } from "../../workbook/unsold";
import type { Format } from "../format";

export type SalesView = {
  readonly lines: readonly { readonly name: string; readonly figure: string; readonly unit: string }[];
  readonly note: string;
  readonly entries: readonly EntryRef[];
};

export function salesView({ sales, yieldUnit, outlook }: CropFigures, layer: Layer, format: Format): SalesView {
  const { quantity, money, priceNeeded, currency } = format;
  const perUnit = `${currency} per ${yieldUnit}`;
  const oversold = sales.unsold.isNegative();
  return {
    lines: [
      { name: "Sold and contracted", figure: quantity(sales.sold), unit: yieldUnit },
      { name: "Average price", figure: money(sales.averagePrice), unit: perUnit },
      oversold
        ? { name: "Sold beyond the projected crop", figure: quantity(sales.unsold.neg()), unit: yieldUnit }
        : { name: "Unsold of the projected crop", figure: quantity(sales.unsold), unit: yieldUnit },
      { name: `${priceNeededOnUnsold([yieldUnit])}, ${layerCosts[layer]}`, figure: priceNeeded(sales.priceNeeded[layer]), unit: perUnit },
      { name: "Expected price", figure: money(outlook.price), unit: perUnit },
    ],
    note: salesNote(sales.priceNeeded[layer]?.isNegative() === true || sales.priceNeeded[layer]?.isZero() === true, oversold),
    entries: sales.entries,
  };
}

function salesNote(isPaid: boolean, oversold: boolean): string {
  if (oversold) return "More is sold than the projected crop leaves you to sell.";
  return isPaid ? "What is sold and other income already cover this cost." : "";
}
