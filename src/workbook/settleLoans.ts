/** What a loan or the operating interest rate counts already gives way to it where it is entered once more. */
import type { Kind } from "../core/kinds";
import type { EntryRef } from "../core/row";
import type { Loan, Season } from "../core/season";
import { otherCostColumns } from "./columns/otherCosts";
import type { Place, Problem } from "./problem";
import type { Settled } from "./settle";

const left = "That counts, and this is left out.";
const both = "Both count until one of them is deleted.";

/**
 * Term interest and principal among the other costs give way to the loans that bring them; operating interest gives way
 * to the rate that charges it. An item or an operation of that kind is told and counts, because it may be stock or work
 * as well.
 *
 * @param rate the cell of the operating interest rate
 */
export function loansSettled(season: Season, rate: Place): Settled {
  const problems: Problem[] = [];
  const twice = ({ table, row }: EntryRef, kind: Kind, other: Place, like: string) =>
    problems.push({
      code: "cost-twice",
      at: { table, row, column: otherCostColumns.columns.kind.heading },
      other,
      found: kind,
      like,
      touches: [{ of: "farm" }],
    });
  const isCharged = season.settings.operatingInterest !== null;
  const otherCosts = season.otherCosts.filter(({ kind, amount, source }) => {
    if (amount.isZero()) return true;
    const loan = loanOfKind(season.loans, kind);
    if (loan !== null) twice(source, kind, { table: loan.source.table, row: loan.source.row }, left);
    else if (kind === "operating interest" && isCharged) twice(source, kind, rate, left);
    else return true;
    return false;
  });
  if (isCharged) {
    const used = new Set([...season.purchases, ...season.applications].map(({ item }) => item));
    const rows = [...season.items.filter(({ name }) => used.has(name)), ...season.operations];
    for (const { kind, source } of rows) if (kind === "operating interest") twice(source, kind, rate, both);
  }
  return { season: otherCosts.length === season.otherCosts.length ? season : { ...season, otherCosts }, problems };
}

/** The loan that brings costs of a kind, the first of several; `null` where none does. Nothing is due on a loan that is paid. */
export const loanOfKind = (loans: readonly Loan[], kind: Kind): Loan | null =>
  loans.find(
    ({ balance, kind: sort }) => !balance.isZero() && (kind === "term interest" || (kind === "term principal" && sort === "term")),
  ) ?? null;
