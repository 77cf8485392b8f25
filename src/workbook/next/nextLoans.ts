/** Loans as they stand when the next season begins. */
import { Decimal } from "../../core/numbers/decimal";
import { accounts } from "../../core/accounts";
import type { LoanYear } from "../../core/loanYear";
import { monthsLater } from "../../core/lender/month";
import type { IsoDate } from "../../core/row";
import type { Cell } from "../cell";
import { loanColumns } from "../columns/loans";
import { serialOfDay } from "../daySerial";
import type { SeasonReport } from "../seasonReport";
import { farmCashFlow } from "../sheets/lender/farmCashFlow";
import { plain } from "../words";
import type { NextTable } from "./nextRows";

const { columns } = loanColumns;
type Row = ReadonlyMap<string, Cell>;

/**
 * Each loan at what is owed after this year's payments, with the payment that comes next; one that is paid off is left out. An
 * operating loan carries what the cash flow has it owe in the last month.
 *
 * @param say takes a sentence for each loan of which more is to be said
 */
export function nextLoans(report: SeasonReport, table: NextTable, say: (words: string) => void): readonly Row[] {
  const years = new Map(accounts(report.season).loans.map((year) => [plain(year.loan.name), year]));
  const operating = [...years.values()].filter(({ loan }) => loan.kind === "operating");
  return table.rows.flatMap((row): readonly Row[] => {
    const name = table.text(row, columns.name);
    const year = years.get(plain(name));
    if (year === undefined) return [row];
    if (year.loan.kind === "operating") {
      const owed = operating.length === 1 ? (farmCashFlow(report)?.months.at(-1)?.loan ?? null) : null;
      say(
        owed === null
          ? `${name}: the balance is the one of this season; enter what is carried into the next.`
          : `${name}: the balance is what the cash flow has owed in its last month; your lender's statement rules.`,
      );
      return [owed === null ? row : table.with(row, [columns.balance, Number(owed.toDecimalPlaces(2).toFixed())])];
    }
    return termLoan(table, row, year, say);
  });
}

function termLoan(table: NextTable, row: Row, { loan, closing, payments }: LoanYear, say: (words: string) => void): readonly Row[] {
  const last = payments.at(-1);
  if (last === undefined || loan.nextDue === null) {
    say(`${loan.name}: no payment of this season is known, so balance and next payment are those of this season.`);
    return [row];
  }
  if (closing.lte("0")) {
    say(`${loan.name} is paid off, and left out.`);
    return [];
  }
  const due = sameDay(loan.nextDue, monthsLater(last.month, new Decimal("12").div(loan.paymentsAYear)));
  return [table.with(row, [columns.balance, Number(closing.toDecimalPlaces(2).toFixed())], [columns.nextDue, serialOfDay(due, "1900")])];
}

/** The day of a payment in another month; its last day where the month has no such day. */
function sameDay(day: IsoDate, month: string): IsoDate {
  const [year, of] = month.split("-").map(Number) as [number, number];
  const days = new Date(Date.UTC(year, of, 0)).getUTCDate();
  return `${month}-${String(Math.min(Number(day.slice(8)), days)).padStart(2, "0")}`;
}
