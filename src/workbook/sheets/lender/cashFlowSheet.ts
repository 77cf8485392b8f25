/** The sheet *Cash flow*: month by month what comes in and goes out, and the operating loan beneath it. */
import { sum, zero, type Decimal } from "../../../core/decimal";
import { cashFlow, type CashFlow, type CashMonth } from "../../../core/lender/cashFlow";
import { monthOf, monthsBetween, monthsOfSeason, type Month } from "../../../core/lender/month";
import { differenceReasons, type DifferenceReason } from "../../../core/lender/differences";
import { paidAndCharged } from "../../../core/lender/paidAndCharged";
import { operatingRate } from "../../../core/lender/operatingRate";
import { seasonFlows } from "../../../core/lender/seasonFlows";
import { repaidOn } from "../../../core/paymentDates";
import { money } from "../../../core/units";
import { columnName } from "../../cellName";
import type { ResultSheet, SheetCell } from "../../resultSheet";
import { leftOutNotes } from "../../harvestNotes";
import type { SeasonReport } from "../../seasonReport";
import { headings, note, subtotal, text, title, wholeMoneyCell } from "../cells";
import { amountWords, caution, incompleteRows, inLines, seasonName, wholeAmounts } from "../words";

type Row = readonly SheetCell[];

/** The month in which grain that is not sold yet is counted: that of the repayment date, else November of the season; `null`: of no known year. */
export function grainMonth({ season: { settings } }: SeasonReport): Month | null {
  const { seasonYear } = settings;
  const repaid = repaidOn(settings);
  if (repaid !== null) return monthOf(repaid);
  return seasonYear === null ? null : `${seasonYear}-11`;
}

/**
 * The whole farm's cash flow over all months in which anything moves, January to December of the season at least.
 * What is dated in no month that can be of the season, which is an entry to fix, stands in the nearest that can.
 *
 * @returns `null` as long as nothing tells the year of the season: the setting is asked for
 */
export function farmCashFlow(report: SeasonReport): CashFlow | null {
  const { season, figures } = report;
  const { seasonYear } = season.settings;
  const sold = grainMonth(report);
  if (seasonYear === null || sold === null) return null;
  const loans = season.loans ?? [];
  const { first, last } = monthsOfSeason(seasonYear);
  const within = (month: Month | null): Month | null => (month === null ? null : month < first ? first : month > last ? last : month);
  const flows = seasonFlows(season, figures, loans, sold).map((flow) => ({ ...flow, month: within(flow.month) }));
  // Payments of term loans run on for years; the page ends with the season, or with the last grain.
  const known = flows.filter((flow) => flow.group !== "term loans").flatMap((flow) => (flow.month === null ? [] : [flow.month]));
  const sorted = [`${seasonYear}-01`, `${seasonYear}-12`, ...known].sort();
  const opening = sum(loans.filter(({ kind }) => kind === "operating").map(({ balance }) => balance));
  const rate = operatingRate(season.settings, loans);
  return cashFlow(flows, monthsBetween(sorted[0]!, sorted.at(-1)!), { opening: money(opening), rate }, money(zero));
}

/** What stands where a cash flow would, as long as there is none. */
export const noCashFlow = "No cash flow yet: enter Season year in the table Season.";

export function cashFlowSheet(report: SeasonReport): ResultSheet {
  const flow = farmCashFlow(report);
  return flow === null ? noFlowSheet(report) : flowSheet(report, flow);
}

const pageOf = (report: SeasonReport): ResultSheet["page"] =>
  ({ orientation: "landscape", paper: report.season.settings.areaUnit === "ac" ? "letter" : "a4", pagesTall: 1, footer: `Cash flow, ${seasonName(report)}` });

function noFlowSheet(report: SeasonReport): ResultSheet {
  const rows: Row[] = [title("Cash flow"), note(`${seasonName(report)}, whole farm.`), ...incompleteRows(report, { of: "cash flow" }), [], [text(noCashFlow, { bold: true })], note(caution)];
  return { name: "Cash flow", columns: [40], headingRows: 2, rows, charts: [], page: pageOf(report) };
}

