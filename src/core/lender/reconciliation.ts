/** From the margin of the debt test to what the operating loan does over the months of the cash flow. */
import { Decimal, sum, zero } from "../numbers/decimal";
import { money, type Money } from "../numbers/units";
import type { CashFlow } from "./cashFlow";
import { differenceReasons, type DifferenceReason } from "./differences";
import type { PaidAndCharged } from "./paidAndCharged";

/** Why the two differ: money that is paid and not charged, and grain of an older crop year. */
const reconciliationReasons = [...differenceReasons, "older grain"] as const;
type ReconciliationReason = DifferenceReason | "older grain";

/** The margin and all steps add up to the change; each is worked out on its own. */
export type Reconciliation = {
  readonly margin: Money;
  /** What each reason adds; below zero where more is paid than charged. Reasons that add nothing are left out. */
  readonly steps: ReadonlyMap<ReconciliationReason, Money>;
  /** How much less is owed on the operating loan, and how much more is in cash, at the end of the months. */
  readonly change: Money;
};

/** Below this an amount is the end of a division: a landlord pays back just what was paid for him. */
const least = new Decimal("0.000001");

export function reconciliation(margin: Money, groups: readonly PaidAndCharged[], { months }: CashFlow): Reconciliation {
  const moved = sum(months.map(({ moneyIn, moneyOut, interest }) => moneyIn.minus(moneyOut).minus(interest)));
  const older = sum(months.map(({ flows }) => flows.get("older grain") ?? zero));
  const step = (reason: ReconciliationReason) =>
    reason === "older grain" ? older : sum(groups.map(({ differences }) => differences[reason] ?? zero)).neg();
  return {
    margin,
    change: money(moved),
    steps: new Map(
      reconciliationReasons.map((reason) => [reason, money(step(reason))] as const).filter(([, amount]) => amount.abs().gte(least)),
    ),
  };
}
