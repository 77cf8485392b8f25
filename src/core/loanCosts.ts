/** What loans cost the fields: the term interest and the term principal of the year. */
import { isOver } from "./over";
import { zero } from "./numbers/decimal";
import type { Cost } from "./cost";
import { sharingWeights, type FieldFacts } from "./fieldFacts";
import { loanYear, type LoanYear } from "./loanYear";
import type { Loan, Season } from "./season";
import { splitToTheCent } from "./numbers/split";

/** The year of every loan, in the order of the table. */
export const loanYears = ({ loans, settings }: Pick<Season, "loans" | "settings">): readonly LoanYear[] =>
  loans.map((loan) => loanYear(loan, settings));

/**
 * Each field's part of interest and principal, to the cent: by acres over all fields, or over those that a loan is for.
 * They are alike at every stage.
 */
export function loanCosts(years: readonly LoanYear[], facts: readonly FieldFacts[]): ReadonlyMap<string, readonly Cost[]> {
  const byField = new Map(facts.map(({ field }) => [field.name, [] as Cost[]]));
  for (const { loan, interest, principal } of years) {
    const over = bearersOf(loan, facts);
    if (over.length === 0) continue;
    const weights = sharingWeights(over, "acres", "plan");
    for (const [kind, amount] of [
      ["term interest", interest],
      ["term principal", principal],
    ] as const) {
      if (amount.isZero()) continue;
      splitToTheCent(amount, weights).forEach((share, index) => {
        byField
          .get(over[index]!.field.name)!
          .push({ kind, name: loan.name, amount: share, moneyDays: zero, cash: true, progress: "left", entries: () => [loan.source] });
      });
    }
  }
  return byField;
}

/** The fields that bear a loan; all of them where what it is for grows nowhere. */
function bearersOf({ bornBy }: Loan, facts: readonly FieldFacts[]): readonly FieldFacts[] {
  const named = facts.filter(({ field }) => bornBy !== null && isOver(bornBy, field));
  return named.length === 0 ? facts : named;
}
