/** What is said beside the figures of a crop about rent that follows price and yield, in the pane and on paper alike. */
import { hundred, type Decimal } from "../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../core/figures";
import type { Field } from "../core/season";
import type { SeasonReport } from "./seasonReport";
import { shownMoney, shownYield } from "./shown";
import { grouped } from "./sheets/amounts";

type Rented = { readonly entry: Field; readonly figures: FieldFigures };

/** One sentence for the fields of each agreement, with what their rent comes to; and one on grain that is sold. None without any. */
export function rentNotes({ season }: Pick<SeasonReport, "season">, crop: CropFigures): readonly string[] {
  const entries = new Map(season.fields.map((field) => [field.name, field]));
  const rented = crop.fields
    .map((figures): Rented => ({ figures, entry: entries.get(figures.field)! }))
    .filter(({ entry }) => entry.flexibleRent);
  if (rented.length === 0) return [];
  const areaName = season.settings.areaUnit === "ac" ? "acre" : "hectare";
  const byTerms = new Map<string, Rented[]>();
  for (const each of rented) {
    const terms = termsWords(each.entry, areaName);
    byTerms.set(terms, [...(byTerms.get(terms) ?? []), each]);
  }
  const { averagePrice } = crop.sales;
  const isSoldAlike = averagePrice === null || shownMoney(averagePrice).eq(shownMoney(crop.outlook.price));
  return [
    ...[...byTerms].map(([terms, fields]) => `Flexible rent, ${terms} ${fields.map((each) => nowWords(each, crop)).join("; ")}.`),
    ...(isSoldAlike
      ? []
      : [
          `Flexible rent goes by the expected price of ${money(crop.outlook.price)}, not by the ${money(averagePrice)} that grain is ` +
            "sold at: keep Expected price at what the lease will use.",
        ]),
  ];
}

const money = (value: Decimal): string => shownMoney(value).toFixed(2);

/** "200.00 an acre and 40 % of price × yield above 720.00, at most 550.00:" */
function termsWords({ rentPerArea, flexibleRent }: Field, areaName: string): string {
  const { baseGross, shareAbove, most } = flexibleRent!;
  return (
    `${rentPerArea === null ? "no base" : money(rentPerArea)} per ${areaName} and ${grouped(shareAbove.times(hundred).toDecimalPlaces(2))} % ` +
    `of price × yield above ${grouped(shownMoney(baseGross))}${most === null ? "" : `, at most ${money(most)}`}:`
  );
}

/** "Home 272.00 at 4.50 and 200.0 bu" */
function nowWords({ entry, figures }: Rented, { yieldUnit }: CropFigures): string {
  const { price, yields, rentAboveBase } = (figures.final ?? figures.outlook).budget;
  const rent = entry.rentPerArea === null ? rentAboveBase : rentAboveBase.plus(entry.rentPerArea);
  return `${entry.name} ${money(rent)} at ${money(price)} and ${shownYield(yields.used).toFixed(1)} ${yieldUnit}`;
}