/** Characters of a note that fit across the months of a year. */
const lineLength = 150;

function flowSheet(report: SeasonReport, flow: CashFlow): ResultSheet {
  const { currency } = report.season.settings;
  const columns = flow.months.length;
  const whole = (value: Decimal) => wholeMoneyCell(value);
  const line = (name: string, of: (month: CashMonth) => Decimal, total: boolean, style = {}): Row =>
    [text(name, style), ...flow.months.map((month) => ({ ...whole(of(month)), style: { ...whole(of(month)).style, ...style } })), ...(total ? [{ ...whole(sum(flow.months.map(of))), style: { ...whole(zero).style, ...style } }] : [])];
  const rows: Row[] = [
    title("Cash flow"),
    note(`${seasonName(report)}, whole farm, ${currency} to the nearest whole.`),
    ...inLines(notes(report, flow), 180).map(note),
    ...incompleteRows(report, { of: "cash flow" }),
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
  const between = reconciledRows(report, flow);
  const headingRow = rows.findIndex((row) => row.at(-1)?.value === "All") + 1;
  const last = columnName(columns);
  const chartTop = rows.length + 2;
  const leftOut = report.figures.crops.flatMap((crop) => leftOutNotes(report, crop).flatMap((words) => inLines(`${crop.crop}: ${words}`, lineLength)).map(note));
  rows.push([], ...Array.from({ length: 15 }, () => []), ...between, [], ...leftOut, note(caution));
  return {
    name: "Cash flow", columns: [40, ...Array.from({ length: columns + 1 }, () => 10)], headingRows: 2, rows,
    page: pageOf(report),
    charts: [{
      kind: "line", title: "Operating loan and cash at the end of each month", categories: `B${headingRow}:${last}${headingRow}`,
      series: [{ name: "Operating loan", values: `B${loanRow}:${last}${loanRow}` }, { name: "Cash", values: `B${loanRow + 1}:${last}${loanRow + 1}` }],
      from: `A${chartTop}`, to: `${last}${chartTop + 13}`,
    }],
  };
}

const reasonTitles: Readonly<Record<DifferenceReason, string>> = {
  stock: "Stock bought", landlord: "Landlord's part", "next crop": "For the next crop", "machine work": "Machine work and its bills", "no field": "Borne by no field",
  "beyond yield": "Grain beyond the projected crop", "interest by balance": "Interest by balance",
};

/** What the costs charge and what these months pay for it, group by group, with every reason for a difference; each row adds up as shown. */
function reconciledRows(report: SeasonReport, flow: CashFlow): readonly Row[] {
  const groups = paidAndCharged(report.season, report.figures, flow);
  const reasons = differenceReasons.filter((reason) => groups.some(({ differences }) => !(differences[reason] ?? zero).isZero()));
  const line = (name: string, amounts: readonly Decimal[], style = {}): Row => {
    const shown = wholeAmounts(amounts.slice(0, -1));
    return [text(name, style), ...[...shown, sum(shown)].map((amount) => ({ ...wholeMoneyCell(amount), style: { ...wholeMoneyCell(amount).style, ...style } }))];
  };
  const amountsOf = ({ charged, differences, paid }: (typeof groups)[number]) => [charged, ...reasons.map((reason) => differences[reason] ?? zero), paid];
  const all = groups.map(amountsOf);
  return [
    headings("What the fields are charged, and what these months pay", "Charged", ...reasons.map((reason) => reasonTitles[reason]), "Paid"),
    ...groups.map((group) => line(`   ${group.group}`, amountsOf(group))),
    line("All", (all[0] ?? []).map((_, index) => sum(all.map((amounts) => amounts[index]!))), subtotal),
  ];
}

function notes(report: SeasonReport, flow: CashFlow): string {
  const spread = flow.spread.isZero() ? "" : ` ${amountWords(flow.spread.abs())} without a date falls by rule: field costs at planned planting, the rest evenly.`;
  return `Invoices as they are paid, the rest of the plan in its planned month, cash rent half in March and half in November, grain not sold yet at the expected price in ${grainMonth(report)}. Opening cash is taken as nothing; the operating loan begins with the balance entered.${spread}`;
}
