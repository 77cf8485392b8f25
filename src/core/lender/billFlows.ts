/** The money of bills that are charged directly, and what need not be paid beside them. */
import { one, sum, zero, type Decimal } from "../numbers/decimal";
import { countsIn, type Kind } from "../kinds";
import type { SeasonFigures } from "../seasonFigures";
import { money } from "../numbers/units";
import type { Season } from "../season";
import type { Differences } from "./differences";
import type { Flow } from "./cashFlow";
import { landlordsGroup } from "./itemFlows";
import { monthOf } from "./month";
import type { When } from "./whenPaid";

type Billed = Pick<SeasonFigures, "bills">;

/**
 * Bills on the day they are paid; the landlord's part comes back in the same month. What they are set against is not paid, in the
 * months of its own.
 */
export function billFlows(
  season: Season,
  { bills: { parts, setAgainst } }: Billed,
  when: When,
  isInterestByBalance: boolean,
): readonly Flow[] {
  const paid = parts.flatMap(({ bill: { kind, paidOn, isOpening, source }, paid: amount, ours }): readonly Flow[] => {
    const flow = { month: monthOf(paidOn), entries: [source] };
    return [
      ...(isOpening ? [] : [{ ...flow, group: kind, amount: money(amount.neg()) }]),
      { ...flow, group: landlordsGroup, amount: money(amount.minus(ours)) },
    ];
  });
  const fields = new Map(season.fields.map((field) => [field.name, field]));
  const saved = [...setAgainst].flatMap(([name, off]) =>
    off.flatMap(({ cost, amount }): readonly Flow[] => {
      if (!cost.cash || !countsIn(cost.kind, "cashNeed") || (isInterestByBalance && cost.kind === "operating interest")) return [];
      const [whole, due] = [amount.div(cost.ours ?? one), cost.due?.() ?? [{ on: null, field: fields.get(name)!, weight: one }]];
      const weight = sum(due.map((each) => each.weight));
      return due.flatMap((each) => {
        const part = weight.isZero() ? zero : whole.times(each.weight).div(weight);
        const flow = (group: string, here: Decimal) =>
          when({ group, amount: money(here), entries: cost.entries() }, cost.kind, each.on, each.field);
        return [...flow(cost.kind, part), ...(cost.ours === undefined ? [] : flow(landlordsGroup, part.times(one.minus(cost.ours)).neg()))];
      });
    }),
  );
  return [...paid, ...saved];
}

/** Why the year pays another amount for the bills of a kind than its fields are charged with. */
export function billDifferences({ bills: { parts, setAgainst } }: Billed, kind: Kind): Differences {
  const ofKind = parts.filter(({ bill }) => bill.kind === kind);
  const off = [...setAgainst.values()].flat().filter(({ cost }) => cost.kind === kind && cost.cash);
  return {
    landlord: sum(ofKind.map(({ paid, ours }) => paid.minus(ours))).minus(
      sum(off.map(({ cost, amount }) => amount.div(cost.ours ?? one).minus(amount))),
    ),
    "opening stock": sum(ofKind.filter(({ bill }) => bill.isOpening).map(({ paid }) => paid)).neg(),
    "machine work": unchargedOf({ bills: { parts, setAgainst } }, kind),
  };
}

/** What the operator bears of bills of a kind in fields for which machine rows count it already. */
export const unchargedOf = ({ bills: { parts } }: Billed, kind: Kind): Decimal =>
  sum(parts.filter(({ bill, isCharged }) => bill.kind === kind && !isCharged).map(({ ours }) => ours));
