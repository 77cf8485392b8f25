/** What was done or bought in a crop although the plan has nothing of it: a part of what moved the cost that is easily overlooked. */
import { zero, type Decimal } from "./numbers/decimal";
import type { CropFigures } from "./figures";
import { countsIn, type Kind, type Layer } from "./kinds";
import { money, type Money } from "./numbers/units";

export type NotPlanned = {
  readonly kind: Kind;
  /** The item or operation as the first of its entries names it. */
  readonly name: string;
  /** Money on all the fields concerned, in the outlook. */
  readonly amount: Money;
  readonly fields: readonly string[];
};

/** Each item and operation of a layer that some field has without any plan of it, the largest first. */
export function notPlanned({ fields }: Pick<CropFigures, "fields">, layer: Layer): readonly NotPlanned[] {
  const all = new Map<string, { kind: Kind; name: string; amount: Decimal; fields: string[] }>();
  for (const { field, outlook } of fields) {
    for (const { kind, name, amount, unplanned } of outlook.charges) {
      if (!unplanned || !countsIn(kind, layer)) continue;
      const key = `${kind}\n${name.toLowerCase()}`;
      let soFar = all.get(key);
      if (soFar === undefined) all.set(key, (soFar = { kind, name, amount: zero, fields: [] }));
      soFar.amount = soFar.amount.plus(amount);
      soFar.fields.push(field);
    }
  }
  return [...all.values()]
    .map((each) => ({ ...each, amount: money(each.amount) }))
    .sort((a, b) => b.amount.abs().comparedTo(a.amount.abs()));
}
