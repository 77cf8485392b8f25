/** What is wrong, or worth a look, between a loan and the season that it is paid in. */
import { capitalOf } from "../core/capital";
import { isOver } from "../core/over";
import { accounts } from "../core/accounts";
import { loanCosts } from "../core/loanCosts";
import type { EntryRef } from "../core/row";
import type { Season } from "../core/season";
import type { Named } from "./columns/column";
import { loanColumns } from "./columns/loans";
import type { Problem, Subject } from "./problem";
import { shownMoney } from "./shown";

const { columns } = loanColumns;

export const loanChecks = (season: Season): readonly Problem[] => [
  ...lowPayments(season),
  ...farPayments(season),
  ...capitalProblems(season),
];

const touchesOf = ({ bornBy }: NonNullable<Season["loans"]>[number]): readonly Subject[] =>
  bornBy === null ? [{ of: "farm" }] : ["field" in bornBy ? { of: "field", name: bornBy.field } : { of: "crop", name: bornBy.crop }];

/** Payments that do not cover their interest: they are paid as entered, and the balance grows. */
function lowPayments(season: Season): readonly Problem[] {
  return accounts(season).loans.flatMap(({ loan, payments, opening, closing }): readonly Problem[] =>
    payments.length === 0 || closing.lte(opening)
      ? []
      : [
          {
            code: "payment-low",
            at: { ...loan.source, column: columns.payment.heading },
            found: shownMoney(loan.payment!).toFixed(2),
            like: shownMoney(closing.minus(opening)).toFixed(2),
            touches: touchesOf(loan),
          },
        ],
  );
}

/** Years that a loan's next payment may be away from the season: rolled on too late, or from a statement of the year after. */
const yearsApart = 2;

/** A next payment, or a first one to come, that a slip has put years outside the season. */
function farPayments({ loans, settings: { seasonYear } }: Season): readonly Problem[] {
  if (seasonYear === null) return [];
  const [from, to] = [`${Number(seasonYear) - yearsApart}-01-01`, `${Number(seasonYear) + yearsApart}-12-31`];
  return loans.flatMap((loan) => {
    const far = ({ heading: column }: Named, date: string | null, isFar: boolean): readonly Problem[] =>
      !isFar || date === null
        ? []
        : [{ code: "date-far", at: { ...loan.source, column }, found: date, like: seasonYear, touches: touchesOf(loan) }];
    const { nextDue, firstDue } = loan;
    return [
      ...far(columns.nextDue, nextDue, nextDue !== null && (nextDue < from || nextDue > to)),
      ...far(columns.firstDue, firstDue, firstDue !== null && firstDue > to),
    ];
  });
}

/** Term interest that stays in the full layer of fields for which nobody has said what capital there is. */
function capitalProblems(season: Season): readonly Problem[] {
  const capital = capitalOf(season);
  const unsaid = season.fields.filter(({ name }) => capital.get(name) === "unsaid");
  if (unsaid.length === 0) return [];
  const ofLoans = loanCosts(accounts(season).loans, accounts(season).facts);
  const entered = [...season.otherCosts, ...season.budget].filter(({ kind, amount }) => kind === "term interest" && !amount.isZero());
  const bearing = unsaid.flatMap((field): readonly { readonly name: string; readonly source: EntryRef }[] => {
    const source =
      ofLoans
        .get(field.name)!
        .find(({ kind }) => kind === "term interest")
        ?.entries()[0] ?? entered.find(({ over }) => isOver(over, field))?.source;
    return source === undefined ? [] : [{ name: field.name, source }];
  });
  const [first] = bearing;
  if (first === undefined) return [];
  const touches = bearing.map(({ name }): Subject => ({ of: "field", name }));
  return [{ code: "capital-not-charged", at: first.source, found: bearing.map(({ name }) => name).join(", "), touches, layers: ["full"] }];
}
