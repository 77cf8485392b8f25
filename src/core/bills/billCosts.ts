/** What bills that are charged directly to a field, a crop or all fields come to in each of them. */
import { one, zero, type Decimal } from "../numbers/decimal";
import type { FieldLines } from "../budgetLines/budgetLine";
import { isOver } from "../over";
import type { Cost } from "../cost";
import type { FieldFacts } from "../fieldFacts";
import { landWeights } from "../land";
import type { DaysOut } from "../operatingInterest";
import type { Bill, Season } from "../season";
import { splitToTheCent } from "../numbers/split";
import { money, type Money } from "../numbers/units";

/** The part of a bill that falls to one field: all that is paid for it, and what of that the operator bears. */
export type BillPart = {
  readonly bill: Bill;
  readonly facts: FieldFacts;
  readonly paid: Money;
  readonly ours: Decimal;
  readonly isCharged: boolean;
};

/**
 * Every bill shared by acres of land over the fields that it names, to the cent; an acre under two crops is half of each.
 *
 * On crop share the operator bears his part of the item, or else of the budget line of that kind, and all of it where neither
 * says: the landlord repays the rest. Where landlords buy their own part, a bill is the operator's alone.
 */
export function billParts(
  { bills, settings }: Pick<Season, "bills" | "settings">,
  facts: readonly FieldFacts[],
  lines: FieldLines,
): readonly BillPart[] {
  // Many bills name the same land.
  const landNamed = new Map<string, { readonly named: readonly FieldFacts[]; readonly land: readonly Decimal[] }>();
  const landOf = (bill: Bill) => {
    const key = JSON.stringify(bill.over);
    let of = landNamed.get(key);
    if (of === undefined) {
      const named = facts.filter(({ field }) => isOver(bill.over, field));
      landNamed.set(key, (of = { named, land: landWeights(named.map(({ field }) => field)) }));
    }
    return of;
  };
  return bills.flatMap((bill): readonly BillPart[] => {
    const { named, land } = landOf(bill);
    if (named.length === 0) return [];
    const shares = named.map((each) => (each.field.tenure === "crop share" ? (bill.operatorCostShare ?? ofLine(lines, each, bill)) : one));
    const repaid = settings.landlordsInputs === "repaid";
    const bought = repaid ? land : land.map((acres, index) => acres.times(shares[index]!));
    const parts = splitToTheCent(bill.amount, bought.every((weight) => weight.isZero()) ? land : bought);
    return named.map((each, index) => ({
      bill,
      facts: each,
      paid: money(parts[index]!),
      ours: repaid ? parts[index]!.times(shares[index]!) : parts[index]!,
      isCharged: bill.unchargedIn?.has(each.field.name) !== true,
    }));
  });
}

/** The operator's part of the budget line of a bill's kind; all of it where there is none. */
function ofLine(lines: FieldLines, { field }: FieldFacts, { kind }: Bill): Decimal {
  const line = lines.get(field.name)?.get(kind);
  return line === undefined || line.whole.isZero() ? one : line.ours.div(line.whole);
}

/** The same as costs of each field. @param planned whether the plan of a field has anything of a kind */
export function billCosts(
  parts: readonly BillPart[],
  daysOut: DaysOut,
  planned: (field: string, kind: Bill["kind"]) => boolean,
): ReadonlyMap<string, readonly Cost[]> {
  const byField = new Map<string, Cost[]>();
  for (const {
    bill: { kind, name, paidOn, isOpening, source },
    facts: { field },
    ours,
    isCharged,
  } of parts) {
    if (!isCharged) continue;
    const cost: Cost = {
      kind,
      name,
      cash: true,
      amount: money(ours),
      moneyDays: isOpening ? zero : ours.times(daysOut.from(paidOn)),
      ...(isOpening ? { borrowed: zero } : {}),
      unplanned: !planned(field.name, kind),
      progress: "bill",
      entries: () => [source],
    };
    const others = byField.get(field.name);
    if (others === undefined) byField.set(field.name, [cost]);
    else others.push(cost);
  }
  return byField;
}
