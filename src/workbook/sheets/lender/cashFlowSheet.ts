/** The sheet *Cash flow*: month by month what comes in and goes out, and the operating loan beneath it. */
import { sum, zero, type Decimal } from "../../../core/decimal";
import { cashFlow, type CashFlow, type CashMonth } from "../../../core/lender/cashFlow";
import { monthOf, monthsBetween, type Month } from "../../../core/lender/month";
import { seasonFlows } from "../../../core/lender/seasonFlows";
import { money } from "../../../core/units";
import type { ResultSheet, SheetCell } from "../../resultSheet";
import type { SeasonReport } from "../../seasonReport";
import { headings, note, subtotal, text, title, wholeMoneyCell } from "../cells";
import { amountWords, caution, incompleteRows, inLines, seasonName } from "../words";

type Row = readonly SheetCell[];

/** The month in which grain that is not sold yet is counted: that of the repayment date, else November of the season. */
export function grainMonth({ season: { settings } }: SeasonReport): Month {
  const { operatingInterest, seasonYear } = settings;
  if (operatingInterest?.method === "by date") return monthOf(operatingInterest.repaymentDate);
  return `${seasonYear ?? "2000"}-11`;
}

/** The whole farm's cash flow over all months in which anything moves, January to December of the season at least. */
export function farmCashFlow(report: SeasonReport): CashFlow {
  const { season, figures } = report;
  const loans = season.loans ?? [];
  const sold = grainMonth(report);
  const flows = seasonFlows(season, figures, loans, sold);
  const year = season.settings.seasonYear ?? sold.slice(0, 4);
  // Payments of term loans run on for years; the page ends with the season, or with the last grain.
  const known = flows.filter((flow) => flow.group !== "term loans").flatMap((flow) => (flow.month === null ? [] : [flow.month]));
  const sorted = [`${year}-01`, `${year}-12`, ...known].sort();
  const operating = loans.filter((loan) => loan.kind === "operating");
  const opening = sum(operating.map((loan) => loan.balance));
  const rate = opening.isZero() ? season.settings.operatingInterest?.rate ?? operating[0]?.rate ?? zero
    : sum(operating.map((loan) => loan.balance.times(loan.rate))).div(opening);
  return cashFlow(flows, monthsBetween(sorted[0]!, sorted.at(-1)!), { opening: money(opening), rate }, money(zero));
}

export function cashFlowSheet(report: SeasonReport): ResultSheet {
  const flow = farmCashFlow(report);
  const { currency, areaUnit } = report.season.settings;
  const columns = flow.months.length;
  const whole = (value: Decimal) => wholeMoneyCell(value);
  const line = (name: string, of: (month: CashMonth) => Decimal, total: boolean, style = {}): Row =>
    [text(name, style), ...flow.months.map((month) => ({ ...whole(of(month)), style: { ...whole(of(month)).style, ...style } })), ...(total ? [{ ...whole(sum(flow.months.map(of))), style: { ...whole(zero).style, ...style } }] : [])];
  const rows: Row[] = [
    title("Cash flow"),
    note(`${seasonName(report)}, whole farm, ${currency} to the nearest whole.`),
    ...inLines(notes(report, flow), 180).map(note),
    ...incompleteRows(report, { of: "farm" }),
    [],
    headings("", ...flow.months.map(({ month }) => month), "All"),
    ...flow.groups.map((group) => line(`   ${group}`, ({ flows }) => flows.get(group) ?? zero, true)),
    line("Money in", ({ moneyIn }) => moneyIn, true, subtotal),
    line("Money out", ({ moneyOut }) => moneyOut.neg(), true, subtotal),
    line("Drawn on the operating loan", ({ draw }) => draw, true),
    line("Interest added to it", ({ interest }) => interest, true),
    line("Paid back", ({ repaid }) => repaid, true),
    line("Operating loan at the end of the month", ({ loan }) => loan, false, subtotal),
    line("Cash at the end of the month", ({ cash }) => cash, false, subtotal),
  ];
  const loanRow = rows.length - 1;
  const headingRow = rows.findIndex((row) => row.at(-1)?.value === "All") + 1;
  const last = String.fromCharCode(65 + columns);
  const chartTop = rows.length + 2;
  rows.push([], ...Array.from({ length: 15 }, () => []), note(caution));
  return {
    name: "Cash flow", columns: [40, ...Array.from({ length: columns + 1 }, () => 10)], headingRows: 2, rows,
    page: { orientation: "landscape", paper: areaUnit === "ac" ? "letter" : "a4", pagesTall: 1, footer: `Cash flow, ${seasonName(report)}` },
    charts: [{
      kind: "line", title: "Operating loan and cash at the end of each month", categories: `B${headingRow}:${last}${headingRow}`,
      series: [{ name: "Operating loan", values: `B${loanRow}:${last}${loanRow}` }, { name: "Cash", values: `B${loanRow + 1}:${last}${loanRow + 1}` }],
      from: `A${chartTop}`, to: `${last}${chartTop + 13}`,
    }],
  };
}

function notes(report: SeasonReport, flow: CashFlow): string {
  const spread = flow.spread.isZero() ? "" : ` ${amountWords(flow.spread.abs())} without a month is spread evenly.`;
  return `Invoices as they are paid, the rest of the plan in its planned month, cash rent half in March and half in November, grain not sold yet at the expected price in ${grainMonth(report)}. Opening cash is taken as nothing; the operating loan begins with the balance entered.${spread}`;
}
