/** The table Loans. */
import { one, type Decimal } from "../../core/numbers/decimal";
import type { Loan } from "../../core/season";
import type { Target } from "../../core/row";
import { money } from "../../core/numbers/units";
import { loanColumns, paymentsAYear } from "../columns/loans";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { nearest } from "../words";
import type { TargetPlaces } from "./targets";

const { columns } = loanColumns;

export function readLoans(table: TableReader, places: TargetPlaces): readonly Loan[] {
  if (!table.hasNeeded(loanColumns)) return [];
  return table.rows(
    (row): Loan | null => {
      const name = row.need(columns.name);
      const kind = row.of(columns.kind) ?? "term";
      const balance = row.need(columns.balance);
      const rate = row.of(columns.rate);
      const payment = row.of(columns.payment);
      const [nextDue, firstDue] = [row.of(columns.nextDue), row.of(columns.firstDue)];
      const times = timesAYear(row);
      const bornBy = forWhom(row, places);
      if (rate === null) row.missing(columns.rate);
      if (kind === "term" && (payment === null || nextDue === null)) row.fault("payment-missing");
      if (kind === "operating") tellUnread(row, payment);
      if (nextDue !== null && firstDue !== null && firstDue > nextDue) row.fault("first-due-late", columns.firstDue, { like: nextDue });
      if (name === null || balance === null || rate === null) return null;
      return {
        name,
        kind,
        balance: money(balance),
        rate,
        payment: payment === null ? null : money(payment),
        paymentsAYear: times ?? one,
        // How often it is paid is not known: nothing tells when.
        nextDue: times === null ? null : nextDue,
        firstDue,
        bornBy,
        source: row.source,
      };
    },
    (row) => {
      const target = places.named(String(row.cell(columns.over)));
      return target === null
        ? [{ of: "farm" }]
        : ["field" in target ? { of: "field", name: target.field } : { of: "crop", name: target.crop }];
    },
  );
}

/** What only a loan paid off by the year has, and counts for nothing on an operating loan; the first that is filled is told for all. */
function tellUnread(row: Row, payment: Decimal | null): void {
  const filled = [columns.paymentsAYear, columns.nextDue, columns.firstDue].find(
    (column) => row.text(column) !== null && !row.isFaulty(column),
  );
  const column = payment === null || payment.isZero() ? filled : columns.payment;
  if (column !== undefined) row.fault("payment-unread", column);
}

/** How often a loan is paid in a year: once where nothing is said, `null` where what is said leaves no whole months between. */
function timesAYear(row: Row): Decimal | null {
  const typed = row.of(columns.paymentsAYear);
  if (typed === null) return row.isFaulty(columns.paymentsAYear) ? null : one;
  return paymentsAYear.some((each) => typed.eq(each)) ? typed : row.fault("not-in-list", columns.paymentsAYear, { choices: paymentsAYear });
}

const allWords = /^(all|farm|whole farm|all fields|all land)?$/i;

/** The field or crop that bears a loan; a name that nobody has, or of what grows nowhere, is told, and all land bears it. */
function forWhom(row: Row, places: TargetPlaces): Target | null {
  const typed = row.of(columns.over) ?? "";
  if (allWords.test(typed)) return null;
  const target = places.named(typed);
  if (target === null) {
    if (places.isLost(typed)) return null;
    const like = nearest(typed, [...places.fieldNames.all, ...places.cropNames.all]);
    return row.fault("unknown-name", columns.over, like === null ? {} : { like });
  }
  return places.areaOf(target)?.gt("0") === true ? target : row.fault("no-fields", columns.over);
}
