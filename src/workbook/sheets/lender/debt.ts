/** Whether the debt can be paid, and when the operating loan peaks. */
import { Decimal, sum, zero } from "../../../core/numbers/decimal";
import type { CashFlow } from "../../../core/lender/cashFlow";
import { farmYear } from "../../../core/lender/farmYear";
import { paidAndCharged } from "../../../core/lender/paidAndCharged";
import { reconciliation, type Reconciliation } from "../../../core/lender/reconciliation";
import { repayment } from "../../../core/lender/repayment";
import type { SeasonReport } from "../../seasonReport";
import { moneyCell, subtotal, text } from "../cells";
import { amountWords, wholeAmounts } from "../amounts";
import { farmCashFlow, noCashFlow } from "./farmCashFlow";
import type { LenderPage } from "./printedPage";

const rightHalf = 7;

export function debtBlock(page: LenderPage, report: SeasonReport): void {
  const loans = report.season.loans;
  const year = farmYear(report.figures);
  const { capacity, debtService, margin, marginAfterReplacement, termDebtCoverage } = repayment(year);
  const top = page.next;
  page.across({ row: top, column: 0 }, 3, text("Paying the term debt, whole farm, one year", { bold: true, fill: "heading" }));
  const lines: readonly (readonly [string, typeof capacity | null, boolean])[] = [
    ["Income less all cash costs", year.netIncome, false],
    ["plus term interest", year.termInterest, false],
    ["less income tax and family living", shown(year.incomeTax, year.familyLiving), false],
    ["Repayment capacity", capacity, true],
    ["Interest and principal due", debtService, false],
    ["Margin", margin, true],
    ["Margin after replacing machines", marginAfterReplacement, true],
  ];
  lines.forEach(([words, amount, bold], index) => {
    page.put({ row: top + 1 + index, column: 0 }, text(words, bold ? subtotal : {}));
    page.across({ row: top + 1 + index, column: 1 }, 2, moneyCell(amount, bold ? subtotal : {}));
  });
  page.put({ row: top + 1 + lines.length, column: 0 }, text("Term-debt coverage: capacity ÷ due"));
  page.across({ row: top + 1 + lines.length, column: 1 }, 2, moneyCell(termDebtCoverage));

  const flow = farmCashFlow(report);
  const right = (row: number, words: string, bold = false) =>
    page.put({ row: top + row, column: rightHalf }, text(words, bold ? { bold: true } : {}));
  page.across({ row: top, column: rightHalf }, 6, text("Operating loan", { bold: true, fill: "heading" }));
  if (flow === null) right(1, noCashFlow, true);
  else operatingLoan(right, flow);
  right(5, "Term loans:", true);
  const term = loans.filter((loan) => loan.kind === "term");
  if (term.length === 0) right(6, "none entered");
  term.slice(0, 3).forEach((loan, index) => {
    right(
      6 + index,
      `${loan.name}: ${amountWords(loan.balance)} at ${loan.rate.times("100").toFixed(2)} %, ` +
        `${loan.payment === null ? "no payment entered" : amountWords(loan.payment)}${loan.payment === null ? "" : `, ${loan.paymentsAYear.toFixed()} a year`}`,
    );
  });
  if (term.length > 3) right(9, `and ${term.length - 3} more`);
  if (flow !== null)
    fromMargin(reconciliation(margin, paidAndCharged(report.season, report.figures, flow), flow)).forEach((words, index) => {
      right(Math.max(8, 6 + Math.min(term.length, 4)) + index, words);
    });
}

/**
 * What lies between the margin and the operating loan of the same year, in two lines that fit the half of a page, and whose whole
 * amounts add up as shown.
 */
function fromMargin({ margin, steps, change }: Reconciliation): readonly [string, string] {
  const ofInterest = steps.get("interest by balance") ?? zero;
  const others = sum([...steps].filter(([reason]) => reason !== "interest by balance").map(([, amount]) => amount));
  const [from, interest, rest] = wholeAmounts([margin, ofInterest, others]) as [Decimal, Decimal, Decimal];
  const signed = (amount: Decimal, plus: string) => `${amount.lt("0") ? "−" : plus}${amountWords(amount.abs())}`;
  return [
    `Margin ${signed(from, "")}; interest charged, not borne ${signed(interest, "+")};`,
    `charged, not paid ${signed(rest, "+")}: ${signed(change.toDecimalPlaces(0, Decimal.ROUND_HALF_UP), "")} less owed, or more in cash.`,
  ];
}

/** The peak of the operating loan and what is left of it. */
function operatingLoan(right: (row: number, words: string, bold?: boolean) => void, flow: CashFlow): void {
  const end = flow.months.at(-1)!;
  right(
    1,
    flow.peak === null
      ? "No operating loan is needed in any month."
      : `Peak: ${amountWords(flow.peak.balance)} at the end of ${flow.peak.month}.`,
    true,
  );
  right(2, `At the end of ${end.month}: ${amountWords(end.loan)} owed, ${amountWords(end.cash)} in cash.`);
  right(3, "Month by month on the sheet Cash flow.");
  if (!flow.spread.eq(zero)) right(4, `${amountWords(flow.spread.abs())} has no date and falls by rule.`);
}

const shown = (a: ReturnType<typeof farmYear>["incomeTax"], b: typeof a) => a.plus(b).neg() as typeof a;
